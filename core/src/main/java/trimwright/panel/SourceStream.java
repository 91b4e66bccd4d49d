package trimwright.panel;

import trimwright.arithmetic.Arc;
import trimwright.arithmetic.Logarithm;

/**
 * What a straight source does to the stream function along the elements. A source's stream function is an angle, so it has a
 * cut; here it is followed from node to node along each element instead, on the inside of the surface, where it never meets
 * one.
 */
final class SourceStream {
    private SourceStream() {}

    /**
     * Fills {@code stream} by node with the stream function, from 0 at each element's first node, of a source of strength 1
     * per length from (ax, ay) to (bx, by).
     */
    static void fill(Panels panels, double ax, double ay, double bx, double by, double[] stream) {
        double length = StrictMath.hypot(bx - ax, by - ay);
        double tx = (bx - ax) / length;
        double ty = (by - ay) / length;
        View from = new View();
        View to = new View();
        for (int k = 0; k < panels.elements; k++) {
            double sum = 0;
            from.look(panels.x[panels.begin(k)] - ax, panels.y[panels.begin(k)] - ay, tx, ty, length);
            stream[panels.begin(k)] = 0;
            for (int i = panels.begin(k); i < panels.end(k); i++) {
                to.look(panels.x[i + 1] - ax, panels.y[i + 1] - ay, tx, ty, length);
                sum += step(from, to, length);
                stream[i + 1] = sum / (2 * Math.PI);
                View swap = from;
                from = to;
                to = swap;
            }
        }
    }

    /** Growth of 2 pi times the stream function from one place to the next along a straight line. */
    private static double step(View from, View to, double length) {
        boolean atBegin = from.r1 == 0 || to.r1 == 0;
        boolean atEnd = from.r2 == 0 || to.r2 == 0;
        if (atBegin && atEnd) {
            return (to.x1 > from.x1 ? -1 : 1) * Math.PI * length; // the source's own panel, seen from inside
        }
        double rest = to.across - from.across;
        return atEnd
                ? length * Arc.angle(from.x1 * to.y - from.y * to.x1, from.x1 * to.x1 + from.y * to.y)
                        - to.x2 * to.arc
                        + from.x2 * from.arc
                        + rest
                : length * Arc.angle(from.x2 * to.y - from.y * to.x2, from.x2 * to.x2 + from.y * to.y)
                        - to.x1 * to.arc
                        + from.x1 * from.arc
                        + rest;
    }

    /** A place in the source's own axes. */
    private static final class View {
        private double x1;
        private double x2;
        private double y;
        private double r1;
        private double r2;

        /** Angle under which the source is seen, with the sign of the side. */
        private double arc;

        /** y ln(r1/r2). */
        private double across;

        private void look(double dx, double dy, double tx, double ty, double length) {
            x1 = dx * tx + dy * ty;
            y = dy * tx - dx * ty;
            x2 = x1 - length;
            r1 = x1 * x1 + y * y;
            r2 = x2 * x2 + y * y;
            double small = 1e-20 * length * length;
            r1 = r1 < small ? 0 : r1;
            r2 = r2 < small ? 0 : r2;
            if (r1 == 0 || r2 == 0) {
                arc = 0;
                across = 0;
            } else {
                arc = Arc.angle(y * length, x1 * x2 + y * y);
                across = 0.5 * y * Logarithm.of(r1 / r2);
            }
        }
    }
}
