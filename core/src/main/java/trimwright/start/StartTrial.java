package trimwright.start;

import java.util.ArrayList;
import java.util.List;

/** One boat in one wind before a start; each question is answered on a copy of her, so that none disturbs another. */
public final class StartTrial {
    /** Along the course across the line (m): chosen. */
    public static final List<Integer> DISTANCES = List.of(50, 100, 150, 200, 300, 400, 600);

    /** Share of the target that counts as full speed (-): as the reference has it for boats that gather speed (hydro reference 4.6). */
    public static final double FULL = 0.95;

    /** Time that she settles before anything is asked (s), and after she was told to slow down: chosen. */
    private static final double SETTLED = 15;

    private static final double SLOWED = 25;

    /** How long she is looked at while held (s): chosen. */
    private static final double LOOKED = 15;

    /** Longest that speed is gathered, and time after which a delay is judged (s): chosen. */
    private static final double LONGEST = 100;

    private static final double JUDGED = 60;

    private final StartSetup setup;
    private final StartBoat boat;

    /** @param seed of the wind */
    public StartTrial(StartSetup setup, long seed) {
        this.setup = setup;
        boat = new StartBoat(setup, seed);
        boat.sail(SETTLED);
    }

    /** She is held on that share of her power. */
    public Held held(double power) {
        StartBoat held = slowed(power);
        double sum = 0;
        double least = Double.POSITIVE_INFINITY;
        int wet = 0;
        int steps = 0;
        double until = held.time() + LOOKED;
        while (held.time() < until) {
            held.step();
            sum += held.speed();
            least = Math.min(least, held.speed());
            wet += held.touches() ? 1 : 0;
            steps++;
        }
        return new Held(power, sum / steps, least, (double) wet / steps, held.isCapsized() ? 1 : 0);
    }

    /**
     * She is told to lose all her power.
     *
     * @return her speed when she was last free of the water (m/s): slower she falls off her foils; NaN where she went over
     */
    public double dropped() {
        StartBoat slow = boat.copy();
        slow.order(0, 0);
        double least = Double.NaN;
        double until = slow.time() + SLOWED;
        while (slow.time() < until) {
            slow.step();
            least = slow.touches() ? least : slow.speed();
        }
        return slow.isCapsized() ? Double.NaN : least;
    }

    /** She gathers speed from being held on that share of her power. */
    public Gathered gathered(double power) {
        StartBoat held = slowed(power);
        held.order(1, 0);
        return gathered(held);
    }

    /** The same from the other tack: the seconds count from the driver's word to turn. */
    public Gathered fromOtherTack(double power) {
        StartBoat held = boat.copy();
        held.otherTack(power);
        held.sail(SLOWED);
        held.order(1, 0);
        return gathered(held);
    }

    /** At full speed she is told to lose way so for some seconds, and to go on then. */
    public Delayed delayed(Delay delay, double seconds) {
        StartBoat on = boat.copy();
        StartBoat slow = boat.copy();
        slow.order(delay.power(), delay.off());
        double least = slow.speed();
        double regained = 0;
        boolean touched = false;
        boolean ordered = false;
        double begin = slow.time();
        while (slow.time() < begin + JUDGED) {
            if (!ordered && slow.time() >= begin + seconds) {
                slow.order(1, 0);
                ordered = true;
            }
            slow.step();
            on.step();
            least = Math.min(least, slow.speed());
            touched |= slow.touches();
            boolean full = slow.speed() >= FULL * Math.min(on.speed(), setup.target());
            regained = full ? regained : slow.time() - begin;
        }
        return new Delayed(
                (on.along() - slow.along()) / setup.target(),
                regained > JUDGED - 1 ? Double.NaN : regained,
                least,
                slow.across() - on.across(),
                touched,
                slow.isCapsized());
    }

    private StartBoat slowed(double power) {
        StartBoat held = boat.copy();
        held.order(power, 0);
        held.sail(SLOWED);
        return held;
    }

    private Gathered gathered(StartBoat from) {
        double time = from.time();
        double along = from.along();
        double across = from.across();
        List<Double> reached = new ArrayList<>();
        double seconds = Double.NaN;
        double metres = Double.NaN;
        double aside = Double.NaN;
        boolean flew = false;
        boolean touched = false;
        while (from.time() < time + LONGEST
                && !from.isCapsized()
                && (reached.size() < DISTANCES.size() || Double.isNaN(seconds))) {
            from.step();
            if (reached.size() < DISTANCES.size() && from.along() - along >= DISTANCES.get(reached.size())) {
                reached.add(from.time() - time);
            }
            touched |= flew && from.touches();
            flew |= !from.touches();
            if (Double.isNaN(seconds) && from.speed() >= FULL * setup.target()) {
                seconds = from.time() - time;
                metres = from.along() - along;
                aside = from.across() - across;
            }
        }
        while (reached.size() < DISTANCES.size()) {
            reached.add(Double.NaN);
        }
        return new Gathered(reached, seconds, metres, aside, touched, from.isCapsized());
    }
}
