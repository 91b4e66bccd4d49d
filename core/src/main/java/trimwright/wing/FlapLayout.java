package trimwright.wing;

import java.util.List;
import trimwright.boat.FlapPanels;

/**
 * How strips and flap panels lie along the span. Strips follow the cosine from foot to head, crowded toward both; no strip
 * reaches over a joint, so that each has one flap angle.
 */
final class FlapLayout {
    private final double[] node;
    private final double[] middle;
    private final double[] share;
    private final int[] panel;
    private final int panels;

    private FlapLayout(FlapPanels flap, double span, int strips) {
        panels = flap.count();
        node = new double[strips + 1];
        middle = new double[strips];
        share = new double[strips];
        panel = new int[strips];
        double[] border = borders(flap.joints(), span);
        int first = 0;
        for (int p = 0; p < panels; p++) {
            int last = p == panels - 1 ? strips : nearest(border[p + 1], strips, first + 1, strips - panels + 1 + p);
            for (int k = first; k <= last; k++) {
                node[k] = height(between(border[p], border[p + 1], k - first, last - first), span);
            }
            for (int i = first; i < last; i++) {
                middle[i] = height(between(border[p], border[p + 1], i + 0.5 - first, last - first), span);
                panel[i] = p;
                share[i] = flap.make() == FlapPanels.Make.STIFF ? stiffShare(flap.joints(), p, span) : middle[i] / span;
            }
            first = last;
        }
    }

    static FlapLayout of(FlapPanels flap, double span, int strips) {
        if (flap.count() > strips) {
            throw new IllegalArgumentException(flap.count() + " flap panels on " + strips + " strips");
        }
        return new FlapLayout(flap, span, strips);
    }

    /** Foot, joints and head as angles whose cosine gives the height. */
    private static double[] borders(List<Double> joints, double span) {
        double[] border = new double[joints.size() + 2];
        for (int k = 0; k < joints.size(); k++) {
            border[k + 1] = StrictMath.acos(1 - 2 * joints.get(k) / span);
        }
        border[border.length - 1] = Math.PI;
        return border;
    }

    /** Number of strips below a joint: as even a cosine spacing as goes, within bounds. */
    private static int nearest(double border, int strips, int least, int most) {
        return Math.max(least, Math.min(most, (int) Math.rint(border / Math.PI * strips)));
    }

    private static double between(double from, double to, double step, int steps) {
        return from + (to - from) * step / steps;
    }

    private static double height(double angle, double span) {
        return span / 2 * (1 - StrictMath.cos(angle));
    }

    /** The lowest panel has the foot's angle, the highest the head's, those between by the height of their middles. */
    private static double stiffShare(List<Double> joints, int panel, double span) {
        double foot = middle(joints, 0, span);
        double head = middle(joints, joints.size(), span);
        return head == foot ? 0 : (middle(joints, panel, span) - foot) / (head - foot);
    }

    private static double middle(List<Double> joints, int panel, double span) {
        double low = panel == 0 ? 0 : joints.get(panel - 1);
        double high = panel == joints.size() ? span : joints.get(panel);
        return (low + high) / 2;
    }

    int panels() {
        return panels;
    }

    double nodeHeight(int k) {
        return node[k];
    }

    double stripHeight(int strip) {
        return middle[strip];
    }

    double share(int strip) {
        return share[strip];
    }

    int panel(int strip) {
        return panel[strip];
    }
}
