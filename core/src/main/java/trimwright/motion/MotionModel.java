package trimwright.motion;

import trimwright.air.AirState;
import trimwright.boat.Boat;
import trimwright.boat.Side;
import trimwright.boat.WingSpec;
import trimwright.units.Angles;
import trimwright.units.Units;
import trimwright.water.WaterState;

/**
 * One boat's motion, stepped in time: surge, sway, heave, roll, pitch and yaw. Each rate's own damping is taken implicitly,
 * so that 0.02 s serves. Left out: lag of unsteady lift unless asked for, waves, current, the couplings of the products of inertia.
 *
 * <p>Keeps the wing's last flow from step to step, so one model is for one boat and one thread.
 */
public final class MotionModel {
    /** The step for which the rest is tuned (s). */
    public static final double STEP = 0.02;

    /** Lift slope of a foil or strut in the water (1/rad): for the steps' implicit parts only, chosen. */
    private static final double WATER_SLOPE = 3.5;
    /** Heave and pitch have no swing of their own: mass over hold (s), chosen. */
    private static final double HEAVE_TIME = 0.25;

    private static final double PITCH_TIME = 0.25;
    /** Fastest climb or fall (m/s) and pitching (rad/s) that the crew lets happen: chosen. */
    private static final double CLIMB_MOST = 1.2;

    private static final double PITCH_RATE_MOST = Math.toRadians(4);
    /** Water that moves with a hull sideways and up over what the hull displaces (-): middle of 0.5-1.0 (hydro 4.2). */
    private static final double HULL_ADDED = 0.7;

    private final Boat boat;
    private final WaterState water;
    private final Inertia inertia;
    private final WaterForces waterForces;
    private final AirForces airForces;
    private final Actuators actuators;
    private final ForceSum sum = new ForceSum();
    private final double addedSway;
    private final double addedHeave;
    private MotionLoads loads = new MotionLoads(0, 0, 0, 0, 0, 0, 0, 0, 0, 0);

    /** How the wing's lift follows its flow. */
    public enum Lift {
        /** The steady lift of every instant. */
        AT_ONCE,
        /** Behind wind, motion and setting as {@link LiftLag} has it. */
        LAGGING
    }

    /** @param strips into which the wing is cut; 16 to 20 serve */
    public MotionModel(Boat boat, WingSpec wing, AirState air, WaterState water, int strips) {
        this(boat, wing, air, water, strips, Lift.AT_ONCE);
    }

    /** As above, with the wing's lift at once or lagging. */
    public MotionModel(Boat boat, WingSpec wing, AirState air, WaterState water, int strips, Lift lift) {
        this.boat = boat;
        this.water = water;
        inertia = new Inertia(boat, wing);
        // In level trim the hulls carry the boat where her mass is.
        waterForces = new WaterForces(boat, inertia.x(), water);
        airForces = new AirForces(boat, wing, air, strips, lift);
        actuators = new Actuators(wing.sheet(), boat.handling());
        double quarter = Math.PI * water.density() / 4;
        double shaft = boat.mainFoil().shaftChord();
        double tip = boat.mainFoil().tipChord();
        addedSway = quarter * shaft * shaft * 0.6 * boat.mainFoil().shaftLength();
        addedHeave = 0.7 * quarter * tip * tip * boat.mainFoil().tipSpan();
    }

    private MotionModel(MotionModel of) {
        boat = of.boat;
        water = of.water;
        inertia = of.inertia;
        waterForces = new WaterForces(of.boat, of.inertia.x(), of.water);
        airForces = of.airForces.copy();
        actuators = of.actuators;
        addedSway = of.addedSway;
        addedHeave = of.addedHeave;
        loads = of.loads;
    }

    /** One that goes on from here as this would, for another thread if need be. */
    public MotionModel copy() {
        return new MotionModel(this);
    }

