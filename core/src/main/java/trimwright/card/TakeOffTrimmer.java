package trimwright.card;

import trimwright.air.ApparentWind;
import trimwright.boat.TrimRange;
import trimwright.motion.MotionState;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;

/**
 * Wing, crew and elevators' differential through a take-off, wind from starboard. The sheet follows the apparent wind at an
 * incidence and eases by heel; a boat short of speed gets all the power that heel and stall allow. Laws and gains are those of the
 * simulated trimmer where he has them; chosen.
 */
final class TakeOffTrimmer {
    private static final double BY_HEEL = 0.9;
    private static final double BY_RATE = 1.0;
    private static final double BY_TIME = 0.35;
    private static final double EASE_HELD = Math.PI / 18;

    /** Most hauled beyond the aimed incidence, to come back from windward heel (rad). */
    private static final double HAUL = Math.PI / 60;

    /** Stall margin above the boat file's least below which nothing more is hauled (rad): chosen, half a degree. */
    private static final double OVER_MARGIN = Math.PI / 360;

    /** Stall margin above which heel, not stall, keeps the wing eased (rad). */
    private static final double SPARE = Math.PI / 36;

    /** How fast a slow boat's sheet comes in for power, beyond the aimed incidence, and how far (rad/s, rad). */
    private static final double HAULING = Math.PI / 90;

    private static final double HAULED_MOST = Math.PI / 15;

    /** Share of the aimed speed below which power is gathered, and from which the trim is the aim's (-). */
    private static final double SHORT = 0.95;

    private static final double USUAL = 0.8;

    /** How far below {@link #USUAL} the trim is all for power (-). */
    private static final double SLOW = 0.3;

    /** Camber for gathering speed (rad) and what it leaves of the twist (-). */
    private static final double FULL_CAMBER = Math.PI / 6;

    private static final double TWIST_LEFT = 0.3;

    /** Least gain of speed over which the shape goes over (m/s): chosen. */
    private static final double LEAST_GAIN = 0.5;

    /** Leeward heel on the hulls that is left alone (rad). */
    private static final double FREE_HEEL = Math.PI / 72;

    /** Windward heel beyond the target's and that which is left alone, at which all righting moment is given up (rad): chosen. */
    private static final double GIVEN_UP = Math.PI / 36;

    /** Ride heights between which heel goes over to that of flying (m): sooner she would lose power that she has too little of. */
    private static final double TOUCHES = -0.05;

    private static final double FLIES = 0.15;

    /** Rate of camber, twist and attitude from aim to aim (rad/s): slower than the rams. */
    private static final double SHAPE = Math.PI / 60;

    /** Rate at which the crew move (m/s): the simulated crew's. */
    private static final double WALK = 2.1;

    private final TrimRange range;
    private final double elevatorMax;
    private final double wind;
    private final SailingState onHulls;
    private final SailingState lift;
    private final SailingState gather;
    private final SailingState onFoils;
    private double sheet;
    private double camber;
    private double twist;
    private double twisted;
    private double incidence;
    private double pitch;
    private double differential;
    private double crew;
    private double held;
    private double hauled;

    /**
     * @param range of the wing
     * @param elevatorMax largest angle of an elevator's share (rad)
     * @param wind true wind speed at 10 m (m/s)
     * @param onHulls target on the hulls, from which she begins
     * @param lift how the balance has her leave the water at the angle of gathering
     * @param gather state on the foils there
     * @param onFoils target on the foils, to which she goes
     */
    TakeOffTrimmer(
            TrimRange range,
            double elevatorMax,
            double wind,
            SailingState onHulls,
            SailingState lift,
            SailingState gather,
            SailingState onFoils) {
        this.range = range;
        this.elevatorMax = elevatorMax;
        this.wind = wind;
        this.onHulls = onHulls;
        this.lift = lift;
        this.gather = gather;
        this.onFoils = onFoils;
        sheet = onHulls.get(Variable.SHEET);
        camber = onHulls.get(Variable.CAMBER);
        twist = onHulls.get(Variable.TWIST);
        twisted = twist;
        incidence = incidence(onHulls);
        pitch = onHulls.get(Variable.PITCH);
        differential = onHulls.get(Variable.ELEVATOR_DIFFERENTIAL);
        crew = onHulls.get(Variable.CREW_PLACE);
    }

    /**
     * What the trimmer feels.
     *
     * @param ride height (m)
     * @param wind apparent, at 10 m, from the bow
     * @param stallMargin of the wing (rad)
     * @param turned share of the turn to the angle of gathering (-)
     * @param settled share of the turn from there to the target (-); NaN before it
     */
    record Feel(double ride, ApparentWind wind, double stallMargin, double turned, double settled) {
        boolean isSettling() {
            return !Double.isNaN(settled);
        }
    }

