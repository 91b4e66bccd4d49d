package trimwright.panel;

/**
 * What the panels' vorticity does to the stream function. Vorticity is positive clockwise, so that a positive value lifts and
 * its size is the speed along the outside of the surface.
 *
 * <p>Integral of ln r over a panel with linear strength, worked out anew; form with the arctangent of |y|, which has no branch
 * cut between elements (docs/theory/section-flow.md).
 */
final class StreamFunction {
    private static final double SHARE = 1 / (4 * Math.PI);

    private StreamFunction() {}

    /**
     * Adds to {@code row} what a unit of vorticity at each node adds to the stream function at a point.
     *
     * @param row by node
     */
    static void addVortices(Panels panels, double px, double py, double[] row) {
        for (int k = 0; k < panels.elements; k++) {
            int begin = panels.begin(k);
            double dx = px - panels.x[begin];
            double dy = py - panels.y[begin];
            double r1 = dx * dx + dy * dy;
            double log1 = r1 > 0 ? Logarithm.of(r1) : 0;
            for (int j = begin; j < panels.end(k); j++) {
                double tx = panels.tx[j];
                double ty = panels.ty[j];
                double length = panels.length[j];
                double x1 = dx * tx + dy * ty;
                double y = Math.abs(dy * tx - dx * ty);
                double x2 = x1 - length;
                dx = px - panels.x[j + 1];
                dy = py - panels.y[j + 1];
                double r2 = dx * dx + dy * dy;
                double log2 = r2 > 0 ? Logarithm.of(r2) : 0;
                double sum = 0.5 * (x1 * log1 - x2 * log2) - length + y * Arc.angle(y * length, x1 * x2 + y * y);
                double difference = ((x1 + x2) * sum + 0.5 * (r2 * log2 - r1 * log1 + x1 * x1 - x2 * x2))
                        * -panels.inverseLength[j];
                row[j] += SHARE * (sum + difference);
                row[j + 1] += SHARE * (sum - difference);
                r1 = r2;
                log1 = log2;
            }
        }
    }

    /** Stream function at a point of an even vortex of strength 1 per length from (ax, ay) to (bx, by). */
    static double vortex(double ax, double ay, double bx, double by, double px, double py) {
        double length = StrictMath.hypot(bx - ax, by - ay);
        double tx = (bx - ax) / length;
        double ty = (by - ay) / length;
        double x1 = (px - ax) * tx + (py - ay) * ty;
        double x2 = x1 - length;
        double y = Math.abs((py - ay) * tx - (px - ax) * ty);
        double r1 = x1 * x1 + y * y;
        double r2 = x2 * x2 + y * y;
        double logs = (r1 > 0 ? x1 * Logarithm.of(r1) : 0) - (r2 > 0 ? x2 * Logarithm.of(r2) : 0);
        return (0.5 * logs - length + y * Arc.angle(y * length, x1 * x2 + y * y)) / (2 * Math.PI);
    }
}
