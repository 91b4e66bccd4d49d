package trimwright.platform;

import trimwright.boat.Boat;
import trimwright.boat.Side;
import trimwright.foil.Flow;
import trimwright.foil.FoilLoad;
import trimwright.foil.MainFoilChange;
import trimwright.foil.MainFoilModel;
import trimwright.foil.RudderChange;
import trimwright.foil.RudderModel;
import trimwright.foil.SubmergedFoil;
import trimwright.foil.SurfaceStrut;
import trimwright.hull.HullModel;
import trimwright.water.WaterState;

/**
 * Foils, rudders and hulls in the water. The wake of a main foil reaches the rudder and elevator behind it, not those of
 * the other hull.
 */
final class WaterPart {
    private final MainFoilModel[] mainFoil;
    private final RudderModel[] rudder;
    private final HullModel hulls;
    private final double hullY;
    private final double washDistance;

    /** @param buoyancyX centre of buoyancy in level trim, forward of the origin (m) */
    WaterPart(Boat boat, double buoyancyX, WaterState water) {
        hullY = 0.5 * boat.hulls().spacing();
        mainFoil = new MainFoilModel[] {
            new MainFoilModel(boat.mainFoil(), Side.PORT, water),
            new MainFoilModel(boat.mainFoil(), Side.STARBOARD, water)
        };
        rudder = new RudderModel[] {
            new RudderModel(boat.rudder(), hullY, Side.PORT, water),
            new RudderModel(boat.rudder(), hullY, Side.STARBOARD, water)
        };
        hulls = new HullModel(boat.hulls(), buoyancyX, water);
        washDistance = -boat.rudder().x();
    }

    /** Depth of the hulls' bottoms (m) at which they carry that weight (N) together, upright. */
    double draft(double weight) {
        return hulls.immersion(0.5 * weight);
    }

    WaterLoad at(SailingState state, Conditions conditions) {
        WaterLoad load = new WaterLoad();
        Pose pose = Pose.of(state, conditions.windward());
        Stream stream = new Stream(pose);
        double rudderAngle = rudderAngle(state, conditions);
        double rake = state.get(Variable.MAIN_RAKE);
        load.leewardWash = main(conditions.leeward(), stream, rake, load.mainShaft, load.mainTip, load.force);
        load.mainTipDepth = load.leewardWash.tipDepth;
        if (conditions.foils() == FoilSet.BOTH_DOWN) {
            FoilLoad shaft = new FoilLoad();
            FoilLoad tip = new FoilLoad();
            load.windwardShaft = shaft;
            load.windwardTip = tip;
            load.windwardWash = main(conditions.windward(), stream, rake, shaft, tip, load.windwardMain);
            load.force.add(load.windwardMain);
        }
        RudderModel leeward = rudder[conditions.leeward().ordinal()];
        rudderStrut(leeward, stream, load.leewardWash, rudderAngle, load.leewardRudder, load);
        elevator(leeward, stream, load.leewardWash, rudderAngle, state.leewardElevator(), load.leewardElevator, load);
        RudderModel other = rudder[conditions.windward().ordinal()];
        rudderStrut(other, stream, load.windwardWash, rudderAngle, load.windwardRudder, load);
        elevator(other, stream, load.windwardWash, rudderAngle, state.windwardElevator(), load.windwardElevator, load);
        hulls(state, conditions, pose, load);
        load.force.add(load.elevators);
        load.force.add(load.hulls);
        return load;
    }

    /** Signed rudder angle, positive with the trailing edge to starboard (rad). */
    double rudderAngle(SailingState state, Conditions conditions) {
        return -conditions.windward().sign() * state.get(Variable.RUDDER);
    }

    /** First-order changes about a state. */
    WaterChanges about(SailingState state, Conditions conditions) {
        return new WaterChanges(this, state, conditions, Pose.of(state, conditions.windward()));
    }

    MainFoilChange mainAbout(Side side, Stream stream, double rake) {
        return mainFoil[side.ordinal()].about(stream.at(shaftOf(side), 0, 0), stream.at(tipOf(side), 0, 0), rake);
    }

    RudderChange rudderAbout(Side side, Stream stream, Wash wash, double rudderAngle, double elevatorAngle) {
        Flow atStrut = stream.at(strutOf(side), wash.side, 0);
        Flow atElevator = stream.at(elevatorOf(side), wash.side, wash.down);
        return rudder[side.ordinal()].about(atStrut, atElevator, rudderAngle, elevatorAngle);
    }

    /** Where the flow at an element is asked for, body axes (m). */
    record Place(double x, double y, double z) {}