    /** The state after one step (s) in that wind. */
    public MotionState step(MotionState state, Commands commands, LocalWind wind, double dt) {
        Controls controls = actuators.move(state.controls(), commands, loads.turningMoment(), dt);
        Pose pose = state.pose();
        Rates rates = state.rates();
        double cx = inertia.x();
        double cy = inertia.y(controls.crew());
        double cz = inertia.z();
        Kinematics motion = new Kinematics(pose, rates, cx, cy, cz);
        sum.clear();
        waterForces.addTo(sum, motion, controls);
        airForces.addTo(sum, motion, pose.roll(), controls, wind, pose.heading(), dt);
        loads = new MotionLoads(
                airForces.turningMoment(),
                airForces.wingForward(),
                airForces.wingStarboard(),
                airForces.heeling(),
                airForces.stallMargin(),
                waterForces.mainLift(Side.PORT),
                waterForces.mainLift(Side.STARBOARD),
                waterForces.elevatorLift(Side.PORT),
                waterForces.elevatorLift(Side.STARBOARD),
                waterForces.hullLift());

        double forward = motion.levelX(sum.x, sum.y, sum.z);
        double starboard = motion.levelY(sum.y, sum.z);
        double down = motion.levelZ(sum.x, sum.y, sum.z) + inertia.mass() * Units.G;
        double k = sum.k - (cy * sum.z - cz * sum.y);
        double m = sum.m - (cz * sum.x - cx * sum.z);
        double n = sum.n - (cx * sum.y - cy * sum.x);
        double yawMoment = motion.levelZ(k, m, n);
        double lengthSquared = StrictMath.pow(0.25 * boat.hulls().lengthOverall(), 2);

        double hullWater = HULL_ADDED * waterForces.hullLift() / Units.G;
        double flow = 0.5 * water.density() * Math.max(1, rates.speed()) * WATER_SLOPE;
        double boards = controls.portBoard() + controls.starboardBoard();
        double swayDamping = flow
                * (boards * boat.mainFoil().shaftChord() * 1.2
                        + 2 * boat.rudder().shaftChord());
        double liftDamping =
                flow * (boards * boat.mainFoil().tipArea() + 2 * boat.rudder().elevatorArea());
        double lift = boat.mainFoil().yLift();
        double aft = boat.rudder().x();
        double hullDamping = waterForces.hullLift() > 0 ? 4 * WaterForces.HULL_DAMPING : 0;
        double massSway = inertia.mass() + addedSway * boards + hullWater;
        double massHeave = inertia.mass() + addedHeave * boards + hullWater;
        double surge = rates.surge() + dt * (forward / inertia.mass() + rates.yaw() * rates.sway());
        double sway =
                rates.sway() + implicit(dt, starboard - massSway * rates.yaw() * rates.surge(), massSway, swayDamping);
        double climb =
                withoutInertia(rates.climb(), -down, massHeave / HEAVE_TIME, liftDamping + hullDamping, CLIMB_MOST);
        double roll = rates.roll()
                + implicit(
                        dt,
                        k,
                        inertia.roll() + (addedHeave * boards + hullWater) * lift * lift,
                        airForces.rollDamping() + (liftDamping + hullDamping) * lift * lift);
        double yaw = rates.yaw()
                + implicit(
                        dt,
                        yawMoment,
                        inertia.yaw() + hullWater * lengthSquared,
                        flow * 2 * boat.rudder().shaftChord() * aft * aft);
        double pitch = withoutInertia(
                rates.pitch(),
                m,
                (inertia.pitch() + hullWater * lengthSquared) / PITCH_TIME,
                flow * 2 * boat.rudder().elevatorArea() * aft * aft + hullDamping * lengthSquared,
                PITCH_RATE_MOST);
        Rates next = new Rates(surge, sway, climb, roll, pitch, yaw);
        return new MotionState(moved(pose, rates, next, dt), next, controls);
    }

    /** The state as in a mirror, on the other tack of a wind from that direction (rad): a turn that costs nothing. */
    public MotionState mirrored(MotionState state, double windFrom) {
        airForces.forget();
        Pose pose = state.pose();
        Rates rates = state.rates();
        return new MotionState(
                new Pose(
                        pose.north(),
                        pose.east(),
                        pose.height(),
                        Angles.compass(2 * windFrom - pose.heading()),
                        -pose.roll(),
                        pose.pitch()),
                new Rates(rates.surge(), -rates.sway(), rates.climb(), -rates.roll(), rates.pitch(), -rates.yaw()),
                state.controls().mirrored());
    }

    /** What the gauges showed in the last step. */
    public MotionLoads loads() {
        return loads;
    }

    /** Steps so far in which the wing's equations had no answer. */
    public int unsolvedSteps() {
        return airForces.unsolved();
    }

    /** The boat as seen from outside in a state. */
    public BoatView view(MotionState state) {
        double y = inertia.y(state.controls().crew());
        return new BoatView(state, kinematics(state), inertia.x(), y, inertia.z());
    }

    /** Height of the centre of mass above the water (m) that gives this ride height (m) at this roll, pitch and crew. */
    public double heightFor(double rideHeight, double roll, double pitch, double crew) {
        Pose pose = new Pose(0, 0, 0, 0, roll, pitch);
        Kinematics motion =
                new Kinematics(pose, new Rates(0, 0, 0, 0, 0, 0), inertia.x(), inertia.y(crew), inertia.z());
        return rideHeight - motion.originHeight();
    }

    /** Energy of motion and height (J), for tests. */
    public double energy(MotionState state) {
        Rates r = state.rates();
        return 0.5 * inertia.mass() * (r.surge() * r.surge() + r.sway() * r.sway() + r.climb() * r.climb())
                + 0.5 * inertia.roll() * r.roll() * r.roll()
                + 0.5 * inertia.pitch() * r.pitch() * r.pitch()
                + 0.5 * inertia.yaw() * r.yaw() * r.yaw()
                + inertia.mass() * Units.G * state.pose().height();
    }

    private Kinematics kinematics(MotionState state) {
        return new Kinematics(
                state.pose(),
                state.rates(),
                inertia.x(),
                inertia.y(state.controls().crew()),
                inertia.z());
    }

    private static double implicit(double dt, double force, double mass, double damping) {
        return dt * force / (mass + dt * damping);
    }

    /**
     * Rate at which a force would be used up by its own damping and by the hold that the crew has on it; the force was
     * taken at the present rate.
     */
    private static double withoutInertia(double rate, double force, double hold, double damping, double most) {
        double next = (force + damping * rate) / (hold + damping);
        return Math.max(-most, Math.min(most, next));
    }

    private static Pose moved(Pose pose, Rates before, Rates after, double dt) {
        double surge = 0.5 * (before.surge() + after.surge());
        double sway = 0.5 * (before.sway() + after.sway());
        double heading = pose.heading() + 0.5 * dt * (before.yaw() + after.yaw());
        double middle = 0.5 * (pose.heading() + heading);
        double cos = StrictMath.cos(middle);
        double sin = StrictMath.sin(middle);
        return new Pose(
                pose.north() + dt * (surge * cos - sway * sin),
                pose.east() + dt * (surge * sin + sway * cos),
                pose.height() + dt * 0.5 * (before.climb() + after.climb()),
                Angles.compass(heading),
                pose.roll() + dt * 0.5 * (before.roll() + after.roll()),
                pose.pitch() + dt * 0.5 * (before.pitch() + after.pitch()));
    }
}
