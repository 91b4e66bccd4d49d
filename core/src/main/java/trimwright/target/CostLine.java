package trimwright.target;

import org.jspecify.annotations.Nullable;
import trimwright.platform.Variable;
import trimwright.units.Units;

/**
 * States along one control, the six equations kept by six others: to second order, and one exact step with the slopes of the
 * beginning. All in scaled variables, beginning at zero.
 */
final class CostLine {
    /** Half-distance of the second difference (scaled): about half a degree of a control of the wing. */
    private static final double STEP = 0.05;

    /** No change of more than this (scaled) is looked at: 23 degrees of a control of the wing. */
    static final double FAR = 2;

    /** A line on which anything moves by more than this many of its scales for one of the control is none (-); chosen. */
    private static final double STEEP = 20;

    /** Nothing is asked farther from the target than this (scaled), chosen. */
    private static final double FARTHEST = 3;

    /** The largest exact step (scaled), chosen: beyond, the second order was no guess. */
    private static final double CORRECTED = 0.5;

    private final TrimProblem problem;
    private final double[] origin;
    private final double[] first;
    private final double[] second;
    private final Variable control;
    private final Variable[] settled;
    private final SmallInverse inverse;

    private CostLine(
            TrimProblem problem,
            double[] origin,
            double[] first,
            double[] second,
            Variable control,
            Variable[] settled,
            SmallInverse inverse) {
        this.problem = problem;
        this.origin = origin;
        this.first = first;
        this.second = second;
        this.control = control;
        this.settled = settled;
        this.inverse = inverse;
    }

    /** The line through a balanced state, or null where the six settle nothing or the model has no answer. */
    static @Nullable CostLine of(
            TrimProblem problem, double[] x, double[] row, double[][] slopes, Variable control, Variable... settled) {
        SmallInverse inverse = SmallInverse.of(columns(slopes, settled));
        if (inverse == null) {
            return null;
        }
        double[] by = new double[TrimProblem.EQUATIONS];
        for (int i = 0; i < by.length; i++) {
            by[i] = slopes[1 + i][control.ordinal()];
        }
        double[] first = new double[x.length];
        first[control.ordinal()] = 1;
        put(first, settled, inverse.times(by), -1);
        if (!(largest(first) < STEEP)) {
            return null;
        }
        double[] ahead = problem.valuesAt(moved(x, first, STEP));
        double[] back = problem.valuesAt(moved(x, first, -STEP));
        if (ahead == null || back == null) {
            return null;
        }
        for (int i = 0; i < by.length; i++) {
            by[i] = (ahead[1 + i] - 2 * row[1 + i] + back[1 + i]) / (STEP * STEP);
        }
        double[] second = new double[x.length];
        put(second, settled, inverse.times(by), -1);
        if (!(largest(second) < STEEP * STEEP)) {
            return null;
        }
        return new CostLine(problem, x, first, second, control, settled, inverse);
    }

    private static double[][] columns(double[][] slopes, Variable[] settled) {
        double[][] matrix = new double[settled.length][settled.length];
        for (int i = 0; i < settled.length; i++) {
            for (int j = 0; j < settled.length; j++) {
                matrix[i][j] = slopes[1 + i][settled[j].ordinal()];
            }
        }
        return matrix;
    }

    private static void put(double[] to, Variable[] settled, double[] values, double factor) {
        for (int j = 0; j < settled.length; j++) {
            to[settled[j].ordinal()] += factor * values[j];
        }
    }

    private static double largest(double[] values) {
        double largest = 0;
        for (double value : values) {
            largest = Math.max(largest, Math.abs(value));
        }
        return largest;
    }

    private static double[] moved(double[] x, double[] way, double by) {
        double[] moved = x.clone();
        for (int i = 0; i < x.length; i++) {
            moved[i] += by * way[i];
        }
        return moved;
    }

    /** Slope of a variable along the line. */
    double slopeOf(Variable variable) {
        return first[variable.ordinal()];
    }

    /** Curvature of the boat's speed along the line (scaled). */
    double speedCurvature() {
        return second[Variable.BOAT_SPEED.ordinal()];
    }

    /** Loss of the boat's speed at a change of the control, to second order (scaled). */
    double loss(double by) {
        return -by * (slopeOf(Variable.BOAT_SPEED) + 0.5 * by * speedCurvature());
    }

    /** The state at a change of the control, its equations kept to about a thousandth; null where the model has no answer. */
    double @Nullable [] at(double by) {
        double[] x = moved(moved(origin, first, by), second, 0.5 * by * by);
        double[] row = largest(moved(x, origin, -1)) < FARTHEST ? problem.valuesAt(x) : null;
        if (row == null) {
            return null;
        }
        double[] missed = new double[TrimProblem.EQUATIONS];
        System.arraycopy(row, 1, missed, 0, missed.length);
        double[] back = inverse.times(missed);
        if (!(largest(back) < CORRECTED)) {
            return null;
        }
        put(x, settled, back, -1);
        return x;
    }

    /** How far the control may go one way (scaled, not negative): to the end of its range and of that set anew. */
    double room(int way) {
        double room = FAR;
        for (Variable variable : new Variable[] {control, settled[settled.length - 1]}) {
            int i = variable.ordinal();
            double slope = way * first[i];
            double left = slope > 0 ? problem.upper()[i] - origin[i] : origin[i] - problem.lower()[i];
            if (slope != 0) {
                room = Math.min(room, Math.max(0, left) / Math.abs(slope));
            }
        }
        return room;
    }

    /** A degree of the control, scaled. */
    double degree() {
        return Units.fromDegrees(1) / control.scale();
    }

    double scale() {
        return control.scale();
    }
}