    Place shaftOf(Side side) {
        return placeOf(mainFoil[side.ordinal()].shaft());
    }

    Place tipOf(Side side) {
        return placeOf(mainFoil[side.ordinal()].tip());
    }

    Place strutOf(Side side) {
        return placeOf(rudder[side.ordinal()].strut());
    }

    Place elevatorOf(Side side) {
        return placeOf(rudder[side.ordinal()].elevator());
    }

    private static Place placeOf(SurfaceStrut strut) {
        return new Place(strut.x(), strut.y(), strut.endZ());
    }

    private static Place placeOf(SubmergedFoil foil) {
        return new Place(foil.x(), foil.y(), foil.z());
    }

    double washDistance() {
        return washDistance;
    }

    double hullY() {
        return hullY;
    }

    HullModel hulls() {
        return hulls;
    }

    private Wash main(Side side, Stream stream, double rake, FoilLoad shaft, FoilLoad tip, ForceSum sum) {
        MainFoilModel model = mainFoil[side.ordinal()];
        Flow atShaft = stream.at(shaftOf(side), 0, 0);
        model.shaft(atShaft, shaft);
        Flow atTip = stream.at(tipOf(side), 0, 0);
        model.tip(atTip, rake, tip);
        add(shaft, sum);
        add(tip, sum);
        return washOf(side, stream, atShaft, shaft, atTip, tip);
    }

    /** What the rudder and the elevator behind a main foil meet. */
    private Wash washOf(Side side, Stream stream, Flow atShaft, FoilLoad shaft, Flow atTip, FoilLoad tip) {
        MainFoilModel model = mainFoil[side.ordinal()];
        RudderModel behind = rudder[side.ordinal()];
        SubmergedFoil elevator = behind.elevator();
        double depth = stream.pose.depth(elevator.x(), elevator.y(), elevator.z());
        return new Wash(
                model.sidewash(atShaft, shaft, washDistance, behind.strut().y()),
                model.downwash(atTip, tip, washDistance, depth),
                atTip.depth());
    }

    private static void rudderStrut(
            RudderModel model, Stream stream, Wash wash, double angle, FoilLoad out, WaterLoad load) {
        model.strut(stream.at(placeOf(model.strut()), wash.side, 0), angle, out);
        add(out, load.force);
    }

    private static void elevator(
            RudderModel model,
            Stream stream,
            Wash wash,
            double rudderAngle,
            double angle,
            FoilLoad out,
            WaterLoad load) {
        Flow flow = stream.at(placeOf(model.elevator()), wash.side, wash.down);
        model.elevator(flow, rudderAngle, angle, out);
        add(out, load.elevators);
    }

    private static void add(FoilLoad foil, ForceSum sum) {
        sum.add(foil.forceX(), foil.forceY(), foil.forceZ(), foil.pointX(), foil.pointY(), foil.pointZ());
    }

    private void hulls(SailingState state, Conditions conditions, Pose pose, WaterLoad load) {
        double leewardY = conditions.leeward().sign() * hullY;
        double leewardDepth = pose.depth(0, leewardY, 0);
        double windwardDepth = pose.depth(0, -leewardY, 0);
        load.lowestHullClearance = -Math.max(leewardDepth, windwardDepth);
        double speed = state.get(Variable.BOAT_SPEED);
        double pitch = state.get(Variable.PITCH);
        hulls.load(speed, pitch, leewardDepth, windwardDepth, load.leewardHull);
        hulls.load(speed, pitch, windwardDepth, leewardDepth, load.windwardHull);
        HullForce.add(load.leewardHull, leewardY, state, pose, load.hulls);
        HullForce.add(load.windwardHull, -leewardY, state, pose, load.hulls);
    }

    /** Undisturbed water past the boat, in body axes. */
    static final class Stream {
        private final Pose pose;
        private final double u;
        private final double v;
        private final double w;

        Stream(Pose pose) {
            this.pose = pose;
            u = -pose.bodyX(pose.ahead());
            v = -pose.bodyY(pose.ahead(), pose.abeam());
            w = -pose.bodyZ(pose.ahead(), pose.abeam());
        }

        Flow at(Place place, double side, double down) {
            return new Flow(u, v + side, w + down, pose.depth(place.x(), place.y(), place.z()));
        }
    }

    /** What a main foil leaves in the water behind it (m/s), and how deep its tip is (m). */
    static final class Wash {
        static final Wash NONE = new Wash(0, 0, 0);

        final double side;
        final double down;
        final double tipDepth;

        Wash(double side, double down, double tipDepth) {
            this.side = side;
            this.down = down;
            this.tipDepth = tipDepth;
        }
    }
}
