package trimwright.target;

import org.jspecify.annotations.Nullable;
import trimwright.platform.Variable;
import trimwright.target.search.Curvature;
import trimwright.target.search.Problem;

/** Where a race ends: a state fast enough that keeps all equations and limits. */
final class Finish {
    /** How far an equation or a limit may be missed (scaled): four digits more than a crew sees. */
    private static final double KEPT = 1e-5;

    private final double speed;
    private long calls;

    /** @param speed that is fast enough (m/s) */
    Finish(double speed) {
        this.speed = speed / Variable.BOAT_SPEED.scale();
    }

    void begin() {
        calls = 0;
    }

    /** Values asked of the model since {@link #begin}. */
    long calls() {
        return calls;
    }

    /** Thrown at the finish, so that each search stops there. */
    static final class Reached extends RuntimeException {
        private static final long serialVersionUID = 1;

        Reached() {
            super("reached", null, false, false);
        }
    }

    /** Counts a call and ends the race if these are the values of a state to be reached. */
    void look(Problem problem, double[] x, double @Nullable [] row) {
        calls++;
        if (row == null || x[Variable.BOAT_SPEED.ordinal()] < speed) {
            return;
        }
        for (int i = 1; i < row.length; i++) {
            if (i <= problem.equations() ? Math.abs(row[i]) > KEPT : row[i] < -KEPT) {
                return;
            }
        }
        for (int i = 0; i < x.length; i++) {
            if (x[i] < problem.lower()[i] - KEPT || x[i] > problem.upper()[i] + KEPT) {
                return;
            }
        }
        throw new Reached();
    }

    /** The same problem, watched. */
    Problem watched(Problem problem) {
        return new Watched(this, problem);
    }

    private record Watched(Finish finish, Problem problem) implements Problem {
        @Override
        public int equations() {
            return problem.equations();
        }

        @Override
        public int limits() {
            return problem.limits();
        }

        @Override
        public double[] lower() {
            return problem.lower();
        }

        @Override
        public double[] upper() {
            return problem.upper();
        }

        @Override
        public double @Nullable [] valuesAt(double[] x) {
            double[] row = problem.valuesAt(x);
            finish.look(problem, x, row);
            return row;
        }

        @Override
        public double @Nullable [][] slopesAt(double[] x) {
            return problem.slopesAt(x);
        }

        @Override
        public @Nullable Curvature curvatureAt(double[] x) {
            return problem.curvatureAt(x);
        }
    }
}
