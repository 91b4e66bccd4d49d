package trimwright.panel;

/** Velocity that panels and blunt edges give at a point off the elements. */
final class PointSpeed {
    private static final double SHARE = 1 / (2 * Math.PI);

    private PointSpeed() {}

    /**
     * Adds, by node, velocity along x and along y per unit of vorticity at the node (clockwise positive).
     */
    static void addVortices(Panels panels, double px, double py, double[] rowX, double[] rowY) {
        for (int k = 0; k < panels.elements; k++) {
            for (int j = panels.begin(k); j < panels.end(k); j++) {
                double dx = px - panels.x[j];
                double dy = py - panels.y[j];
                double tx = panels.tx[j];
                double ty = panels.ty[j];
                double length = panels.length[j];
                double x = dx * tx + dy * ty;
                double y = dy * tx - dx * ty;
                double x2 = x - length;
                double log = 0.5 * Logarithm.of((x * x + y * y) / (x2 * x2 + y * y));
                double arc = Arc.angle(y * length, x * x2 + y * y);
                // Integrals of 1 and of the fraction of the way, each over y/r^2 and over (x - x')/r^2.
                double alongLast = (x * arc - y * log) * panels.inverseLength[j];
                double acrossLast = 1 - (x * log + y * arc) * panels.inverseLength[j];
                double alongFirst = arc - alongLast;
                double acrossFirst = -log - acrossLast;
                rowX[j] += SHARE * (alongFirst * tx - acrossFirst * ty);
                rowY[j] += SHARE * (alongFirst * ty + acrossFirst * tx);
                rowX[j + 1] += SHARE * (alongLast * tx - acrossLast * ty);
                rowY[j + 1] += SHARE * (alongLast * ty + acrossLast * tx);
            }
            BluntEdge edge = panels.edge[k];
            if (edge != null) {
                double alongX = 0.5 * edge.velocity(px, py, 1, 0);
                double alongY = 0.5 * edge.velocity(px, py, 0, 1);
                rowX[panels.begin(k)] += alongX;
                rowY[panels.begin(k)] += alongY;
                rowX[panels.end(k)] -= alongX;
                rowY[panels.end(k)] -= alongY;
            }
        }
    }

    /** Velocity in the direction (dirX, dirY) of a source of strength 1 per length from (ax, ay) to (bx, by). */
    static double source(double ax, double ay, double bx, double by, double px, double py, double dirX, double dirY) {
        double length = StrictMath.hypot(bx - ax, by - ay);
        double tx = (bx - ax) / length;
        double ty = (by - ay) / length;
        double x = (px - ax) * tx + (py - ay) * ty;
        double y = (py - ay) * tx - (px - ax) * ty;
        double x2 = x - length;
        double along = 0.5 * Logarithm.of((x * x + y * y) / (x2 * x2 + y * y));
        double across = Arc.angle(y * length, x * x2 + y * y);
        return (along * (tx * dirX + ty * dirY) + across * (-ty * dirX + tx * dirY)) / (2 * Math.PI);
    }
}
