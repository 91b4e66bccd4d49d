package trimwright.crew;

import org.jspecify.annotations.Nullable;
import trimwright.boat.TrimRange;
import trimwright.motion.Commands.FlapWork;

/**
 * Holds the moment with the sheet, sets camber and twist to the aim, throws the camber over in turns.
 *
 * <p>The sheet follows the apparent wind at the aimed incidence, eased or hauled by heel and its rate: heel is where too
 * much or too little moment shows first. What is asked of the sheet comes through a person's delay, longer in the easing
 * sense for a crew that eases late. Gains are chosen.
 */
final class Trimmer {
    /** Middle of the published 0.25-0.4 s of human delay. */
    private static final double DELAY = 0.3;

    private static final double BY_HEEL = 0.9;
    private static final double BY_RATE = 1.0;
    private static final double BY_TIME = 0.15;

    /** Time over which the wind is settled that the sheet follows (s): chosen. What is eased in a moment takes seconds to haul. */
    private static final double WIND_TIME = 3;

    /** Change of the wind's angle that is no gust (rad): chosen. */
    private static final double ANOTHER_WIND = Math.toRadians(25);

    /** Most that is hauled beyond the aimed incidence (rad). */
    private static final double HAUL = Math.toRadians(3);

    /** Beyond the wind by this the wing with its camber pulls no more (rad). */
    private static final double LUFFING = Math.toRadians(14);

    /** Leeward heel on the hulls that is left alone (rad). */
    private static final double FREE_HEEL = Math.toRadians(2.5);

    /** Ease from the aim that takes all power out of the wing (rad): chosen. */
    static final double LUFFED = Math.toRadians(20);

    /** Rate and most of hauling for power (rad/s, rad): chosen. */
    private static final double HAULING = Math.toRadians(2);

    private static final double MOST_HAULED = Math.toRadians(12);
    /** Share of the foils' lift at which the windward one counts as unloaded (-): chosen. */
    private static final double UNLOADED = -0.03;

    /** Share of full power that is left while she slides (-): chosen. */
    private static final double SLIDING = 0.6;

    private static final double EASE = Math.toRadians(10);
    /** Stall margin below which nothing more is hauled (rad). */
    private static final double MARGIN = Math.toRadians(2.5);
    /** The camber goes over so that it is flat as the wind crosses: half of a usual inversion earlier (s). */
    private static final double INVERSION_LEAD = 1.3;

    /** Camber for gathering speed (rad): chosen. */
    private static final double FULL_CAMBER = Math.toRadians(30);

    /** Share of the grinders' store below which they are spared (-): chosen. */
    private static final double TIRED = 0.5;

    /** Largest haul and ease that are left alone when the grinders are spent (rad), less as they are rested: chosen. */
    private static final double HAUL_SPARED = Math.toRadians(4);

    private static final double EASE_SPARED = Math.toRadians(1.5);

    /** Shortest step for which the memory of what was asked is long enough (s). */
    private static final double SHORTEST_STEP = 0.005;

    private final TrimRange range;
    private final Habits habits;
    private final Slide slide;
    private final double[] asked = new double[(int) Math.round((DELAY + 4) / SHORTEST_STEP)];
    private int count;
    private double held;
    private double hauled;
    private double settled = Double.NaN;
    private int side;
    private double crossed = Double.NaN;
    private double inverted = Double.NaN;

    private double sheet;
    private double camber;
    private double twist;
    private FlapWork flap = FlapWork.TRIM;

    Trimmer(TrimRange range, Habits habits, int tack) {
        this.range = range;
        this.habits = habits;
        side = tack;
        slide = new Slide();
    }

    private Trimmer(Trimmer of, Habits habits) {
        range = of.range;
        this.habits = habits;
        side = of.side;
        slide = of.slide.copy();
    }

    /** One that goes on from here with those habits. */
    Trimmer copy(Habits with) {
        Trimmer other = new Trimmer(this, with);
        System.arraycopy(asked, 0, other.asked, 0, asked.length);
        other.count = count;
        other.held = held;
        other.hauled = hauled;
        other.settled = settled;
        other.crossed = crossed;
        other.inverted = inverted;
        other.sheet = sheet;
        other.camber = camber;
        other.twist = twist;
        other.flap = flap;
        return other;
    }

