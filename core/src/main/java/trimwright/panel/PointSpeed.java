package trimwright.panel;

import trimwright.arithmetic.Arc;
import trimwright.arithmetic.Logarithm;

/**
 * Velocity that panels and blunt edges give at one point off the elements. One plain loop for each intermediate result, as in {@link
 * StreamRows}, and these serve vortices and sources alike.
 */
final class PointSpeed {
    private static final double SHARE = 1 / (2 * Math.PI);

    private final Panels panels;
    private final double px;
    private final double py;

    /** By panel: place of the point along and across it; logarithm of the ratio of distances; angle under which it is seen. */
    private final double[] along;

    private final double[] across;
    private final double[] log;
    private final double[] arc;

    PointSpeed(Panels panels, double px, double py) {
        this.panels = panels;
        this.px = px;
        this.py = py;
        along = new double[panels.nodes];
        across = new double[panels.nodes];
        log = new double[panels.nodes];
        arc = new double[panels.nodes];
        for (int k = 0; k < panels.elements; k++) {
            look(panels.begin(k), panels.end(k));
        }
    }

    private void look(int begin, int end) {
        double[] length = panels.length;
        for (int j = begin; j < end; j++) {
            double dx = px - panels.x[j];
            double dy = py - panels.y[j];
            along[j] = dx * panels.tx[j] + dy * panels.ty[j];
            across[j] = dy * panels.tx[j] - dx * panels.ty[j];
        }
        for (int j = begin; j < end; j++) {
            double ahead = along[j] - length[j];
            double square = across[j] * across[j];
            log[j] = (along[j] * along[j] + square) / (ahead * ahead + square);
            arc[j] = across[j] * length[j] / (along[j] * ahead + square);
        }
        for (int j = begin; j < end; j++) {
            log[j] = 0.5 * Logarithm.of(log[j]);
        }
        for (int j = begin; j < end; j++) {
            double cosine = along[j] * (along[j] - length[j]) + across[j] * across[j];
            arc[j] = cosine > 0 && Math.abs(arc[j]) < Arc.SERIES
                    ? Arc.series(arc[j])
                    : Arc.angle(across[j] * length[j], cosine);
        }
    }

    /** By node, velocity in a direction per unit of vorticity at the node (clockwise positive). */
    double[] perVorticity(double dirX, double dirY) {
        double[] row = new double[panels.nodes];
        for (int k = 0; k < panels.elements; k++) {
            for (int j = panels.begin(k); j < panels.end(k); j++) {
                double inverse = panels.inverseLength[j];
                double t = panels.tx[j] * dirX + panels.ty[j] * dirY;
                double n = panels.tx[j] * dirY - panels.ty[j] * dirX;
                // Integrals of 1 and of the fraction of the way, each over y/r^2 and over (x - x')/r^2.
                double alongLast = (along[j] * arc[j] - across[j] * log[j]) * inverse;
                double acrossLast = 1 - (along[j] * log[j] + across[j] * arc[j]) * inverse;
                double alongFirst = arc[j] - alongLast;
                double acrossFirst = -log[j] - acrossLast;
                row[j] += SHARE * (alongFirst * t + acrossFirst * n);
                row[j + 1] += SHARE * (alongLast * t + acrossLast * n);
            }
            BluntEdge edge = panels.edge[k];
            if (edge != null) {
                double half = 0.5 * edge.velocity(px, py, dirX, dirY);
                row[panels.begin(k)] += half;
                row[panels.end(k)] -= half;
            }
        }
        return row;
    }

    /** Velocity in a direction of a source of strength 1 per length on a panel. */
    double perSource(int panel, double dirX, double dirY) {
        double t = panels.tx[panel] * dirX + panels.ty[panel] * dirY;
        double n = panels.tx[panel] * dirY - panels.ty[panel] * dirX;
        return SHARE * (log[panel] * t + arc[panel] * n);
    }

    /** Velocity in the direction (dirX, dirY) of a source of strength 1 per length from (ax, ay) to (bx, by). */
    static double source(double ax, double ay, double bx, double by, double px, double py, double dirX, double dirY) {
        double length = Math.sqrt((bx - ax) * (bx - ax) + (by - ay) * (by - ay));
        double tx = (bx - ax) / length;
        double ty = (by - ay) / length;
        double x = (px - ax) * tx + (py - ay) * ty;
        double y = (py - ay) * tx - (px - ax) * ty;
        double x2 = x - length;
        double log = 0.5 * Logarithm.of((x * x + y * y) / (x2 * x2 + y * y));
        double arc = Arc.angle(y * length, x * x2 + y * y);
        return SHARE * (log * (tx * dirX + ty * dirY) + arc * (tx * dirY - ty * dirX));
    }
}
