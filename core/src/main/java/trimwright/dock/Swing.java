package trimwright.dock;

import org.jspecify.annotations.Nullable;
import trimwright.compare.Interval;
import trimwright.units.Angles;

/**
 * One control moved all the way in one step: how far its gauge goes, which way, how fast, and whether another moves in its place.
 *
 * @param path its channel
 * @param before the step in which it was held before
 * @param end where it should then stand (rad)
 * @param way by how much it should have moved (rad), signed
 */
record Swing(String path, DockStep before, DockStep step, double end, double way) {
    /** A gauge that moves less than this share of the way does not follow; another that moves more than twice it does (-): chosen. */
    private static final double HARDLY = 0.25;

    private static final double PLAINLY = 0.5;

    /** Shares of the way between which speed is taken (-): chosen, clear of starting and stopping. */
    private static final double FROM = 0.1;

    private static final double TO = 0.9;

    /** Way that its gauge went (rad); NaN where it was not heard before or then. */
    double moved(Samples samples) {
        return moved(samples, path);
    }

    /** Where its gauge then stands from its own zero (rad), so that a zero that is off shows in one line only. */
    Interval stands(Samples samples) {
        Interval held = samples.held(path, step).angle();
        Window still = samples.held(path, DockStep.STILL);
        double zero = still.isHeard() ? still.angle().mean() : 0;
        return new Interval(held.mean() - zero, held.low() - zero, held.high() - zero, held.independent());
    }

    private double moved(Samples samples, String other) {
        Window from = samples.held(other, before);
        Window to = samples.held(other, step);
        return from.isHeard() && to.isHeard()
                ? Angles.difference(to.angle().mean(), from.angle().mean())
                : Double.NaN;
    }

    /** What is the matter with the gauge in this step, whatever its zero. */
    DockFinding finding(Samples samples, String... others) {
        if (!samples.held(path, step).isHeard()) {
            return DockFinding.DEAD;
        }
        double moved = moved(samples);
        if (Double.isNaN(moved)) {
            return DockFinding.CANNOT_TELL;
        }
        if (Math.abs(moved) >= HARDLY * Math.abs(way)) {
            return moved * way > 0 ? DockFinding.NONE : DockFinding.SIGN;
        }
        if (inPlace(samples, others) != null) {
            return DockFinding.SWAPPED;
        }
        Window whole = samples.of(path);
        boolean still = whole.longestStill() >= whole.time(whole.size() - 1) - whole.time(0);
        return still
                        || samples.held(path, before).deviation()
                                        + samples.held(path, step).deviation()
                                == 0
                ? DockFinding.FROZEN
                : DockFinding.HARDLY_MOVES;
    }

    /** The gauge that moved in the place of this one, or null. */
    @Nullable
    String inPlace(Samples samples, String... others) {
        for (String other : others) {
            if (!other.equals(path) && Math.abs(moved(samples, other)) >= PLAINLY * Math.abs(way)) {
                return other;
            }
        }
        return null;
    }

    /** Speed of the way (rad/s), positive, with its interval; null where the gauge does not tell. */
    @Nullable
    Interval rate(Samples samples) {
        Window from = samples.held(path, before);
        double moved = moved(samples);
        Window going = samples.of(path).between(from.time(from.size() - 1), step.heldFrom());
        double begin = from.angle().mean();
        double reachedTo = crossing(going, begin, moved, TO, going.size() - 1);
        int last = 0;
        while (last < going.size() - 1 && going.time(last) < reachedTo) {
            last++;
        }
        double reachedFrom = crossingBack(going, begin, moved, FROM, last);
        double seconds = reachedTo - reachedFrom;
        if (!(seconds > 0)) {
            return null;
        }
        double rate = (TO - FROM) * Math.abs(moved) / seconds;
        // Each end is as sure as the gauge's noise, and the pace of its samples, let it be.
        double pace = (going.time(going.size() - 1) - going.time(0)) / Math.max(1, going.size() - 1);
        double end = StrictMath.hypot(from.deviation() / rate, pace / Math.sqrt(12));
        double half = rate * 1.96 * Math.sqrt(2) * end / seconds;
        return new Interval(rate, rate - half, rate + half, 1);
    }

    private static double crossing(Window going, double begin, double moved, double share, int last) {
        for (int i = 1; i <= last; i++) {
            double before = share(going, begin, moved, i - 1);
            double now = share(going, begin, moved, i);
            if (before < share && now >= share) {
                return going.time(i - 1) + (going.time(i) - going.time(i - 1)) * (share - before) / (now - before);
            }
        }
        return Double.NaN;
    }

    /** The last time before an index that the share was passed. */
    private static double crossingBack(Window going, double begin, double moved, double share, int last) {
        for (int i = last; i >= 1; i--) {
            double before = share(going, begin, moved, i - 1);
            double now = share(going, begin, moved, i);
            if (before < share && now >= share) {
                return going.time(i - 1) + (going.time(i) - going.time(i - 1)) * (share - before) / (now - before);
            }
        }
        return Double.NaN;
    }

    private static double share(Window going, double begin, double moved, int i) {
        return Angles.difference(going.get(i), begin) / moved;
    }
}
