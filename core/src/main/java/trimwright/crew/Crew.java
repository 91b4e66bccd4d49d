package trimwright.crew;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import trimwright.boat.Boat;
import trimwright.boat.WingSpec;
import trimwright.course.CourseGeometry;
import trimwright.course.PlanePoint;
import trimwright.motion.Commands;
import trimwright.motion.Controls;
import trimwright.units.Angles;

/**
 * One computed crew at work: from what it sees to what it asks of the controls, step by step. Holds the memory of its
 * people; one crew is for one boat and one thread.
 */
public final class Crew {
    private static final double LOOK = 0.2;
    private static final double STRAIGHT_RATE = Math.toRadians(4);
    /** Angle by which a slow boat bears off from the best angle upwind, or comes up downwind, to gather speed (rad). */
    private static final double BUILD_UP = Math.toRadians(42);

    /** Heel off the aim that the driver leaves to the trimmer, and most that is steered for more (rad). */
    private static final double HEEL_FREE = Math.toRadians(1.5);

    private static final double HEEL_STEER = Math.toRadians(9);

    /** Acceleration that a crew counts on before the start (m/s2): chosen. */
    private static final double GATHER = 0.45;

    /** Widest angle on which a slow boat builds speed upwind, and downwind counted from astern (rad): chosen. */
    private static final double MOST_UP = Math.toRadians(82);

    /** Way to the mark below which no better angle for speed is taken (m): chosen. */
    private static final double SHORT_WAY = 220;

    private static final double BUILD_DOWN = Math.toRadians(40);

    /** Change of the ordered angle from which a crew is gathering speed (rad): what a steady phase may depart by. */
    private static final double GATHERING = Math.toRadians(8);

    private final SailingAims aims;
    private final Temper temper;
    private final LegGuide guide;
    private final Tactician tactician;
    private final Lookout lookout = new Lookout();
    private final Turns turns;
    private final Driver driver;
    private final Trimmer trimmer;
    private final FlightController flight;
    private final Turning turning;
    private final double gun;
    private final List<Double> passages = new ArrayList<>();

    private double nextLook = Double.NEGATIVE_INFINITY;
    private double legBegan = Double.NEGATIVE_INFINITY;
    private boolean isMirrored;
    private double way;
    private double build;
    private double dodge;
    private double offMark;

    /** @param gun time of the start signal (s) */
    public Crew(
            Boat boat,
            WingSpec wing,
            SailingAims aims,
            CourseGeometry course,
            Habits habits,
            Temper temper,
            Turning turning,
            int tack,
            double gun) {
        this.aims = aims;
        this.temper = temper;
        this.turning = turning;
        this.gun = gun;
        guide = new LegGuide(course, temper);
        tactician = new Tactician(course, aims, temper, turning, tack);
        trimmer = new Trimmer(wing.trim(), habits, tack);
        flight = new FlightController(boat, habits);
        turns = new Turns();
        driver = new Driver();
    }

    private Crew(Crew of, Habits habits, Turning turning) {
        aims = of.aims;
        temper = of.temper;
        this.turning = turning;
        gun = of.gun;
        guide = of.guide.copy();
        tactician = of.tactician.copy(turning);
        trimmer = of.trimmer.copy(habits);
        flight = of.flight.copy(habits);
        turns = of.turns.copy();
        driver = of.driver.copy();
        passages.addAll(of.passages);
        nextLook = of.nextLook;
        legBegan = of.legBegan;
        isMirrored = of.isMirrored;
        way = of.way;
        build = of.build;
        dodge = of.dodge;
        offMark = of.offMark;
    }

    /** A crew that goes on from here by itself, from now on with those habits and that way of turning. */
    public Crew copy(Habits habits, Turning made) {
        return new Crew(this, habits, made);
    }

