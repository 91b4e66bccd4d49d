package trimwright.platform;

import org.jspecify.annotations.Nullable;
import trimwright.boat.Side;
import trimwright.foil.FlowChange;
import trimwright.foil.FoilChange;
import trimwright.foil.MainFoilChange;
import trimwright.foil.RudderChange;

/**
 * First-order changes of a {@link WaterLoad} about one state: exact derivatives, element by element as {@link WaterPart} adds
 * them up. Not for use by two threads.
 */
public final class WaterChanges {
    private final WaterPart part;
    private final SailingState state;
    private final Conditions conditions;
    private final Pose pose;
    private final double ahead;
    private final double abeam;
    private final WaterLoad load;
    private final MainFoilChange leeMain;
    private final @Nullable MainFoilChange windwardMain;
    private final RudderChange leeRudder;
    private final RudderChange windwardRudder;

    WaterChanges(WaterPart part, SailingState state, Conditions conditions, Pose pose) {
        this.part = part;
        this.state = state;
        this.conditions = conditions;
        this.pose = pose;
        ahead = pose.ahead();
        abeam = pose.abeam();
        load = part.at(state, conditions);
        WaterPart.Stream stream = new WaterPart.Stream(pose);
        double rake = state.get(Variable.MAIN_RAKE);
        double rudder = part.rudderAngle(state, conditions);
        leeMain = part.mainAbout(conditions.leeward(), stream, rake);
        leeRudder = part.rudderAbout(conditions.leeward(), stream, load.leewardWash, rudder, state.leewardElevator());
        windwardMain = load.windwardTip == null ? null : part.mainAbout(conditions.windward(), stream, rake);
        windwardRudder =
                part.rudderAbout(conditions.windward(), stream, load.windwardWash, rudder, state.windwardElevator());
    }

    /** The load itself. */
    public WaterLoad load() {
        return load;
    }

    /** Its change with a variable, per unit of it. */
    public WaterLoadChange by(Variable variable) {
        WaterLoadChange out = new WaterLoadChange();
        PoseChange change = new PoseChange(pose, state, conditions.windward(), variable);
        StreamChange stream = new StreamChange(change);
        double byRake = variable == Variable.MAIN_RAKE ? 1 : 0;
        double byRudder = variable == Variable.RUDDER ? -conditions.windward().sign() : 0;
        double byMean = variable == Variable.ELEVATOR ? 1 : 0;
        double byDifferential = variable == Variable.ELEVATOR_DIFFERENTIAL ? 1 : 0;

        WaterPart.Place shaft = part.shaftOf(conditions.leeward());
        WaterPart.Place tip = part.tipOf(conditions.leeward());
        out.mainTipDepth = change.depth(tip.x(), tip.y(), tip.z());
        double[] lee = main(conditions.leeward(), leeMain, shaft, tip, stream, byRake, out.mainShaft, out.mainTip);
        out.addMain(leeMain, out.mainShaft, out.mainTip, tip, out.force);
        rudder(conditions.leeward(), leeRudder, stream, lee, byRudder, byMean + byDifferential, true, out);

        double[] windward = new double[2];
        if (windwardMain != null) {
            WaterPart.Place otherShaft = part.shaftOf(conditions.windward());
            WaterPart.Place otherTip = part.tipOf(conditions.windward());
            windward = main(
                    conditions.windward(),
                    windwardMain,
                    otherShaft,
                    otherTip,
                    stream,
                    byRake,
                    out.windwardShaft,
                    out.windwardTip);
            out.addMain(windwardMain, out.windwardShaft, out.windwardTip, otherTip, out.windwardMain);
            out.force.add(out.windwardMain);
        }
        rudder(conditions.windward(), windwardRudder, stream, windward, byRudder, byMean - byDifferential, false, out);
        hulls(variable, change, out);
        out.force.add(out.elevators);
        out.force.add(out.hulls);
        return out;
    }

