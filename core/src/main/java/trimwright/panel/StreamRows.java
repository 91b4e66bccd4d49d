package trimwright.panel;

import trimwright.arithmetic.Arc;
import trimwright.arithmetic.Logarithm;

/**
 * What a unit of vorticity at each node adds to the stream function at each node, for all pairs: {@link StreamFunction}'s integral of
 * ln r over panels with linear strength (docs/theory/section-flow.md).
 *
 * <p>One plain loop for each intermediate result, so that each runs several panels at a time; logarithms of distances are taken once
 * for both directions. A workspace, row by row.
 */
final class StreamRows {
    private static final double SHARE = 1 / (4 * Math.PI);

    private final Panels panels;

    /** Logarithm of the square of the distance between two nodes, 0 where they are in one place. */
    private final double[][] log;

    /** From the node at hand: square of the distance of each node; along and across each panel; angle under which it is seen. */
    private final double[] square;

    private final double[] along;
    private final double[] across;
    private final double[] arc;

    /** Integrals over each panel of strength 1, and of strength that goes from 1 to -1. */
    private final double[] sum;

    private final double[] difference;

    private StreamRows(Panels panels) {
        this.panels = panels;
        int n = panels.nodes;
        log = new double[n][n];
        square = new double[n];
        along = new double[n];
        across = new double[n];
        arc = new double[n];
        sum = new double[n];
        difference = new double[n];
    }

    /** Adds to a row for each node, by node. */
    static void addTo(double[][] matrix, Panels panels) {
        StreamRows rows = new StreamRows(panels);
        for (int i = 0; i < panels.nodes; i++) {
            rows.fillSquares(panels.x[i], panels.y[i]);
            rows.fillLogarithms(i);
        }
        for (int i = 0; i < panels.nodes; i++) {
            rows.fillSquares(panels.x[i], panels.y[i]);
            for (int k = 0; k < panels.elements; k++) {
                rows.addElement(k, i, matrix[i]);
            }
        }
    }

    private void fillSquares(double px, double py) {
        double[] x = panels.x;
        double[] y = panels.y;
        for (int j = 0; j < square.length; j++) {
            double dx = px - x[j];
            double dy = py - y[j];
            square[j] = dx * dx + dy * dy;
        }
    }

    private void fillLogarithms(int i) {
        double[] row = log[i];
        for (int j = 0; j < i; j++) {
            row[j] = square[j] > 0 ? Logarithm.of(square[j]) : 0;
            log[j][i] = row[j];
        }
    }

    private void addElement(int element, int node, double[] row) {
        int begin = panels.begin(element);
        int end = panels.end(element);
        place(panels.x[node], panels.y[node], begin, end);
        fillArcs(begin, end);
        double[] length = panels.length;
        double[] logs = log[node];
        for (int j = begin; j < end; j++) {
            double ahead = along[j] - length[j];
            sum[j] = 0.5 * (along[j] * logs[j] - ahead * logs[j + 1]) - length[j] + across[j] * arc[j];
        }
        double[] inverse = panels.inverseLength;
        for (int j = begin; j < end; j++) {
            double first = along[j];
            double last = first - length[j];
            double squares = square[j + 1] * logs[j + 1] - square[j] * logs[j] + first * first - last * last;
            difference[j] = ((first + last) * sum[j] + 0.5 * squares) * -inverse[j];
        }
        for (int j = begin; j < end; j++) {
            row[j] += SHARE * (sum[j] + difference[j]);
        }
        for (int j = begin; j < end; j++) {
            row[j + 1] += SHARE * (sum[j] - difference[j]);
        }
    }

    private void place(double px, double py, int begin, int end) {
        double[] x = panels.x;
        double[] y = panels.y;
        double[] tx = panels.tx;
        double[] ty = panels.ty;
        for (int j = begin; j < end; j++) {
            along[j] = (px - x[j]) * tx[j] + (py - y[j]) * ty[j];
        }
        for (int j = begin; j < end; j++) {
            across[j] = Math.abs((py - y[j]) * tx[j] - (px - x[j]) * ty[j]);
        }
    }

    private void fillArcs(int begin, int end) {
        double[] length = panels.length;
        for (int j = begin; j < end; j++) {
            double y = across[j];
            double ratio = y * length[j] / (along[j] * (along[j] - length[j]) + y * y);
            arc[j] = Arc.series(ratio);
        }
        // The few that are seen under larger angles.
        for (int j = begin; j < end; j++) {
            double y = across[j];
            double sine = y * length[j];
            double cosine = along[j] * (along[j] - length[j]) + y * y;
            if (!(sine < Arc.SERIES * cosine)) {
                arc[j] = Arc.angle(sine, cosine);
            }
        }
    }
}
