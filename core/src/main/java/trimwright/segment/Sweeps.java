package trimwright.segment;

import java.util.ArrayList;
import java.util.List;
import trimwright.units.Angles;
import trimwright.wind.SessionClock;

/** Sweeps of the bow: stretches in which it goes round one way faster than steering does. */
final class Sweeps {
    /** Faster than this the bow goes round (rad/s): a phase is slower. */
    private static final double TURNING = Math.toRadians(3);

    /** The rate is the slope over this time to either side (s), chosen: a turn lasts several seconds. */
    private static final double RATE_WINDOW = 0.5;

    /** A stop shorter than this does not end a sweep (s), chosen. */
    private static final double STOP = 1.5;

    /** Nor does a longer one with the bow this near to the wind (rad): the boat hangs in the tack (chosen). */
    private static final double HANGS = Math.toRadians(25);

    private static final double LONGEST_STOP = 15;

    /** Two turns in one sweep part where the rate falls to this share of the greatest in either (-): chosen. */
    private static final double SLOWS = 0.5;

    /**
     * Slower than this share of its greatest rate (-), a sweep begins and ends with steering, not turning (chosen: a crew
     * that gathers speed after a turn goes on bearing away slowly).
     */
    private static final double MAIN = 0.3;

    private final Courses courses;
    private final SessionClock clock;
    private final double[] rate;

    Sweeps(Courses courses, SessionClock clock) {
        this.courses = courses;
        this.clock = clock;
        this.rate = rates(courses.heading, clock.steps(RATE_WINDOW), clock.step());
    }

    private static double[] rates(double[] heading, int half, double step) {
        double[] rate = new double[heading.length];
        for (int i = 0; i < rate.length; i++) {
            int from = Math.max(0, i - half);
            int to = Math.min(rate.length - 1, i + half);
            rate[i] = from == to ? 0 : Angles.difference(heading[to], heading[from]) / ((to - from) * step);
        }
        return rate;
    }

    /** All of a track, in order. */
    List<Span> all() {
        List<Span> sweeps = new ArrayList<>();
        int i = 0;
        while (i < rate.length) {
            if (!(Math.abs(rate[i]) >= TURNING)) {
                i++;
                continue;
            }
            double way = Math.signum(rate[i]);
            int from = i;
            while (i < rate.length && rate[i] * way >= TURNING) {
                i++;
            }
            int last = sweeps.size() - 1;
            if (last >= 0 && goesOn(sweeps.get(last), from, way)) {
                sweeps.set(last, new Span(sweeps.get(last).from(), i));
            } else {
                sweeps.add(new Span(from, i));
            }
        }
        return sweeps;
    }

    /** Whether a sweep that begins there is the same as the last one after a stop. */
    private boolean goesOn(Span last, int from, double way) {
        if (rate[last.to() - 1] * way < 0 || (from - last.to()) * clock.step() > LONGEST_STOP) {
            return false;
        }
        if ((from - last.to()) * clock.step() < STOP) {
            return true;
        }
        for (int i = last.to(); i < from; i++) {
            if (!(Math.abs(courses.windAngle[i]) < HANGS)) {
                return false;
            }
        }
        return true;
    }

    /** Instants inside a sweep at which the bow slows down between two faster parts. */
    List<Integer> dips(Span sweep) {
        List<Integer> dips = new ArrayList<>();
        for (int i = sweep.from() + 1; i < sweep.to() - 1; i++) {
            double here = Math.abs(rate[i]);
            boolean isLowest = here <= Math.abs(rate[i - 1]) && here <= Math.abs(rate[i + 1]);
            if (isLowest
                    && here <= SLOWS * greatestRate(new Span(sweep.from(), i))
                    && here <= SLOWS * greatestRate(new Span(i, sweep.to()))) {
                dips.add(i);
            }
        }
        return dips;
    }

    /** Rate of turn at an instant, without sign (rad/s). */
    double rate(int i) {
        return Math.abs(rate[i]);
    }

    /** Greatest rate of turn in a sweep, without sign (rad/s). */
    double greatestRate(Span sweep) {
        double greatest = 0;
        for (int i = sweep.from(); i < sweep.to(); i++) {
            greatest = Math.max(greatest, Math.abs(rate[i]));
        }
        return greatest;
    }

    /** A sweep without the slow steering before and after it. */
    Span main(Span sweep) {
        double least = MAIN * greatestRate(sweep);
        int from = sweep.from();
        while (from < sweep.to() - 1 && !(Math.abs(rate[from]) >= least)) {
            from++;
        }
        int to = sweep.to();
        while (to > from + 1 && !(Math.abs(rate[to - 1]) >= least)) {
            to--;
        }
        return new Span(from, to);
    }

    /** Way of the bow from just before a sweep to just after it (rad), positive to starboard. */
    double way(Span sweep) {
        double way = 0;
        for (int i = Math.max(1, sweep.from()); i <= Math.min(sweep.to(), rate.length - 1); i++) {
            way += Angles.difference(courses.heading[i], courses.heading[i - 1]);
        }
        return way;
    }
}