    /** One step (s). */
    void work(MotionState now, Feel feel, double dt) {
        SailingState from = feel.isSettling() ? gather : onHulls;
        boolean isOnHulls = !feel.isSettling() && feel.ride() < FLIES;
        SailingState to = feel.isSettling() ? onFoils : isOnHulls ? lift : gather;
        double share = feel.isSettling() ? feel.settled() : feel.turned();
        double speed = now.rates().speed();
        double aimedSpeed = to.get(Variable.BOAT_SPEED);
        double slow = Math.max(0, Math.min(1, (USUAL - speed / onFoils.get(Variable.BOAT_SPEED)) / SLOW));
        // On the hulls the shape goes with the speed: full while power is short, flat once moment is.
        shape(from, to, isOnHulls ? gained(speed) : share, isOnHulls ? 0 : slow, feel, dt);
        incidence += clamp(incidence(from) + share * (incidence(to) - incidence(from)) - incidence, SHAPE * dt);
        double up = Math.max(0, Math.min(1, feel.ride() / onFoils.get(Variable.RIDE_HEIGHT)));
        pitch += clamp(mix(gather, onFoils, Variable.PITCH, up) - pitch, SHAPE * dt);
        double used = 1 - givenUp(now);
        crew += clamp(used * mix(gather, onFoils, Variable.CREW_PLACE, up) - crew, WALK * dt);
        // The same moment of the elevators at less speed.
        double slower = Math.max(1, aimedSpeed / Math.max(1, speed));
        double asked =
                used * Math.min(elevatorMax, mix(from, to, Variable.ELEVATOR_DIFFERENTIAL, share) * slower * slower);
        differential += clamp(asked - differential, SHAPE * dt);
        sheet(now, feel, speed < SHORT * aimedSpeed, dt);
    }

    /** Share of the righting moment that is given up (-): what heels her to windward beyond the target is too much. */
    private double givenUp(MotionState now) {
        double over = now.pose().roll() - onFoils.get(Variable.HEEL) - FREE_HEEL;
        return Math.max(0, Math.min(1, over / GIVEN_UP));
    }

    /** Share of the way from the speed on the hulls to that of leaving the water (-), 0 to 1. */
    private double gained(double speed) {
        double from = onHulls.get(Variable.BOAT_SPEED);
        double way = Math.max(LEAST_GAIN, lift.get(Variable.BOAT_SPEED) - from);
        return Math.max(0, Math.min(1, (speed - from) / way));
    }

    private void shape(SailingState from, SailingState to, double share, double slow, Feel feel, double dt) {
        double aim = mix(from, to, Variable.CAMBER, share);
        camber += clamp(aim + slow * (Math.max(FULL_CAMBER, aim) - aim) - camber, SHAPE * dt);
        // Where heel keeps her from using all of the wing, a twisted one drives more for the same moment.
        boolean hasSpare = !feel.isSettling() && feel.stallMargin() > SPARE;
        twisted = Math.max(0, Math.min(range.twistMax(), twisted + (hasSpare ? SHAPE : -SHAPE) * dt));
        double even = mix(from, to, Variable.TWIST, share) * (1 - (1 - TWIST_LEFT) * slow);
        twist += clamp(Math.max(even, twisted) - twist, SHAPE * dt);
        twist = Math.max(0, Math.min(twist, Math.min(range.twistMax(), camber - range.headFlapMin())));
    }

    private void sheet(MotionState now, Feel feel, boolean isShort, double dt) {
        double roll = now.pose().roll();
        // As the hulls come up she is brought upright and over to windward, so that the leeward one leaves the water
        // too.
        double clear = Math.max(0, Math.min(1, (feel.ride() - TOUCHES) / (FLIES - TOUCHES)));
        double heel = -FREE_HEEL + clear * (onFoils.get(Variable.HEEL) + FREE_HEEL);
        double error = clear > 0 ? heel - roll : Math.max(0, -FREE_HEEL - roll);
        held = clear > 0 ? Math.max(-HAUL, Math.min(EASE_HELD, held + BY_TIME * error * dt)) : held * (1 - dt / 2);
        double byHeel = Math.max(-HAUL, BY_HEEL * error - BY_RATE * now.rates().roll() + held);
        byHeel = feel.stallMargin() < range.stallMarginMin() ? Math.max(0, byHeel) : byHeel;
        double spare = feel.stallMargin() - range.stallMarginMin() - OVER_MARGIN;
        boolean isWanted = hauled < 0 || (isShort && error <= 0);
        double hauling = spare < 0 ? -3 * HAULING : isWanted ? HAULING : -HAULING;
        // Too near stall the sheet goes out past the aimed incidence, and comes back to it.
        double least = spare < 0 || hauled < 0 ? -HAULED_MOST : 0;
        hauled = Math.max(least, Math.min(HAULED_MOST, hauled + hauling * dt));
        double out = feel.wind().angle() - incidence - hauled + byHeel;
        sheet = Math.max(0, Math.min(range.sheetMax(), out));
    }

    private double incidence(SailingState state) {
        return MotionStart.apparent(state, wind).angle() - state.get(Variable.SHEET);
    }

    double sheet() {
        return sheet;
    }

    double camber() {
        return camber;
    }

    double twist() {
        return twist;
    }

    double pitch() {
        return pitch;
    }

    double differential() {
        return differential;
    }

    /** To starboard, the windward side (m). */
    double crew() {
        return crew;
    }

    private static double mix(SailingState a, SailingState b, Variable variable, double share) {
        return a.get(variable) + share * (b.get(variable) - a.get(variable));
    }

    private static double clamp(double value, double most) {
        return Math.max(-most, Math.min(most, value));
    }
}
