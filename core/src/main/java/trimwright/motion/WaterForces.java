package trimwright.motion;

import trimwright.boat.Boat;
import trimwright.boat.Side;
import trimwright.foil.Flow;
import trimwright.foil.FoilLoad;
import trimwright.foil.MainFoilModel;
import trimwright.foil.RudderModel;
import trimwright.foil.SubmergedFoil;
import trimwright.foil.SurfaceStrut;
import trimwright.hull.HullModel;
import trimwright.water.WaterState;

/**
 * Forces of the water on a moving boat: both main foils, both rudders with elevators, both hulls, each in the flow of its
 * own place. Lift lags as {@link LaggedFoil} has it, shafts and rudders lose theirs to air as {@link StrutAir} has it. A board that is partly up is the same board higher. Rudder and elevator stand in the wake of their own side's
 * main foil; across the boat nothing is felt.
 */
final class WaterForces {
    /** Depth of a hull from keel to deck (m): chosen; deeper it displaces no more. */
    private static final double HULL_DEPTH = 0.9;
    /** Damping of half a hull's heave (N s/m): chosen, about a third of critical for the whole boat. */
    static final double HULL_DAMPING = 3500;

    /**
     * Stations of a hull from its middle over the waterline's length, and the share of the buoyancy at each: together they have
     * the length of gyration of the waterplane that {@link HullModel} has, so that level trim and small pitch are its own.
     */
    private static final double[] STATION = {-0.5, -0.25, 0, 0.25, 0.5};

    private static final double[] CARRIES = {0.04, 0.2632, 0.3936, 0.2632, 0.04};

    private final Boat boat;
    private final double hullCentreX;
    private final MainFoilModel[] mainFoil = new MainFoilModel[2];
    private final RudderModel[] rudder = new RudderModel[2];
    private final HullModel hull;
    private final SideMemory[] memory = new SideMemory[2];
    private final WaterState water;
    private final FoilLoad load = new FoilLoad();
    private final FoilLoad tipLoad = new FoilLoad();
    private final FoilLoad shaftLoad = new FoilLoad();
    private final double[] carried = new double[2];

    private final double[] mainLift = new double[2];
    private final double[] elevatorLift = new double[2];
    private double hullLift;

    WaterForces(Boat boat, double hullCentreX, WaterState water) {
        this.boat = boat;
        this.hullCentreX = hullCentreX;
        this.water = water;
        for (Side side : Side.values()) {
            memory[side.ordinal()] = new SideMemory(boat);
            mainFoil[side.ordinal()] = new MainFoilModel(boat.mainFoil(), side, water);
            rudder[side.ordinal()] = new RudderModel(boat.rudder(), boat.hulls().spacing() / 2, side, water);
        }
        hull = new HullModel(boat.hulls(), hullCentreX, water);
    }

    /** One that goes on from here by itself. */
    WaterForces copy() {
        WaterForces other = new WaterForces(boat, hullCentreX, water);
        for (int i = 0; i < 2; i++) {
            other.memory[i] = memory[i].copy();
        }
        return other;
    }

    /** Forgets the flow of the step before, and air that was drawn down. */
    void forget() {
        memory[0].forget();
        memory[1].forget();
    }

    /** Whether air stands on a shaft or rudder. */
    boolean hasAir() {
        return memory[0].hasAir() || memory[1].hasAir();
    }

