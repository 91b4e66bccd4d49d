package trimwright.motion;

import trimwright.air.AirState;
import trimwright.boat.Boat;
import trimwright.boat.Side;
import trimwright.boat.WingSpec;
import trimwright.units.Angles;
import trimwright.units.Units;
import trimwright.water.WaterMotion;
import trimwright.water.WaterState;

/**
 * One boat's motion, stepped in time: surge, sway, heave, roll, pitch and yaw. Each rate's own damping is taken implicitly,
 * so that 0.02 s serves. Left out: current.
 *
 * <p>Keeps the wing's last flow from step to step, so one model is for one boat and one thread.
 */
public final class MotionModel {
    /** The step for which the rest is tuned (s). */
    public static final double STEP = 0.02;

    /** Lift slope of a foil or strut in the water (1/rad): for the steps' implicit parts only, chosen. */
    private static final double WATER_SLOPE = 3.5;
    /** Water that moves with a foil over that of a long plate (-): hydro 4.2. */
    private static final double FINITE_SPAN = 0.7;
    /** Water that moves with a hull sideways and up over what the hull displaces (-): middle of 0.5-1.0 (hydro 4.2). */
    private static final double HULL_ADDED = 0.7;

    private final Boat boat;
    private final WaterState water;
    private final Inertia inertia;
    private final WaterForces waterForces;
    private final AirForces airForces;
    private final Actuators actuators;
    private final Grinding grinding;
    private final ForceSum sum = new ForceSum();
    private final double addedSway;
    private final double addedHeave;
    private final double addedPitch;
    private MotionLoads loads = new MotionLoads(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1);

    /** How the wing's lift follows its flow. */
    public enum Lift {
        /** The steady lift of every instant. */
        AT_ONCE,
        /** Behind wind, motion and setting as {@link LiftLag} has it. */
        LAGGING
    }

    /** How the wing's equations are solved. */
    public enum Line {
        /** In full. */
        FULL,
        /** On the tangents of a full solution nearby, and in full where none is near or a strip is near to stall. */
        LINEAR
    }

    /**
     * With lift that lags.
     *
     * @param strips into which the wing is cut; 16 to 20 serve
     */
    public MotionModel(Boat boat, WingSpec wing, AirState air, WaterState water, int strips) {
        this(boat, wing, air, water, strips, Lift.LAGGING);
    }

    /** As above, with the wing's lift at once or lagging. */
    public MotionModel(Boat boat, WingSpec wing, AirState air, WaterState water, int strips, Lift lift) {
        this(boat, wing, air, water, strips, lift, Line.FULL);
    }

    /** As above, with the wing's equations in full or on tangents. */
    public MotionModel(Boat boat, WingSpec wing, AirState air, WaterState water, int strips, Lift lift, Line line) {
        this.boat = boat;
        this.water = water;
        inertia = new Inertia(boat, wing);
        // In level trim the hulls carry the boat where her mass is.
        waterForces = new WaterForces(boat, inertia.x(), water);
        airForces = new AirForces(boat, wing, air, strips, lift, line);
        actuators = new Actuators(wing.sheet(), boat.handling());
        grinding = new Grinding(boat.handling());
        double quarter = Math.PI * water.density() / 4;
        double shaft = boat.mainFoil().shaftChord();
        double tip = boat.mainFoil().tipChord();
        addedSway = quarter * shaft * shaft * 0.6 * boat.mainFoil().shaftLength();
        addedHeave = FINITE_SPAN * quarter * tip * tip * boat.mainFoil().tipSpan();
        double elevator = boat.rudder().elevatorChord();
        addedPitch = 2
                * FINITE_SPAN
                * quarter
                * elevator
                * elevator
                * boat.rudder().elevatorSpan()
                * StrictMath.pow(boat.rudder().x() - inertia.x(), 2);
    }

    private MotionModel(MotionModel of) {
        boat = of.boat;
        water = of.water;
        inertia = of.inertia;
        waterForces = of.waterForces.copy();
        airForces = of.airForces.copy();
        actuators = of.actuators;
        grinding = of.grinding.copy(of.boat.handling());
        addedSway = of.addedSway;
        addedHeave = of.addedHeave;
        addedPitch = of.addedPitch;
        loads = of.loads;
    }

    /** One that goes on from here as this would, for another thread if need be. */
    public MotionModel copy() {
        return new MotionModel(this);
    }

    /** The state after one step (s) in that wind on flat water. After a {@link Mishap} she lies where she is. */
    public MotionState step(MotionState state, Commands commands, LocalWind wind, double dt) {
        return step(state, commands, new Surroundings(wind, WaterMotion.STILL), dt);
    }

