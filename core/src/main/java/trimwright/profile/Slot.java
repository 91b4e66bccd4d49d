package trimwright.profile;

import java.util.List;

/**
 * The slot between one element and the next.
 *
 * @param gap least distance of the next element from the trailing edge of the one before; negative if that edge lies inside
 *     it
 * @param overlap how far the next element's most forward point lies ahead of that trailing edge; negative if behind
 */
public record Slot(double gap, double overlap) {
    /** Between the first two elements. */
    static Slot between(List<Contour> elements) {
        Contour before = elements.get(0);
        Contour next = elements.get(1);
        double edgeX = 0.5 * (before.x(0) + before.x(before.points() - 1));
        double edgeY = 0.5 * (before.y(0) + before.y(before.points() - 1));
        double least = Double.POSITIVE_INFINITY;
        double foremost = Double.POSITIVE_INFINITY;
        boolean inside = false;
        for (int i = 0; i + 1 < next.points(); i++) {
            double panelX = next.x(i + 1) - next.x(i);
            double panelY = next.y(i + 1) - next.y(i);
            double toX = edgeX - next.x(i);
            double toY = edgeY - next.y(i);
            double along =
                    Math.min(1, Math.max(0, (toX * panelX + toY * panelY) / (panelX * panelX + panelY * panelY)));
            least = Math.min(least, StrictMath.hypot(toX - along * panelX, toY - along * panelY));
            foremost = Math.min(foremost, next.x(i));
            // Crossing count of a ray downstream from the edge.
            if (next.y(i) > edgeY != next.y(i + 1) > edgeY) {
                inside ^= edgeX < next.x(i) + (edgeY - next.y(i)) * panelX / panelY;
            }
        }
        return new Slot(inside ? -least : least, edgeX - foremost);
    }
}
