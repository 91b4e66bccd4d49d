package trimwright.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;
import org.jspecify.annotations.Nullable;

/**
 * Robust least squares over all boats of a session at once. What is known beforehand makes rows of its own; noise,
 * dependence in time and weights are taken from the residuals in rounds.
 */
final class Fit {
    /** Rounds of weights and noise (chosen: a further one moves nothing by a tenth of its error). */
    private static final int ROUNDS = 8;

    private static final int MOST_STEPS = 40;

    /** Differences for slopes, in standard deviations beforehand (-). */
    private static final double DIFFERENCE = 1e-4;

    private final List<BoatModel> boats;
    private final List<Strand> strands = new ArrayList<>();
    private final List<BoatModel.Kind> kinds = new ArrayList<>();
    private final List<List<Integer>> members = new ArrayList<>();
    private final int unknowns;
    private final int rows;

    private Fit(List<BoatModel> boats) {
        this.boats = boats;
        unknowns = boats.size() * BoatModel.SIZE;
        List<Integer> all = IntStream.range(0, boats.size()).boxed().toList();
        for (BoatModel.Kind kind : BoatModel.Kind.values()) {
            boolean isWind = kind == BoatModel.Kind.WIND_NORTH || kind == BoatModel.Kind.WIND_EAST;
            if (isWind) {
                add(kind, all);
            } else {
                all.forEach(boat -> add(kind, List.of(boat)));
            }
        }
        rows = unknowns + strands.stream().mapToInt(Strand::size).sum();
    }

    private void add(BoatModel.Kind kind, List<Integer> which) {
        Strand strand = Strand.of(boats, which, kind);
        if (strand != null) {
            strands.add(strand);
            kinds.add(kind);
            members.add(which);
        }
    }

    /**
     * What is found of one boat.
     *
     * @param values of all its unknowns and of what is carried along
     * @param covariance of them
     */
    record Solved(double[] values, RealMatrix covariance) {}

    /** One answer a boat, in their order. */
    static List<Solved> of(List<BoatModel> boats) {
        return new Fit(boats).solve();
    }

    private List<Solved> solve() {
        double[] at = new double[unknowns];
        for (int round = 0; round < ROUNDS; round++) {
            learn(at);
            LeastSquaresOptimizer.Optimum optimum = new LevenbergMarquardtOptimizer()
                    .optimize(new LeastSquaresBuilder()
                            .start(at)
                            .target(new double[rows])
                            .model(this::model)
                            .lazyEvaluation(false)
                            .maxEvaluations(10 * MOST_STEPS)
                            .maxIterations(MOST_STEPS)
                            .checkerPair((iteration, before, after) -> false)
                            .build());
            at = optimum.getPoint().toArray();
        }
        RealMatrix slopes = model(new ArrayRealVector(at)).getSecond();
        RealMatrix spread = new CholeskyDecomposition(slopes.transposeMultiply(slopes))
                .getSolver()
                .getInverse();
        at = new ArrayRealVector(at).subtract(spread.operate(shrinking(at))).toArray();
        List<Solved> solved = new ArrayList<>();
        for (int b = 0; b < boats.size(); b++) {
            solved.add(solved(b, at, spread));
        }
        return solved;
    }

    /**
     * A larger factor on the wind speed shrinks the wind's own scatter with the wind, so that squares alone would favour it: the
     * likelihood of what was read has a logarithm of the factor for each reading. Its slope, in units of the unknowns.
     */
    private RealVector shrinking(double[] at) {
        RealVector slope = new ArrayRealVector(unknowns);
        int k = Unknown.WIND_SPEED.ordinal();
        for (int s = 0; s < strands.size(); s++) {
            if (kinds.get(s) == BoatModel.Kind.WIND_NORTH || kinds.get(s) == BoatModel.Kind.WIND_EAST) {
                for (int b : members.get(s)) {
                    double factor = 1 + values(b, at)[k];
                    double readings = strands.get(s).weightOf(b) * boats.get(b).before(k) / factor;
                    slope.addToEntry(b * BoatModel.SIZE + k, readings);
                }
            }
        }
        return slope;
    }

    private Solved solved(int b, double[] at, RealMatrix spread) {
        int from = b * BoatModel.SIZE;
        RealMatrix own = new Array2DRowRealMatrix(BoatModel.SIZE, BoatModel.SIZE);
        for (int k = 0; k < BoatModel.SIZE; k++) {
            for (int m = 0; m < BoatModel.SIZE; m++) {
                double units = boats.get(b).before(k) * boats.get(b).before(m);
                own.setEntry(k, m, spread.getEntry(from + k, from + m) * units);
            }
        }
        return new Solved(values(b, at), own);
    }

    /** In their own units. */
    private double[] values(int b, double[] at) {
        double[] values = new double[BoatModel.SIZE];
        for (int k = 0; k < values.length; k++) {
            values[k] = boats.get(b).mean(k) + boats.get(b).before(k) * at[b * BoatModel.SIZE + k];
        }
        return values;
    }

    private void learn(double[] at) {
        for (int s = 0; s < strands.size(); s++) {
            strands.get(s).learn(series(s, at));
        }
    }

    private double[][] series(int s, double[] at) {
        double[][] series = new double[boats.size()][0];
        for (int b : members.get(s)) {
            series[b] = boats.get(b).series(kinds.get(s), values(b, at));
        }
        return series;
    }

    private Pair<RealVector, RealMatrix> model(RealVector point) {
        double[] at = point.toArray();
        double[] value = new double[rows];
        Array2DRowRealMatrix slopes = new Array2DRowRealMatrix(rows, unknowns);
        for (int k = 0; k < unknowns; k++) {
            value[k] = at[k];
            slopes.setEntry(k, k, 1);
        }
        int row = unknowns;
        for (int s = 0; s < strands.size(); s++) {
            double[] found = strands.get(s).rows(series(s, at));
            System.arraycopy(found, 0, value, row, found.length);
            for (int b : members.get(s)) {
                for (int k = 0; k < BoatModel.SIZE; k++) {
                    addSlope(s, b, k, at, row, slopes);
                }
            }
            row += found.length;
        }
        return new Pair<>(new ArrayRealVector(value, false), slopes);
    }

    private void addSlope(int s, int b, int k, double[] at, int row, Array2DRowRealMatrix slopes) {
        double @Nullable [] change = change(s, b, k, at);
        if (change == null) {
            return;
        }
        double[][] of = new double[boats.size()][0];
        of[b] = change;
        double[] white = strands.get(s).rows(of);
        for (int i = 0; i < white.length; i++) {
            slopes.setEntry(row + i, b * BoatModel.SIZE + k, white[i]);
        }
    }

    /** Slopes of one boat's series over one unknown, or null where they are all none. */
    private double @Nullable [] change(int s, int b, int k, double[] at) {
        double[] above = at.clone();
        double[] below = at.clone();
        above[b * BoatModel.SIZE + k] += DIFFERENCE;
        below[b * BoatModel.SIZE + k] -= DIFFERENCE;
        double[] high = boats.get(b).series(kinds.get(s), values(b, above));
        double[] low = boats.get(b).series(kinds.get(s), values(b, below));
        boolean moves = false;
        for (int i = 0; i < high.length; i++) {
            high[i] = (high[i] - low[i]) / (2 * DIFFERENCE);
            moves |= high[i] != 0;
        }
        return moves ? high : null;
    }
}
