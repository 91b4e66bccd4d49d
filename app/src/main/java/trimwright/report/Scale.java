package trimwright.report;

import java.util.ArrayList;
import java.util.List;

/** From values to places along an edge of a drawing. */
record Scale(double least, double most, double from, double to) {
    /** Steps between lines of a grid, over a power of ten. */
    private static final double[] STEPS = {1, 2, 5, 10};

    double at(double value) {
        return from + (value - least) / (most - least) * (to - from);
    }

    /** Round values inside, some so many of them. */
    List<Double> ticks(int some) {
        double rough = (most - least) / some;
        double ten = StrictMath.pow(10, Math.floor(StrictMath.log10(rough)));
        double step = 10 * ten;
        for (double one : STEPS) {
            if (one * ten >= rough) {
                step = one * ten;
                break;
            }
        }
        List<Double> ticks = new ArrayList<>();
        for (double tick = Math.ceil(least / step) * step; tick <= most + 1e-9 * step; tick += step) {
            ticks.add(tick);
        }
        return ticks;
    }

    /** Room for all of these values, a little more, and never none. */
    static Scale around(double least, double most, double from, double to) {
        double room = Math.max(0.04 * (most - least), 1e-6);
        return new Scale(least - room, most + room, from, to);
    }
}
