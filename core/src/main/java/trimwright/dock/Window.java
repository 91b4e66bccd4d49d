package trimwright.dock;

import java.util.Arrays;
import trimwright.compare.Interval;
import trimwright.compare.MeanInterval;
import trimwright.units.Angles;
import trimwright.units.Circular;

/** Samples of one channel over a stretch of time (s). Owns its arrays. */
final class Window {
    static final Window EMPTY = new Window(new double[0], new double[0]);

    /** Fewer samples have no mean (chosen). */
    private static final int FEWEST = 5;

    private final double[] times;
    private final double[] values;

    Window(double[] times, double[] values) {
        this.times = times;
        this.values = values;
    }

    Window between(double from, double to) {
        int first = firstAt(from);
        int end = Math.max(first, firstAt(to));
        return new Window(Arrays.copyOfRange(times, first, end), Arrays.copyOfRange(values, first, end));
    }

    private int firstAt(double time) {
        int at = Arrays.binarySearch(times, time);
        return at >= 0 ? at : -at - 1;
    }

    int size() {
        return times.length;
    }

    double time(int i) {
        return times[i];
    }

    double get(int i) {
        return values[i];
    }

    /** Whether there is enough for a mean. */
    boolean isHeard() {
        return times.length >= FEWEST;
    }

    /** Mean of an angle with its interval, about the mean direction. */
    Interval angle() {
        double about = Circular.mean(values, 0, values.length);
        double[] ways = new double[values.length];
        for (int i = 0; i < ways.length; i++) {
            ways[i] = Angles.difference(values[i], about);
        }
        Interval way = MeanInterval.of(ways);
        return new Interval(about + way.mean(), about + way.low(), about + way.high(), way.independent());
    }

    /** Mean of a plain number with its interval. */
    Interval number() {
        return MeanInterval.of(values);
    }

    /** Root of the mean square way from the mean of an angle. */
    double deviation() {
        return Circular.deviation(values, 0, values.length);
    }

    /** Longest time for which the value stayed exactly the same (s). */
    double longestStill() {
        double longest = 0;
        int first = 0;
        for (int i = 1; i < times.length; i++) {
            if (values[i] != values[first]) {
                first = i;
            }
            longest = Math.max(longest, times[i] - times[first]);
        }
        return longest;
    }

    /** The angle at that time, straight between samples; NaN outside. */
    double angleAt(double time) {
        int after = firstAt(time);
        if (after < times.length && times[after] == time) {
            return values[after];
        }
        if (after == 0 || after == times.length) {
            return Double.NaN;
        }
        double share = (time - times[after - 1]) / (times[after] - times[after - 1]);
        return values[after - 1] + share * Angles.difference(values[after], values[after - 1]);
    }

    /** This angle less another at its times, without those at which the other is not known. */
    Window less(Window other, double factor) {
        double[] at = new double[times.length];
        double[] ways = new double[times.length];
        int n = 0;
        for (int i = 0; i < times.length; i++) {
            double way = Angles.signed(values[i] - factor * other.angleAt(times[i]));
            if (!Double.isNaN(way)) {
                at[n] = times[i];
                ways[n++] = way;
            }
        }
        return new Window(Arrays.copyOf(at, n), Arrays.copyOf(ways, n));
    }
}