    /** The same in that wind on that water. */
    public MotionState step(MotionState state, Commands commands, Surroundings around, double dt) {
        if (Mishap.of(state.pose()) != null) {
            return new MotionState(state.pose(), Rates.NONE, state.controls());
        }
        double moment = loads.turningMoment();
        Controls controls = actuators.move(state.controls(), commands, moment, grinding.forSheet(), dt);
        grinding.work(
                actuators.grinding(state.controls().sheet(), controls.sheet(), moment, dt),
                commands.flap() == Commands.FlapWork.INVERT,
                dt);
        Pose pose = state.pose();
        Rates rates = state.rates();
        double cx = inertia.x();
        double cy = inertia.y(controls.crew());
        double cz = inertia.z();
        Kinematics motion = new Kinematics(pose, rates, around.water(), cx, cy, cz);
        sum.clear();
        waterForces.addTo(sum, motion, controls, dt);
        airForces.addTo(sum, motion, pose.roll(), controls, around.wind(), pose.heading(), dt);
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
                waterForces.hullLift(),
                grinding.rested());

        double forward = motion.levelX(sum.x, sum.y, sum.z);
        double starboard = motion.levelY(sum.y, sum.z);
        double down = motion.levelZ(sum.x, sum.y, sum.z) + inertia.mass() * Units.G;
        Spin turningForce = new Spin(
                sum.k - (cy * sum.z - cz * sum.y),
                sum.m - (cz * sum.x - cx * sum.z),
                sum.n - (cx * sum.y - cy * sum.x));
        double lengthSquared = StrictMath.pow(0.25 * boat.hulls().lengthOverall(), 2);

        double hullWater = HULL_ADDED * waterForces.hullLift() / Units.G;
        double flow = 0.5 * water.density() * Math.max(1, rates.speed()) * WATER_SLOPE;
        double boards = controls.portBoard() + controls.starboardBoard();
        double swayDamping = flow
                * (boards * boat.mainFoil().shaftChord() * 1.2
                        + 2 * boat.rudder().shaftChord());
        double elevators = flow * 2 * boat.rudder().elevatorArea();
        double liftDamping = flow * boards * boat.mainFoil().tipArea() + elevators;
        double lift = boat.mainFoil().yLift();
        double aft = boat.rudder().x() - cx;
        double hullDamping = waterForces.hullLift() > 0 ? 4 * WaterForces.HULL_DAMPING : 0;
        double massSway = inertia.mass() + addedSway * boards + hullWater;
        double massHeave = inertia.mass() + addedHeave * boards + hullWater;
        double surge = rates.surge() + dt * (forward / inertia.mass() + rates.yaw() * rates.sway());
        double sway =
                rates.sway() + implicit(dt, starboard - massSway * rates.yaw() * rates.surge(), massSway, swayDamping);
        double climb = rates.climb() + implicit(dt, -down, massHeave, liftDamping + hullDamping);
        Tensor tensor = inertia.about(controls.crew())
                .plus(
                        (addedHeave * boards + hullWater) * lift * lift,
                        addedPitch + hullWater * lengthSquared,
                        hullWater * lengthSquared);
        Tensor damped = tensor.plus(
                dt * (airForces.rollDamping() + (liftDamping + hullDamping) * lift * lift),
                dt * (elevators * aft * aft + hullDamping * lengthSquared),
                dt * flow * 2 * boat.rudder().shaftChord() * aft * aft);
        Spin spin = motion.spin();
        Spin changed = damped.rates(
                turningForce.plus(tensor.momentum(spin).cross(spin)).times(dt));
        Spin turning = motion.turning(spin.plus(changed));
        Rates next = new Rates(surge, sway, climb, turning.p(), turning.q(), turning.r());
        return new MotionState(moved(pose, rates, next, dt), next, controls);
    }

    /** The state as in a mirror, on the other tack of a wind from that direction (rad): a turn that costs nothing. */
    public MotionState mirrored(MotionState state, double windFrom) {
        airForces.forget();
        waterForces.forget();
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

    /** Whether air stands on a shaft or rudder, so that it has lost most of its side force. */
    public boolean isVentilated() {
        return waterForces.hasAir();
    }

    /** How often so far the wing's equations were solved in full, or tried. */
    public int fullSolutions() {
        return airForces.solutions();
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
                + inertia.about(state.controls().crew())
                        .energy(kinematics(state).spin())
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

    private static Pose moved(Pose pose, Rates before, Rates after, double dt) {
        double surge = 0.5 * (before.surge() + after.surge());
        double sway = 0.5 * (before.sway() + after.sway());
        double heading = pose.heading() + 0.5 * dt * (before.yaw() + after.yaw());
        double middle = 0.5 * (pose.heading() + heading);
        double cos = StrictMath.cos(middle);
        double sin = StrictMath.sin(middle);
        // Height, roll and pitch swing: with the new rates the step adds no energy to a swing.
        return new Pose(
                pose.north() + dt * (surge * cos - sway * sin),
                pose.east() + dt * (surge * sin + sway * cos),
                pose.height() + dt * after.climb(),
                Angles.compass(heading),
                pose.roll() + dt * after.roll(),
                pose.pitch() + dt * after.pitch());
    }
}
