package trimwright.panel;

import org.jspecify.annotations.Nullable;

/**
 * A trailing edge of some thickness. The flow leaves both corners at one speed along the bisector; the base sends out what flows
 * past it and a short source line behind it takes this in again, as dead air does that closes. All of it is in proportion to
 * the speed at the corners, which is half the difference of their vorticity.
 */
final class BluntEdge {
    /** Length over thickness in which the dead air closes, chosen. */
    private static final double CLOSING = 3;

    private final double ax;
    private final double ay;
    private final double bx;
    private final double by;

    /** Thickness across the stream. */
    final double width;

    final double middleX;
    final double middleY;
    private final double endX;
    private final double endY;

    /** Vorticity and source of the base, and the closing source, each per speed at the corners. */
    private final double vortex;

    private final double source;
    private final double closing;

    private BluntEdge(Panels panels, int element) {
        int first = panels.begin(element);
        int last = panels.end(element);
        ax = panels.x[last];
        ay = panels.y[last];
        bx = panels.x[first];
        by = panels.y[first];
        double base = StrictMath.hypot(bx - ax, by - ay);
        double dirX = panels.tx[last - 1] - panels.tx[first];
        double dirY = panels.ty[last - 1] - panels.ty[first];
        double size = StrictMath.hypot(dirX, dirY);
        dirX /= size;
        dirY /= size;
        double along = (dirX * (bx - ax) + dirY * (by - ay)) / base;
        double across = (dirX * (by - ay) - dirY * (bx - ax)) / base;
        width = across * base;
        middleX = 0.5 * (ax + bx);
        middleY = 0.5 * (ay + by);
        endX = middleX + CLOSING * width * dirX;
        endY = middleY + CLOSING * width * dirY;
        vortex = -along;
        source = across;
        closing = -1 / CLOSING;
    }

    /** Of an element; null where its trailing edge is sharp. */
    static @Nullable BluntEdge find(Panels panels, int element) {
        int first = panels.begin(element);
        int last = panels.end(element);
        return panels.x[first] == panels.x[last] && panels.y[first] == panels.y[last]
                ? null
                : new BluntEdge(panels, element);
    }

    /** Stream function by node per speed at the corners; at each element's first node the sources' share is 0. */
    double[] stream(Panels panels) {
        double[] base = new double[panels.nodes];
        double[] behind = new double[panels.nodes];
        SourceStream.fill(panels, ax, ay, bx, by, base);
        SourceStream.fill(panels, middleX, middleY, endX, endY, behind);
        double[] stream = new double[panels.nodes];
        for (int i = 0; i < panels.nodes; i++) {
            stream[i] = source * base[i]
                    + closing * behind[i]
                    + vortex * StreamFunction.vortex(ax, ay, bx, by, panels.x[i], panels.y[i]);
        }
        return stream;
    }

    /** Velocity at a point in a direction per speed at the corners. */
    double velocity(double px, double py, double dirX, double dirY) {
        // A vortex line's velocity is a source line's turned by a right angle.
        return source * PointSpeed.source(ax, ay, bx, by, px, py, dirX, dirY)
                + closing * PointSpeed.source(middleX, middleY, endX, endY, px, py, dirX, dirY)
                + vortex * PointSpeed.source(ax, ay, bx, by, px, py, -dirY, dirX);
    }
}
