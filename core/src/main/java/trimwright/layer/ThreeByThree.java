package trimwright.layer;

/** Three linear equations for the changes of three unknowns of a station. */
final class ThreeByThree {
    private ThreeByThree() {}

    /**
     * Solution by Cramer's rule; not numbers if there is none.
     *
     * @param a coefficients of the first equation, with the right side as fourth
     * @param b the same of the second
     * @param c the same of the third
     */
    static double[] solve(double[] a, double[] b, double[] c) {
        double first = b[1] * c[2] - b[2] * c[1];
        double second = b[2] * c[0] - b[0] * c[2];
        double third = b[0] * c[1] - b[1] * c[0];
        double determinant = a[0] * first + a[1] * second + a[2] * third;
        double inverse = 1 / determinant;
        double x = a[3] * first + a[1] * (b[2] * c[3] - b[3] * c[2]) + a[2] * (b[3] * c[1] - b[1] * c[3]);
        double y = a[0] * (b[3] * c[2] - b[2] * c[3]) + a[3] * second + a[2] * (b[0] * c[3] - b[3] * c[0]);
        double z = a[0] * (b[1] * c[3] - b[3] * c[1]) + a[1] * (b[3] * c[0] - b[0] * c[3]) + a[3] * third;
        return new double[] {x * inverse, y * inverse, z * inverse};
    }
}