    /** Fills the changes of a main foil's loads; returns those of its wash to the side and down. */
    private double[] main(
            Side side,
            MainFoilChange about,
            WaterPart.Place shaft,
            WaterPart.Place tip,
            StreamChange stream,
            double byRake,
            FoilChange shaftOut,
            FoilChange tipOut) {
        if (!stream.moves && byRake == 0) {
            return new double[2];
        }
        FlowChange atShaft = stream.at(shaft, 0, 0);
        FlowChange atTip = stream.at(tip, 0, 0);
        about.shaft(atShaft, shaftOut);
        about.tip(atTip, byRake, tipOut);
        WaterPart.Place elevator = part.elevatorOf(side);
        double depth = pose.depth(elevator.x(), elevator.y(), elevator.z());
        double byDepth = stream.change.depth(elevator.x(), elevator.y(), elevator.z());
        return new double[] {
            about.sidewash(part.washDistance(), part.strutOf(side).y(), atShaft, shaftOut),
            about.downwash(part.washDistance(), depth, atTip, tipOut, byDepth)
        };
    }

    private void rudder(
            Side side,
            RudderChange about,
            StreamChange stream,
            double[] wash,
            double byRudder,
            double byElevator,
            boolean leeward,
            WaterLoadChange out) {
        boolean washed = wash[0] != 0 || wash[1] != 0;
        if (!stream.moves && !washed && byRudder == 0 && byElevator == 0) {
            return;
        }
        FoilChange strutOut = leeward ? out.leewardRudder : out.windwardRudder;
        FoilChange elevatorOut = leeward ? out.leewardElevator : out.windwardElevator;
        WaterPart.Place strut = part.strutOf(side);
        WaterPart.Place elevator = part.elevatorOf(side);
        about.strut(stream.at(strut, wash[0], 0), byRudder, strutOut);
        about.elevator(stream.at(elevator, wash[0], wash[1]), byRudder, byElevator, elevatorOut);
        WaterLoadChange.add(about.strutLoad(), strutOut, strut, out.force);
        WaterLoadChange.add(about.elevatorLoad(), elevatorOut, elevator, out.elevators);
    }

    private void hulls(Variable variable, PoseChange change, WaterLoadChange out) {
        double leeY = conditions.leeward().sign() * part.hullY();
        double leeDepth = pose.depth(0, leeY, 0);
        double windwardDepth = pose.depth(0, -leeY, 0);
        double byLee = change.depth(0, leeY, 0);
        double byWindward = change.depth(0, -leeY, 0);
        out.lowestHullClearance = leeDepth >= windwardDepth ? -byLee : -byWindward;
        if (leeDepth <= 0 && windwardDepth <= 0) {
            return;
        }
        double speed = state.get(Variable.BOAT_SPEED);
        double pitch = state.get(Variable.PITCH);
        double bySpeed = variable == Variable.BOAT_SPEED ? 1 : 0;
        double byPitch = variable == Variable.PITCH ? 1 : 0;
        part.hulls()
                .change(speed, pitch, leeDepth, windwardDepth, bySpeed, byPitch, byLee, byWindward, out.leewardHull);
        part.hulls()
                .change(speed, pitch, windwardDepth, leeDepth, bySpeed, byPitch, byWindward, byLee, out.windwardHull);
        HullForce.addChange(load.leewardHull, out.leewardHull, leeY, state, pose, change, bySpeed, out.hulls);
        HullForce.addChange(load.windwardHull, out.windwardHull, -leeY, state, pose, change, bySpeed, out.hulls);
    }

    /** First-order change of the undisturbed water past the boat. */
    private final class StreamChange {
        private final PoseChange change;
        private final double u;
        private final double v;
        private final double w;
        private final boolean moves;

        StreamChange(PoseChange change) {
            this.change = change;
            u = -change.bodyX(ahead, change.ahead());
            v = -change.bodyY(ahead, abeam, change.ahead(), change.abeam());
            w = -change.bodyZ(ahead, abeam, change.ahead(), change.abeam());
            moves = u != 0 || v != 0 || w != 0 || change.depth(0, 0, 0) != 0 || change.depth(1, 1, 1) != 0;
        }

        FlowChange at(WaterPart.Place place, double side, double down) {
            return new FlowChange(u, v + side, w + down, change.depth(place.x(), place.y(), place.z()));
        }
    }
}
