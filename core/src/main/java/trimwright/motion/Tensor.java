package trimwright.motion;

/**
 * A symmetric tensor of inertia, body axes (kg m2).
 *
 * @param xx about the length axis
 * @param yy about the axis athwartships
 * @param zz about the boat's vertical
 * @param xy sum of m x y, entered with a minus sign in the matrix; so the next two
 * @param xz sum of m x z
 * @param yz sum of m y z
 */
record Tensor(double xx, double yy, double zz, double xy, double xz, double yz) {
    /** With more about its three axes (kg m2). */
    Tensor plus(double aboutX, double aboutY, double aboutZ) {
        return new Tensor(xx + aboutX, yy + aboutY, zz + aboutZ, xy, xz, yz);
    }

    /** Angular momentum (N m s) at these rates. */
    Spin momentum(Spin rates) {
        return new Spin(
                xx * rates.p() - xy * rates.q() - xz * rates.r(),
                -xy * rates.p() + yy * rates.q() - yz * rates.r(),
                -xz * rates.p() - yz * rates.q() + zz * rates.r());
    }

    /** Rates that this angular momentum (N m s) belongs to: Cramer's rule. */
    Spin rates(Spin momentum) {
        double a = yy * zz - yz * yz;
        double b = xy * zz + yz * xz;
        double c = xy * yz + yy * xz;
        double d = xx * zz - xz * xz;
        double e = xx * yz + xy * xz;
        double f = xx * yy - xy * xy;
        double determinant = xx * a - xy * b - xz * c;
        return new Spin(
                (a * momentum.p() + b * momentum.q() + c * momentum.r()) / determinant,
                (b * momentum.p() + d * momentum.q() + e * momentum.r()) / determinant,
                (c * momentum.p() + e * momentum.q() + f * momentum.r()) / determinant);
    }

    /** Energy of turning (J). */
    double energy(Spin rates) {
        Spin momentum = momentum(rates);
        return 0.5 * (momentum.p() * rates.p() + momentum.q() * rates.q() + momentum.r() * rates.r());
    }
}
