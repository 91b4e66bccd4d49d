package trimwright.motion;

import trimwright.boat.Boat;
import trimwright.boat.Side;
import trimwright.foil.Flow;
import trimwright.foil.FoilLoad;
import trimwright.foil.MainFoilModel;
import trimwright.foil.RudderModel;
import trimwright.foil.SubmergedFoil;
import trimwright.foil.SurfaceStrut;
import trimwright.hull.HullLoad;
import trimwright.hull.HullModel;
import trimwright.water.WaterState;

/**
 * Forces of the water on a moving boat: both main foils, both rudders with elevators, both hulls, each in the flow of its
 * own place. A board that is partly up is the same board higher. Rudder and elevator stand in the wake of their own side's
 * main foil; across the boat nothing is felt.
 */
final class WaterForces {
    /** Depth of a hull from keel to deck (m): chosen; deeper it displaces no more. */
    private static final double HULL_DEPTH = 0.9;
    /** Damping of half a hull's heave (N s/m): chosen, about a third of critical for the whole boat. */
    static final double HULL_DAMPING = 3500;

    private final Boat boat;
    private final double hullCentreX;
    private final MainFoilModel[] mainFoil = new MainFoilModel[2];
    private final RudderModel[] rudder = new RudderModel[2];
    private final HullModel hull;
    private final FoilLoad load = new FoilLoad();
    private final FoilLoad tipLoad = new FoilLoad();
    private final FoilLoad shaftLoad = new FoilLoad();
    private final HullLoad hullLoad = new HullLoad();

    private final double[] mainLift = new double[2];
    private final double[] elevatorLift = new double[2];
    private double hullLift;

    WaterForces(Boat boat, double hullCentreX, WaterState water) {
        this.boat = boat;
        this.hullCentreX = hullCentreX;
        for (Side side : Side.values()) {
            mainFoil[side.ordinal()] = new MainFoilModel(boat.mainFoil(), side, water);
            rudder[side.ordinal()] = new RudderModel(boat.rudder(), boat.hulls().spacing() / 2, side, water);
        }
        hull = new HullModel(boat.hulls(), hullCentreX, water);
    }

    void addTo(ForceSum sum, Kinematics motion, Controls controls) {
        for (Side side : Side.values()) {
            boolean port = side == Side.PORT;
            double up = (1 - (port ? controls.portBoard() : controls.starboardBoard()))
                    * boat.mainFoil().shaftLength();
            double elevator = controls.elevator() + (port ? 1 : -1) * controls.differential();
            double rake = port ? controls.portRake() : controls.starboardRake();
            addSide(sum, motion, side, up, rake, controls.rudder(), elevator);
        }
        addHulls(sum, motion);
    }

    /** Upward force of a main foil's tip at the last call (N). */
    double mainLift(Side side) {
        return mainLift[side.ordinal()];
    }

    /** Upward force of an elevator at the last call (N). */
    double elevatorLift(Side side) {
        return elevatorLift[side.ordinal()];
    }

    /** Buoyancy at the last call (N). */
    double hullLift() {
        return hullLift;
    }

    private void addSide(
            ForceSum sum, Kinematics motion, Side side, double up, double rake, double rudderAngle, double elevator) {
        MainFoilModel foil = mainFoil[side.ordinal()];
        SubmergedFoil tip = foil.tip();
        SurfaceStrut shaft = foil.shaft();
        Flow atTip = motion.water(tip.x(), tip.y(), tip.z() - up);
        foil.tip(atTip, rake, tipLoad);
        add(sum, tipLoad, up);
        mainLift[side.ordinal()] = -tipLoad.forceZ();
        // The flow's depth is that of the lower end; its velocity is taken at the middle of the wetted part.
        double end = motion.depth(shaft.x(), shaft.y(), shaft.endZ() - up);
        Flow atShaft = withDepth(motion.water(shaft.x(), shaft.y(), shaft.middleZ(end) - up), end);
        foil.shaft(atShaft, shaftLoad);
        add(sum, shaftLoad, up);

        RudderModel blade = rudder[side.ordinal()];
        SurfaceStrut strut = blade.strut();
        SubmergedFoil wing = blade.elevator();
        double strutEnd = motion.depth(strut.x(), strut.y(), strut.endZ());
        Flow atStrut = motion.water(strut.x(), strut.y(), strut.middleZ(strutEnd));
        double sidewash = end > 0 ? foil.sidewash(atShaft, shaftLoad, -strut.x(), strut.y()) : 0;
        blade.strut(new Flow(atStrut.u(), atStrut.v() + sidewash, atStrut.w(), strutEnd), rudderAngle, load);
        add(sum, load, 0);
        Flow atElevator = motion.water(wing.x(), wing.y(), wing.z());
        double downwash = atTip.depth() > 0 ? foil.downwash(atTip, tipLoad, -wing.x(), atElevator.depth()) : 0;
        blade.elevator(
                new Flow(atElevator.u(), atElevator.v() + sidewash, atElevator.w() + downwash, atElevator.depth()),
                rudderAngle,
                elevator,
                load);
        add(sum, load, 0);
        elevatorLift[side.ordinal()] = -load.forceZ();
    }

    private void addHulls(ForceSum sum, Kinematics motion) {
        double half = boat.hulls().spacing() / 2;
        double port = motion.depth(0, -half, 0);
        double starboard = motion.depth(0, half, 0);
        hullLift = 0;
        if (port <= 0 && starboard <= 0) {
            return;
        }
        for (Side side : Side.values()) {
            double own = side == Side.PORT ? port : starboard;
            if (own > 0) {
                addHull(sum, motion, side.sign() * half, own, side == Side.PORT ? starboard : port, motion.pitch());
            }
        }
    }

    /** Buoyancy straight up, drag against the course, both at the hull's own place. */
    private void addHull(ForceSum sum, Kinematics motion, double y, double own, double other, double pitch) {
        double u = motion.velocityX(y, 0);
        double v = motion.velocityY(0, 0);
        double speed = Math.sqrt(u * u + v * v);
        hull.load(speed, pitch, Math.min(own, HULL_DEPTH), Math.min(other, HULL_DEPTH), hullLoad);
        double quarter = 0.25 * boat.hulls().waterlineLength();
        addSlamming(sum, motion, hullCentreX + quarter, y);
        addSlamming(sum, motion, hullCentreX - quarter, y);
        double lift = hullLoad.buoyancy();
        hullLift += lift;
        double drag = hullLoad.drag() / Math.max(speed, 0.1);
        sum.add(
                motion.bodyX(0, -lift) - drag * u,
                motion.bodyY(0, 0, -lift) - drag * v,
                motion.bodyZ(0, 0, -lift),
                hullLoad.buoyancyX(),
                y,
                hullLoad.dragZ());
    }

    /** What half a hull gives against being pushed into the water or pulled out of it. */
    private void addSlamming(ForceSum sum, Kinematics motion, double x, double y) {
        double wet =
                Math.max(0, Math.min(1, motion.depth(x, y, 0) / boat.hulls().draft()));
        sum.add(0, 0, -HULL_DAMPING * wet * motion.velocityZ(x, y), x, y, 0);
    }

    private static void add(ForceSum sum, FoilLoad load, double up) {
        sum.add(load.forceX(), load.forceY(), load.forceZ(), load.pointX(), load.pointY(), load.pointZ() - up);
    }

    private static Flow withDepth(Flow flow, double depth) {
        return new Flow(flow.u(), flow.v(), flow.w(), depth);
    }
}
