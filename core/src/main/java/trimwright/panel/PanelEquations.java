package trimwright.panel;

/**
 * The equations of ideal flow: the stream function is one constant along each element, and the speed is the same on both
 * sides of each trailing edge. Unknowns: vorticity at each node, then the constant of each element.
 */
final class PanelEquations {
    final Panels panels;
    private final DenseLu lu;

    PanelEquations(Panels panels) {
        this.panels = panels;
        int n = panels.nodes + panels.elements;
        double[][] matrix = new double[n][n];
        StreamRows.addTo(matrix, panels);
        for (int k = 0; k < panels.elements; k++) {
            int begin = panels.begin(k);
            int end = panels.end(k);
            int constant = panels.nodes + k;
            for (int i = begin; i <= end; i++) {
                matrix[i][constant] = -1;
            }
            double[] kutta = matrix[constant];
            kutta[begin] = 1;
            kutta[end] = 1;
        }
        for (int k = 0; k < panels.elements; k++) {
            BluntEdge edge = panels.edge[k];
            if (edge == null) {
                closeSharpEdge(k, matrix);
            } else {
                double[] stream = edge.stream(panels);
                for (int i = 0; i < panels.nodes; i++) {
                    matrix[i][panels.begin(k)] += 0.5 * stream[i];
                    matrix[i][panels.end(k)] -= 0.5 * stream[i];
                }
            }
        }
        lu = new DenseLu(matrix);
    }

    /**
     * A sharp trailing edge is one place with two nodes, and the second node's equation would repeat the first. In its stead the
     * difference of the two sides' speeds runs out straight into the edge.
     */
    private void closeSharpEdge(int element, double[][] matrix) {
        int begin = panels.begin(element);
        int end = panels.end(element);
        double upper = panels.length[begin] / panels.length[begin + 1];
        double lower = panels.length[end - 1] / panels.length[end - 2];
        double[] row = new double[matrix.length];
        row[begin] = 1;
        row[begin + 1] = -(1 + upper);
        row[begin + 2] = upper;
        row[end] = -1;
        row[end - 1] = 1 + lower;
        row[end - 2] = -lower;
        matrix[end] = row;
    }

    /** Last node of an element with an equation of its own for the stream function. */
    private int lastEquation(int element) {
        return panels.edge[element] == null ? panels.end(element) - 1 : panels.end(element);
    }

    /**
     * Vorticity at the nodes that goes with a given stream function of everything else.
     *
     * @param others stream function at the nodes, without the vorticity's own
     */
    double[] vorticity(double[] others) {
        double[] right = new double[panels.nodes + panels.elements];
        for (int k = 0; k < panels.elements; k++) {
            for (int i = panels.begin(k); i <= lastEquation(k); i++) {
                right[i] = -others[i];
            }
        }
        return lu.solve(right);
    }

    /** The same for many streams at once: a row for each node, a column for each stream. */
    double[][] vorticities(double[][] others) {
        int columns = others[0].length;
        double[][] right = new double[panels.nodes + panels.elements][columns];
        for (int k = 0; k < panels.elements; k++) {
            for (int i = panels.begin(k); i <= lastEquation(k); i++) {
                for (int j = 0; j < columns; j++) {
                    right[i][j] = -others[i][j];
                }
            }
        }
        return lu.solveAll(right);
    }
}
