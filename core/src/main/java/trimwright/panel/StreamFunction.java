package trimwright.panel;

import trimwright.arithmetic.Arc;
import trimwright.arithmetic.Logarithm;

/**
 * What an even vortex does to the stream function. Vorticity is positive clockwise, so that a positive value lifts and its size is the
 * speed along the outside of the surface.
 *
 * <p>Integral of ln r, worked out anew; form with the arctangent of |y|, which has no branch cut between elements
 * (docs/theory/section-flow.md).
 */
final class StreamFunction {
    private StreamFunction() {}

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
