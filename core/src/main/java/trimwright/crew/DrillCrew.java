package trimwright.crew;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.boat.Boat;
import trimwright.motion.Commands;
import trimwright.motion.Controls;
import trimwright.units.Angles;

/**
 * A crew whose driver and flight controller are computed and whose wing is in another hand. It sails as it is told, with no
 * course and no other boats. Holds the memory of its people; one crew is for one boat and one thread.
 */
public final class DrillCrew {
    private static final double BUILD_UP = Math.toRadians(42);
    private static final double BUILD_DOWN = Math.toRadians(40);
    private static final double WIDEST = Math.toRadians(82);
    /** Share of the card's speed at which a turn is over (-): the one at which times after turns are told. */
    private static final double SETTLED = 0.95;

    private final SailingAims aims;
    private final WingHand hand;
    private final Turns turns;
    private final Driver driver;
    private final FlightController flight;
    private HelmOrder order;
    private double build;
    private @Nullable TurnConduct conduct;
    private boolean hasBegun;
    private boolean isSettled = true;
    private boolean isKeptDown;
    private WingOrder asked = new WingOrder(0, 0, 0, Commands.FlapWork.TRIM, 1, Double.NaN);
    private @Nullable Aim aim;

    public DrillCrew(Boat boat, SailingAims aims, WingHand hand, HelmOrder order) {
        this.aims = aims;
        this.hand = hand;
        this.order = order;
        turns = new Turns();
        driver = new Driver();
        flight = new FlightController(boat, Habits.NONE);
    }

    private DrillCrew(DrillCrew of, WingHand hand) {
        aims = of.aims;
        this.hand = hand;
        turns = of.turns.copy();
        driver = of.driver.copy();
        flight = of.flight.copy(Habits.NONE);
        order = of.order;
        build = of.build;
        conduct = of.conduct;
        hasBegun = of.hasBegun;
        isSettled = of.isSettled;
        isKeptDown = of.isKeptDown;
        asked = of.asked;
        aim = of.aim;
    }

    /** A crew that goes on from here by itself, with another hand at the wing. */
    public DrillCrew copy(WingHand other) {
        return new DrillCrew(this, other);
    }

    /** From now on, and until she has settled after the next turn, so. */
    public void conduct(TurnConduct planned) {
        conduct = planned;
        flight.conduct(planned);
    }

    /** From now on keep her hulls in the water, on the best angle however slow she is. */
    public void keepDown() {
        isKeptDown = true;
        flight.keepDown();
    }

    /** From now on fly when she can. */
    public void letFly() {
        isKeptDown = false;
        flight.letFly();
    }

    /** Gives up the turn under way or about to begin, and sails so; there is time for that up to the middle of the swing. */
    public void giveUp(double time, HelmOrder instead) {
        turns.end(time);
        tell(instead);
        hasBegun = true;
    }

    /** Whether the turn last ordered is over: the new course is held and speed is back. */
    public boolean isSettled() {
        return isSettled;
    }

    /** From now on sail so. */
    public void tell(HelmOrder newOrder) {
        order = newOrder;
        hasBegun = false;
        isSettled = false;
    }

    /** What to ask of the controls now. */
    public Commands work(Sight sight, double dt) {
        double best = bestAngle(sight);
        build(sight, best, dt);
        TurnOrder turn = turns.active();
        double angle = turn == null ? built(best) : exit(best);
        Aim now = aims.at(sight.windSpeed(), turn == null ? angle : Math.abs(sight.trueWindAngle()));
        aim = now;
        turns.consider(sight, order.tack(), best, TurnCause.FREE, false);
        turn = turns.active();
        int tack = turn != null ? turn.toTack() : sight.tack();
        double leeway = tack * now.attitude().leeway();
        boolean byHeel = turn == null && !flight.holdsHeel() && sight.isFlying();
        double toward = byHeel ? Crew.byHeel(sight, tack, now, angle) : 0;
        double heading = sight.windFrom() - tack * (angle + toward) + leeway;
        turns.proceed(sight, heading, asked.inverted(), conduct == null ? Double.NaN : conduct.board());
        settle(sight, best);
        asked = hand.work(sight, now, turn, flight.holdsHeel() ? 0 : 1, dt);
        flight.work(sight, now, asked.side(), turn, turns.coming(), dt);
        double rudder = driver.steer(sight, heading, rate(turn), dt);
        return new Commands(
                new Controls(
                        asked.sheet(),
                        asked.camber(),
                        asked.twist(),
                        now.trim().twistMid(),
                        flight.portRake(),
                        flight.starboardRake(),
                        flight.elevator(),
                        flight.differential(),
                        rudder,
                        flight.portBoard(),
                        flight.starboardBoard(),
                        flight.crew()),
                asked.flap());
    }