    /** What to ask of the controls now. */
    public Commands work(Sight sight, PlanePoint bow, List<OtherBoat> others, double dt) {
        double passed = guide.passes(bow, sight.time(), gun);
        if (!Double.isNaN(passed)) {
            passages.add(passed);
            legBegan = sight.time();
        }
        PlanePoint target = guide.target();
        way = guide.left(bow);
        if (sight.time() >= nextLook) {
            nextLook = sight.time() + LOOK;
            if (turns.coming() == null && !guide.hasFinished() && !guide.isClose(bow)) {
                tactician.look(sight, bow, target);
            }
            dodge = turns.coming() != null || guide.leg() < 0
                    ? 0
                    : lookout.dodge(bow, sight.course(), sight.speed(), sight.tack(), sight.windFrom(), others);
        }
        Plan plan = tactician.plan();
        double angle = angle(sight, plan);
        Aim aim = aims.at(sight.windSpeed(), turns.active() == null ? angle : Math.abs(sight.trueWindAngle()));
        build(sight, plan, dt);
        turns.consider(sight, plan.tack(), angle, plan.cause(), sight.time() < legBegan + 6);
        isMirrored = turning == Turning.AT_ONCE && turns.crosses();
        if (isMirrored) {
            turns.end(sight.time());
            tactician.turned(sight.time());
            trimmer.mirror();
            flight.mirror();
            driver.mirror();
            return new Commands(controls(aim, 0), trimmer.flap());
        }
        TurnOrder coming = turns.coming();
        TurnOrder turn = turns.active();
        int tack = turn != null ? turn.toTack() : sight.tack();
        double heading = heading(sight, plan, tack, angle, aim);
        if (turns.proceed(sight, heading, trimmer.inverted(), Double.NaN)) {
            tactician.turned(sight.time());
        }
        double power = guide.leg() < 0 ? startPower(sight) : 1;
        double grip = flight.holdsHeel() ? 0 : 1;
        trimmer.work(sight, aim, turn, power, grip, dt);
        flight.work(sight, aim, trimmer.side(), turn, coming, dt);
        double rudder = driver.steer(sight, heading, rate(turn), dt);
        return new Commands(controls(aim, rudder), trimmer.flap());
    }

    /** Whether the last work ended in a turn at once: the boat then is on the other tack, as in a mirror. */
    public boolean isMirrored() {
        return isMirrored;
    }

    /** Times of crossing the start and of the end of each leg (s). */
    public List<Double> passages() {
        return List.copyOf(passages);
    }

    /** Turns that are done. */
    public List<DoneTurn> turns() {
        return List.copyOf(turns.done());
    }

    /** -1 before the start, then from 0; the number of legs when finished. */
    public int leg() {
        return guide.leg();
    }

    /**
     * How the leg is sailed now: {@code upwind}, {@code downwind}, {@code direct} at its end, or {@code gathering} speed on an
     * angle that is ordered well off the one to be held.
     */
    public String sailing() {
        Plan.Sail sail = tactician.plan().sail();
        double off = switch (sail) {
            case UPWIND -> build * BUILD_UP;
            case DOWNWIND -> build * BUILD_DOWN;
            case DIRECT -> Math.abs(offMark);
        };
        return mayBuild() && off > GATHERING ? "gathering" : sail.name().toLowerCase(Locale.ROOT);
    }

    public boolean hasFinished() {
        return guide.hasFinished();
    }

    /** Whether a turn is under way or being prepared. */
    public boolean isAtTurn() {
        return turns.coming() != null;
    }

    /** The turn under way, null in straight sailing. */
    public @Nullable TurnOrder turning() {
        return turns.active();
    }

    /** Angle that is sailed when the helm is steady, tack-free, from the course (rad). */
    private double angle(Sight sight, Plan plan) {
        double upwind = aims.upwindAngle(sight.windSpeed());
        double downwind = aims.downwindAngle(sight.windSpeed());
        double off = mayBuild() ? build : 0;
        return switch (plan.sail()) {
            case UPWIND -> Math.max(upwind, Math.min(MOST_UP, upwind + off * BUILD_UP));
            case DOWNWIND -> Math.min(downwind, Math.max(Math.PI - MOST_UP, downwind - off * BUILD_DOWN));
            case DIRECT -> Math.abs(Angles.signed(sight.windFrom() - plan.bearing()));
        };
    }

