package trimwright.practice;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import trimwright.boat.TrimRange;
import trimwright.boat.WingSpec;
import trimwright.crew.Aim;
import trimwright.crew.ComputedHand;
import trimwright.crew.Habits;
import trimwright.crew.Sight;
import trimwright.crew.TurnOrder;
import trimwright.crew.WingHand;
import trimwright.crew.WingOrder;
import trimwright.motion.Commands;
import trimwright.motion.Controls;

/**
 * A person at the wing, some of it or all: what is not theirs the computed hand works. Keeps a log of what the hands did and
 * in which step; the same log on the same setup is the same run.
 */
public final class PersonsHand implements WingHand {
    /** How fast what is asked of each control goes at full throw (rad/s): chosen, the controls' own rates bind. */
    private static final double SHEET_RATE = Math.toRadians(14);

    private static final double CAMBER_RATE = Math.toRadians(9);
    private static final double TWIST_RATE = Math.toRadians(5);
    /** How far what is asked may run ahead of a control (rad): chosen, so that letting go stops it. */
    private static final double LEAD = Math.toRadians(2);

    /** How long the flap may go over at its fastest after an inversion (s). */
    private static final double GOES_OVER = 4;

    private static final double SHEET_LEAST = Math.toRadians(-4);

    private final TrimRange range;
    private final Set<WingPart> mine;
    private final ComputedHand computed;
    private final List<Logged> log = new ArrayList<>();
    private final List<Logged> script;
    private HandInput input = HandInput.NONE;
    private int next;
    private long steps;
    private int inversions;
    private double sheet = Double.NaN;
    private double camber;
    private double twist;
    private int side;
    private double inverted = Double.NaN;

    /**
     * One change of what the hands do.
     *
     * @param step of the drill in which it acts, counted from when the hand takes over
     */
    public record Logged(long step, HandInput input) {}

    /**
     * @param mine what the person has in hand
     * @param tack +1 with the wind from starboard, -1 from port
     */
    public PersonsHand(WingSpec wing, Set<WingPart> mine, int tack) {
        this(wing, mine, tack, List.of());
    }

    /** The same hand again, by its log. */
    public PersonsHand(WingSpec wing, Set<WingPart> mine, int tack, List<Logged> script) {
        range = wing.trim();
        this.mine = mine.isEmpty() ? EnumSet.noneOf(WingPart.class) : EnumSet.copyOf(mine);
        this.script = List.copyOf(script);
        computed = new ComputedHand(wing, Habits.NONE, tack);
        side = tack;
    }

    /** What the hands do from the next step on. */
    public void put(HandInput newInput) {
        if (!newInput.equals(input)) {
            input = newInput;
            log.add(new Logged(steps, newInput));
        }
    }

    /** All changes so far. */
    public List<Logged> log() {
        return List.copyOf(log);
    }

    /** Tack for which the wing is trimmed: +1 wind from starboard, -1 from port. */
    public int side() {
        return side;
    }

    @Override
    public WingOrder work(Sight sight, Aim aim, @Nullable TurnOrder turn, double grip, double dt) {
        while (next < script.size() && script.get(next).step() == steps) {
            put(script.get(next++).input());
        }
        steps++;
        WingOrder other = computed.work(sight, aim, turn, grip, dt);
        Controls now = sight.state().controls();
        if (Double.isNaN(sheet)) {
            side = other.side();
            sheet = side * now.sheet();
            camber = side * now.camber();
            twist = side * now.twist();
        }
        chooseSide(sight, other);
        if (mine.contains(WingPart.SHEET)) {
            double at = side * now.sheet();
            sheet = clamp(led(sheet + input.sheet() * SHEET_RATE * dt, at), SHEET_LEAST, range.sheetMax());
        } else {
            sheet = other.side() * other.sheet();
        }
        boolean turning = sight.time() < inverted + GOES_OVER;
        if (mine.contains(WingPart.CAMBER)) {
            double asks = camber + input.camber() * CAMBER_RATE * dt;
            camber = clamp(turning ? asks : led(asks, side * now.camber()), 0, range.camberMax());
        } else {
            camber = other.side() * other.camber();
        }
        double mostTwist = Math.min(range.twistMax(), Math.max(0, camber - range.headFlapMin()));
        if (mine.contains(WingPart.TWIST)) {
            double asks = twist + input.twist() * TWIST_RATE * dt;
            twist = clamp(turning ? asks : led(asks, side * now.twist()), 0, mostTwist);
        } else {
            twist = clamp(other.side() * other.twist(), 0, mostTwist);
        }
        return new WingOrder(
                side * sheet,
                side * camber,
                side * twist,
                turning ? Commands.FlapWork.INVERT : Commands.FlapWork.TRIM,
                side,
                inverted);
    }

    private void chooseSide(Sight sight, WingOrder other) {
        boolean over;
        if (mine.contains(WingPart.INVERSION)) {
            over = (input.inversions() - inversions) % 2 != 0;
            inversions = input.inversions();
        } else {
            over = other.side() != side;
        }
        if (over) {
            side = -side;
            inverted = sight.time();
        }
    }

    private static double led(double asked, double at) {
        return clamp(asked, at - LEAD, at + LEAD);
    }

    private static double clamp(double value, double least, double most) {
        return Math.max(least, Math.min(most, value));
    }
}