    /** @param dt length of a step (s), for what lags */
    void addTo(ForceSum sum, Kinematics motion, Controls controls, double dt) {
        for (Side side : Side.values()) {
            boolean port = side == Side.PORT;
            double up = (1 - (port ? controls.portBoard() : controls.starboardBoard()))
                    * boat.mainFoil().shaftLength();
            double elevator = controls.elevator() + (port ? 1 : -1) * controls.differential();
            double rake = port ? controls.portRake() : controls.starboardRake();
            addSide(sum, motion, side, up, rake, controls.rudder(), elevator, dt);
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
            ForceSum sum,
            Kinematics motion,
            Side side,
            double up,
            double rake,
            double rudderAngle,
            double elevator,
            double dt) {
        SideMemory kept = memory[side.ordinal()];
        MainFoilModel foil = mainFoil[side.ordinal()];
        SubmergedFoil tip = foil.tip();
        SurfaceStrut shaft = foil.shaft();
        Flow atTip = kept.tip.act(motion.water(tip.x(), tip.y(), tip.z() - up), rake, dt);
        foil.tip(atTip, kept.tip.angle(), tipLoad);
        add(sum, tipLoad, up);
        mainLift[side.ordinal()] = -tipLoad.forceZ();
        // The flow's depth is that of the lower end; its velocity is taken at the middle of the wetted part.
        double end = motion.wet(shaft.x(), shaft.y(), shaft.endZ() - up);
        Flow atShaft =
                kept.shaft.act(withDepth(motion.water(shaft.x(), shaft.y(), shaft.middleZ(end) - up), end), 0, dt);
        foil.shaft(atShaft, kept.shaftAir.kept(), shaftLoad);
        kept.shaftAir.note(shaftLoad, Math.abs(atShaft.u()), dt);
        add(sum, shaftLoad, up);

        RudderModel blade = rudder[side.ordinal()];
        SurfaceStrut strut = blade.strut();
        SubmergedFoil wing = blade.elevator();
        double strutEnd = motion.wet(strut.x(), strut.y(), strut.endZ());
        Flow atStrut = motion.water(strut.x(), strut.y(), strut.middleZ(strutEnd));
        double sidewash = end > 0 ? foil.sidewash(atShaft, shaftLoad, -strut.x(), strut.y()) : 0;
        Flow acting =
                kept.strut.act(new Flow(atStrut.u(), atStrut.v() + sidewash, atStrut.w(), strutEnd), rudderAngle, dt);
        blade.strut(acting, kept.strut.angle(), kept.strutAir.kept(), load);
        kept.strutAir.note(load, Math.abs(acting.u()), dt);
        add(sum, load, 0);
        Flow atElevator = motion.water(wing.x(), wing.y(), wing.z());
        double downwash = atTip.depth() > 0 ? foil.downwash(atTip, tipLoad, -wing.x(), atElevator.depth()) : 0;
        Flow there = new Flow(atElevator.u(), atElevator.v() + sidewash, atElevator.w() + downwash, atElevator.depth());
        Flow lifting = kept.elevator.act(there, elevator, dt);
        blade.elevator(lifting, rudderAngle, kept.elevator.angle(), load);
        add(sum, load, 0);
        elevatorLift[side.ordinal()] = -load.forceZ();
    }

    private void addHulls(ForceSum sum, Kinematics motion) {
        hullLift = 0;
        for (Side side : Side.values()) {
            carried[side.ordinal()] =
                    addBuoyancy(sum, motion, side.sign() * boat.hulls().spacing() / 2);
            hullLift += carried[side.ordinal()];
        }
        for (Side side : Side.values()) {
            double own = carried[side.ordinal()];
            if (own > 0) {
                addHullDrag(sum, motion, side.sign() * boat.hulls().spacing() / 2, own, hullLift - own);
            }
        }
    }

    /** Buoyancy of one hull (N), straight up at each station, and what the station gives against moving up and down. */
    private double addBuoyancy(ForceSum sum, Kinematics motion, double y) {
        double lift = 0;
        for (int i = 0; i < STATION.length; i++) {
            double x = hullCentreX + STATION[i] * boat.hulls().waterlineLength();
            double depth = motion.wet(x, y, 0);
            if (depth > 0) {
                double up = CARRIES[i] * hull.buoyancy(Math.min(depth, HULL_DEPTH));
                lift += up;
                double wet = Math.min(1, depth / boat.hulls().draft());
                double damping = 2
                        * HULL_DAMPING
                        * CARRIES[i]
                        * wet
                        * -motion.water(x, y, 0).w();
                sum.add(motion.bodyX(0, -up), motion.bodyY(0, 0, -up), motion.bodyZ(0, 0, -up) - damping, x, y, 0);
            }
        }
        return lift;
    }

    /** Drag against the course, at the hull's own place. */
    private void addHullDrag(ForceSum sum, Kinematics motion, double y, double own, double other) {
        Flow flow = motion.water(0, y, 0);
        double u = -flow.u();
        double v = -flow.v();
        double speed = Math.sqrt(u * u + v * v);
        double drag = hull.resistance(speed, own, other) / Math.max(speed, 0.1);
        double z = -0.5 * Math.min(HULL_DEPTH, hull.immersion(own));
        sum.add(-drag * u, -drag * v, 0, 0, y, z);
    }

    private static void add(ForceSum sum, FoilLoad load, double up) {
        sum.add(load.forceX(), load.forceY(), load.forceZ(), load.pointX(), load.pointY(), load.pointZ() - up);
    }

    private static Flow withDepth(Flow flow, double depth) {
        return new Flow(flow.u(), flow.v(), flow.w(), depth);
    }
}