    private double heading(Sight sight, Plan plan, int tack, double angle, Aim aim) {
        double leeway = tack * aim.attitude().leeway();
        boolean steersByHeel = turns.active() == null && !flight.holdsHeel() && sight.isFlying();
        double toReach = !steersByHeel ? 0 : byHeel(sight, tack, aim, angle);
        offMark = 0;
        if (plan.sail() == Plan.Sail.DIRECT && plan.tack() == tack) {
            offMark = toBuild(sight, angle);
            return plan.bearing() + leeway + dodge - tack * (toReach + offMark);
        }
        return sight.windFrom() - tack * (angle + toReach) + leeway + dodge;
    }

    private boolean mayBuild() {
        return turns.active() == null && way > SHORT_WAY;
    }

    /** A slow boat that lies its mark on a poor angle for speed takes a better one first. */
    private double toBuild(Sight sight, double angle) {
        double off = mayBuild() ? build : 0;
        if (angle < Math.PI / 2) {
            double better = Math.min(MOST_UP, aims.upwindAngle(sight.windSpeed()) + off * BUILD_UP);
            return off > 0.2 ? Math.max(0, better - angle) : 0;
        }
        double better = Math.max(Math.PI - MOST_UP, aims.downwindAngle(sight.windSpeed()) - off * BUILD_DOWN);
        return off > 0.2 ? Math.min(0, better - angle) : 0;
    }

    /** A driver helps the trimmer: toward a reach when she heels to windward for want of power, away from it in a gust. */
    static double byHeel(Sight sight, int tack, Aim aim, double angle) {
        double over = tack * sight.state().pose().roll() - aim.attitude().heel();
        double beyond = over > 0 ? Math.max(0, over - HEEL_FREE) : Math.min(0, over + HEEL_FREE);
        double turn = Math.max(-HEEL_STEER, Math.min(HEEL_STEER, 2 * beyond));
        return angle < Math.toRadians(95) ? turn : -turn;
    }

    private void build(Sight sight, Plan plan, double dt) {
        double best = switch (plan.sail()) {
            case UPWIND -> aims.upwindAngle(sight.windSpeed());
            case DOWNWIND -> aims.downwindAngle(sight.windSpeed());
            case DIRECT -> Math.abs(sight.trueWindAngle());
        };
        double share = sight.speed() / aims.at(sight.windSpeed(), best).speed();
        double wanted = Math.max(0, Math.min(1, (0.9 - share) / 0.3));
        build += Math.min(1, dt / (wanted > build ? 1.0 : 2.5)) * (wanted - build);
    }

    /** Less than full power while she would come to the line too early if she gathered speed from now on. */
    private double startPower(Sight sight) {
        double left = gun + temper.startMargin() - sight.time();
        double speed = sight.speed();
        double needed = (Math.sqrt(speed * speed + 2 * GATHER * Math.max(0, way)) - speed) / GATHER;
        return Math.max(0.15, Math.min(1, 1 - 0.15 * (left - needed)));
    }

    static double rate(@Nullable TurnOrder turn) {
        if (turn == null) {
            return STRAIGHT_RATE;
        }
        return switch (turn.kind()) {
            case TACK -> Math.toRadians(20);
            case GYBE -> Math.toRadians(20);
            case BEAR_AWAY, ROUND_UP -> Math.toRadians(11);
        };
    }

    private Controls controls(Aim aim, double rudder) {
        return new Controls(
                trimmer.sheet(),
                trimmer.camber(),
                trimmer.twist(),
                aim.trim().twistMid(),
                flight.portRake(),
                flight.starboardRake(),
                flight.elevator(),
                flight.differential(),
                rudder,
                flight.portBoard(),
                flight.starboardBoard(),
                flight.crew());
    }
}
