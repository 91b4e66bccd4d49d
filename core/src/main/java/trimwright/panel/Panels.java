package trimwright.panel;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.profile.Contour;

/**
 * All elements' points in one row of numbers. A point is a node; the panel of a node's number leads from it to the next. The
 * last node of an element has no panel of its own.
 */
final class Panels {
    final int elements;
    final int nodes;

    /** First node of each element, and after the last element the number of nodes. */
    final int[] first;

    final double[] x;
    final double[] y;

    /** Unit tangent, length and its inverse of each panel, in the order of the nodes. */
    final double[] tx;

    final double[] ty;
    final double[] length;
    final double[] inverseLength;

    /** Thick trailing edge of each element, null where it is sharp. */
    final @Nullable BluntEdge[] edge;

    /**
     * Of these elements.
     *
     * @throws NoFlowException if a point of one lies inside another
     */
    Panels(List<Contour> contours) {
        elements = contours.size();
        first = new int[elements + 1];
        for (int k = 0; k < elements; k++) {
            first[k + 1] = first[k] + contours.get(k).points();
        }
        nodes = first[elements];
        x = new double[nodes];
        y = new double[nodes];
        tx = new double[nodes];
        ty = new double[nodes];
        length = new double[nodes];
        inverseLength = new double[nodes];
        for (int k = 0; k < elements; k++) {
            Contour contour = contours.get(k);
            for (int i = 0; i < contour.points(); i++) {
                x[first[k] + i] = contour.x(i);
                y[first[k] + i] = contour.y(i);
            }
            for (int i = first[k]; i + 1 < first[k + 1]; i++) {
                length[i] = StrictMath.hypot(x[i + 1] - x[i], y[i + 1] - y[i]);
                inverseLength[i] = 1 / length[i];
                tx[i] = (x[i + 1] - x[i]) / length[i];
                ty[i] = (y[i + 1] - y[i]) / length[i];
            }
        }
        for (int i = 0; i < nodes; i++) {
            for (int k = 0; k < elements; k++) {
                if ((i < begin(k) || i > end(k)) && isInside(k, x[i], y[i])) {
                    throw new NoFlowException("elements touch or cross");
                }
            }
        }
        edge = new BluntEdge[elements];
        for (int k = 0; k < elements; k++) {
            edge[k] = BluntEdge.find(this, k);
        }
    }

    /** Whether a ray downstream from the point crosses an element's outline an odd number of times. */
    private boolean isInside(int element, double px, double py) {
        boolean inside = false;
        for (int i = begin(element); i <= end(element); i++) {
            int next = i == end(element) ? begin(element) : i + 1;
            if (y[i] > py != y[next] > py) {
                inside ^= px < x[i] + (py - y[i]) * (x[next] - x[i]) / (y[next] - y[i]);
            }
        }
        return inside;
    }

    /** First node of an element. */
    int begin(int element) {
        return first[element];
    }

    /** Last node of an element. */
    int end(int element) {
        return first[element + 1] - 1;
    }
}
