package trimwright.target.search;

/**
 * Second derivatives of all functions of a problem at one place. Two that are equal are those of the same place.
 */
public interface Curvature {
    /**
     * Adds so many times those of each function to a sum.
     *
     * @param weights one a function, many of them zero
     * @param sum [variable][variable]
     */
    void add(double[] weights, double[][] sum);
}
