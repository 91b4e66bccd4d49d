package trimwright.target;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.platform.ForceSum;
import trimwright.platform.Platform;
import trimwright.platform.Variable;
import trimwright.target.search.Curvature;
import trimwright.target.search.Problem;

/** Best speed of a boat under the six equations and all limits, in scaled variables. Not for use by two threads. */
final class TrimProblem implements Problem {
    static final int EQUATIONS = 6;
    static final int ROW = 1 + EQUATIONS + LimitRow.values().length;

    private final List<Share> shares;
    private final double[] lower;
    private final double[] upper;
    private final boolean[] fixed;

    /**
     * @param shares of the functions; their sum counts
     * @param ranges allowed range of each variable of this branch and task
     * @param held values of variables that are held
     */
    TrimProblem(List<Share> shares, Ranges ranges, Map<Variable, Double> held) {
        this.shares = shares;
        lower = ranges.lower(held);
        upper = ranges.upper(held);
        fixed = new boolean[lower.length];
        for (int i = 0; i < fixed.length; i++) {
            fixed[i] = lower[i] == upper[i];
        }
    }

    /** Adds forces over weight and moments over weight times length to the equations' places. */
    static void putForces(double[] row, ForceSum sum, Platform platform) {
        double weight = platform.weight();
        double moment = weight * platform.length();
        row[1] += sum.x() / weight;
        row[2] += sum.y() / weight;
        row[3] += sum.z() / weight;
        row[4] += sum.k() / moment;
        row[5] += sum.m() / moment;
        row[6] += sum.n() / moment;
    }

    /** Adds the change of forces with one variable, times a factor, to the equations' places of its column. */
    static void putForces(double[][] slopes, int variable, double factor, ForceSum by, Platform platform) {
        double weight = platform.weight() / factor;
        double moment = weight * platform.length();
        slopes[1][variable] += by.x() / weight;
        slopes[2][variable] += by.y() / weight;
        slopes[3][variable] += by.z() / weight;
        slopes[4][variable] += by.k() / moment;
        slopes[5][variable] += by.m() / moment;
        slopes[6][variable] += by.n() / moment;
    }

    @Override
    public int equations() {
        return EQUATIONS;
    }

    @Override
    public int limits() {
        return LimitRow.values().length;
    }

    @Override
    public double[] lower() {
        return lower;
    }

    @Override
    public double[] upper() {
        return upper;
    }

    @Override
    public double @Nullable [] valuesAt(double[] x) {
        double[] sum = new double[ROW];
        for (Share share : shares) {
            double[] row = share.valuesAt(x);
            if (row == null) {
                return null;
            }
            for (int i = 0; i < ROW; i++) {
                sum[i] += row[i];
            }
        }
        return sum;
    }

    @Override
    public double @Nullable [][] slopesAt(double[] x) {
        double[][] slopes = new double[ROW][x.length];
        for (Share share : shares) {
            if (!share.addSlopes(x, fixed, slopes)) {
                return null;
            }
        }
        return slopes;
    }

    @Override
    public @Nullable Curvature curvatureAt(double[] x) {
        List<Share.Place> places = new ArrayList<>();
        for (Share share : shares) {
            Share.Place place = share.curvatureNear(x);
            if (place == null) {
                return null;
            }
            places.add(place);
        }
        return new Sum(places);
    }

    private record Sum(List<Share.Place> places) implements Curvature {
        @Override
        public void add(double[] weights, double[][] sum) {
            for (Share.Place place : places) {
                place.add(weights, sum);
            }
        }
    }
}