    /** How far off the best course a slow boat usually goes to gather speed at most, toward the beam wind (rad). */
    public static double mostBuilt(HelmOrder.Way way) {
        return switch (way) {
            case UPWIND -> BUILD_UP;
            case DOWNWIND -> BUILD_DOWN;
            case COURSE -> 0;
        };
    }

    /** What the card says for now; null before the first step. */
    public @Nullable Aim aim() {
        return aim;
    }

    /** Best angle for progress in the wind as the crew knows it, or the one that is ordered (rad), tack-free. */
    public double bestAngle(Sight sight) {
        return switch (order.way()) {
            case UPWIND -> aims.upwindAngle(sight.windSpeed());
            case DOWNWIND -> aims.downwindAngle(sight.windSpeed());
            case COURSE -> order.angle();
        };
    }

    /** Progress that the card promises at the best angle in the wind as the crew knows it (m/s). */
    public double bestProgress(Sight sight) {
        double angle = bestAngle(sight);
        double speed = aims.at(sight.windSpeed(), angle).speed();
        return order.way() == HelmOrder.Way.COURSE ? speed : speed * Math.abs(StrictMath.cos(angle));
    }

    /** Progress now, in the sense of the order (m/s). */
    public double progress(Sight sight) {
        double off = Angles.signed(sight.windFrom() - sight.course());
        if (order.way() == HelmOrder.Way.COURSE) {
            return sight.speed() * StrictMath.cos(off - order.tack() * order.angle());
        }
        double against = sight.speed() * StrictMath.cos(off);
        return order.way() == HelmOrder.Way.UPWIND ? against : -against;
    }

    /** The turn under way; null in straight sailing and while a board goes down before the helm goes over. */
    public @Nullable TurnOrder turning() {
        return turns.active();
    }

    /** Turns that are done. */
    public List<DoneTurn> turns() {
        return List.copyOf(turns.done());
    }

    private void settle(Sight sight, double best) {
        hasBegun |= turns.active() != null;
        if (!isSettled
                && hasBegun
                && turns.coming() == null
                && sight.speed() >= SETTLED * aims.at(sight.windSpeed(), best).speed()) {
            isSettled = true;
            conduct = null;
            flight.conduct(null);
        }
    }

    private double rate(@Nullable TurnOrder turn) {
        return turn == null || conduct == null ? Crew.rate(turn) : conduct.rate();
    }

    private void build(Sight sight, double best, double dt) {
        double share = sight.speed() / aims.at(sight.windSpeed(), best).speed();
        double wanted = Math.max(0, Math.min(1, (0.9 - share) / 0.3));
        build += Math.min(1, dt / (wanted > build ? 1.0 : 2.5)) * (wanted - build);
    }

    /** Where the bow swings in a turn. */
    private double exit(double best) {
        double beyond = conduct == null ? 0 : conduct.exit();
        return switch (order.way()) {
            case UPWIND -> best + beyond;
            case DOWNWIND -> best - beyond;
            case COURSE -> best;
        };
    }

    /** A slow boat takes a better angle for speed first, unless her course is given. */
    private double built(double best) {
        double usual = isKeptDown ? 0 : build;
        double share = conduct == null ? usual : usual * conduct.build();
        return switch (order.way()) {
            case UPWIND -> Math.max(best, Math.min(WIDEST, best + share * BUILD_UP));
            case DOWNWIND -> Math.min(best, Math.max(Math.PI - WIDEST, best - share * BUILD_DOWN));
            case COURSE -> best;
        };
    }
}