    /**
     * @param aim what to set
     * @param turn the turn under way, null in straight sailing
     * @param asks share of full power asked for, 0 to 1: less eases the sheet
     * @param grip share of the heel that is this person's alone to hold, 0 to 1
     * @param dt step (s)
     */
    void work(Sight sight, Aim aim, @Nullable TurnOrder turn, double asks, double grip, double dt) {
        chooseSide(sight, turn);
        double power = slide.look(sight, aim, side, turn) ? Math.min(asks, SLIDING) : asks;
        flap = sight.time() < inverted + 4 && turn != null ? FlapWork.INVERT : FlapWork.TRIM;
        double roll = side * sight.state().pose().roll();
        double rollRate = side * sight.state().rates().roll();
        // On the hulls heel says nothing until a hull flies.
        double wanted = turn == null ? aim.attitude().heel() : 0;
        double error = sight.isFlying() ? wanted - roll : Math.max(0, -FREE_HEEL - roll);
        double wind = settle(side * sight.felt().angle(), turn, dt);
        double most = sight.loads().stallMargin() < MARGIN ? 0 : HAUL;
        // What is held by memory fades where another holds the heel.
        held += sight.isFlying() ? (grip * BY_TIME * error - (1 - grip) * held / 2) * dt : -held / 2 * dt;
        held = Math.max(-most, Math.min(EASE, held));
        double byHeel =
                grip * (BY_HEEL * error - BY_RATE * rollRate) + (1 - grip) * 2 * Math.max(0, error - FREE_HEEL) + held;
        byHeel = Math.max(-most, byHeel);
        double upright = Math.max(0, Math.min(1, 1 - (error - Math.toRadians(2)) / Math.toRadians(3)));
        double slow = Math.max(0, Math.min(1, (0.8 - sight.speed() / aim.speed()) / 0.3)) * power * upright;
        double incidence = incidence(sight, aim, slow, turn == null ? 1 - grip : 0, dt);
        double eased = (1 - power) * LUFFED;
        double want = wind - incidence + byHeel + eased;
        want = Math.max(Math.toRadians(-4), Math.min(range.sheetMax(), Math.min(want, wind + LUFFING)));
        if (turn != null && turn.kind() == TurnKind.GYBE) {
            // Toward the centreline, from where it is not far to the other side.
            want = Math.min(want, Math.toRadians(15) + Math.PI - Math.abs(sight.trueWindAngle()));
        }
        double now = side * sight.state().controls().sheet();
        double ordered = delayed(want, now, dt);
        sheet = side * (turn == null ? spared(ordered, now, sight.loads().grindersRested()) : ordered);
        double cambered = aim.trim().camber()
                + slow * Math.max(0, FULL_CAMBER - aim.trim().camber());
        double foot = Math.max(0, Math.min(range.camberMax(), cambered));
        camber = side * foot;
        double twisted = aim.trim().twist() * (1 - 0.7 * slow) + habits.twist();
        twist = side * Math.max(0, Math.min(Math.min(range.twistMax(), foot - range.headFlapMin()), twisted));
    }

    /** From now on the other tack, all else alike. */
    void mirror() {
        side = -side;
        sheet = -sheet;
        camber = -camber;
        twist = -twist;
        crossed = Double.NaN;
    }

    /** Tack for which the wing is trimmed: +1 wind from starboard, -1 from port. */
    int side() {
        return side;
    }

    /** Signed sheet to ask for (rad). */
    double sheet() {
        return sheet;
    }

    double camber() {
        return camber;
    }

    double twist() {
        return twist;
    }

    FlapWork flap() {
        return flap;
    }

    /** When the camber was last ordered over (s), NaN if never. */
    double inverted() {
        return inverted;
    }

    /** The side to trim for: changes when the wind is about to cross, later by the habit. */
    private void chooseSide(Sight sight, @Nullable TurnOrder turn) {
        if (turn == null || turn.toTack() == side) {
            crossed = Double.NaN;
            if (turn == null && sight.tack() != side && Math.abs(sight.felt().angle()) > Math.toRadians(10)) {
                side = sight.tack();
                held = 0;
            }
            return;
        }
        double rate = felt(sight);
        double ahead = sight.felt().angle() + rate * INVERSION_LEAD;
        if (Double.isNaN(crossed) && ahead * side <= 0) {
            crossed = sight.time();
        }
        if (sight.time() >= crossed + habits.lateInversion()) {
            side = turn.toTack();
            held = 0;
            inverted = sight.time();
            crossed = Double.NaN;
        }
    }

    /** Rate at which the apparent wind goes round the bow in a turn (rad/s): derivative of the wind triangle by heading. */
    private static double felt(Sight sight) {
        double w = sight.windSpeed();
        double speed = sight.speed();
        double cos = StrictMath.cos(sight.trueWindAngle());
        double square = w * w + speed * speed + 2 * w * speed * cos;
        return -sight.state().rates().yaw() * w * (w + speed * cos) / Math.max(1, square);
    }

    /**
     * More than the aimed incidence while there is moment to carry: for a slow boat until a little margin to stall is left,
     * and where the foils hold the heel until the windward one carries nothing.
     */
    private double incidence(Sight sight, Aim aim, double slow, double byFoils, double dt) {
        double spare = sight.loads().stallMargin() - MARGIN - Math.toRadians(1);
        double windward =
                side > 0 ? sight.loads().starboardMain() : sight.loads().portMain();
        double share = windward / (sight.loads().portMain() + sight.loads().starboardMain());
        boolean more = slow > 0 || (byFoils > 0 && share > UNLOADED);
        double rate = spare > 0 && more ? HAULING : -HAULING;
        if (spare < 0) {
            rate = -3 * HAULING;
        }
        hauled = Math.max(0, Math.min(MOST_HAULED, hauled + rate * dt));
        return aim.trim().incidence() + hauled;
    }

    /** The apparent wind that the sheet follows: in straight sailing without its gusts. */
    private double settle(double now, @Nullable TurnOrder turn, double dt) {
        if (turn != null || !(Math.abs(now - settled) < ANOTHER_WIND)) {
            settled = now;
        }
        settled += dt / WIND_TIME * (now - settled);
        return settled;
    }

    /** What is ordered less what tired grinders are spared: all that is eased must be hauled again. */
    private static double spared(double ordered, double now, double rested) {
        double tired = Math.max(0, 1 - rested / TIRED);
        double way = ordered - now;
        double spared = tired * (way > 0 ? EASE_SPARED : HAUL_SPARED);
        return now + Math.copySign(Math.max(0, Math.abs(way) - spared), way);
    }

    private double delayed(double want, double now, double dt) {
        int length = asked.length;
        asked[count % length] = want;
        count++;
        int delay = (int) Math.round(DELAY / dt);
        int late = delay + (int) Math.round(habits.lateEase() / dt);
        double usual = asked[Math.floorMod(count - 1 - Math.min(delay, count - 1), length)];
        if (usual > now) {
            return Math.max(now, asked[Math.floorMod(count - 1 - Math.min(late, count - 1), length)]);
        }
        return usual;
    }
}
