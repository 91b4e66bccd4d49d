package trimwright.target.search;

import org.jspecify.annotations.Nullable;

/**
 * Minimise f(x) where c(x) = 0, g(x) is not negative and x lies between lower and upper. The functions come as one row:
 * f, then all c, then all g. Variables and functions are scaled so that a change of 1 is large and 1e-6 is small.
 */
public interface Problem {
    /** Number of equations c. */
    int equations();

    /** Number of limits g. */
    int limits();

    /** Least values of x; equal to the largest where a variable is fixed. */
    double[] lower();

    /** Largest values of x. */
    double[] upper();

    /** f, c, g at x, or null where the model has no answer. */
    double @Nullable [] valuesAt(double[] x);

    /** First derivatives at x: one row a function, one column a variable; null where the model has no answer. */
    double @Nullable [][] slopesAt(double[] x);

    /** Second derivatives at x or near it; null where the model has no answer. They only guide the search. */
    @Nullable
    Curvature curvatureAt(double[] x);
}
