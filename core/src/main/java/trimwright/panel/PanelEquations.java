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
        for (int k = 0; k < panels.elements; k++) {
            int begin = panels.begin(k);
            int end = panels.end(k);
            int constant = panels.nodes + k;
            for (int i = begin; i < end; i++) {
                StreamFunction.addVortices(panels, panels.x[i], panels.y[i], matrix[i]);
                matrix[i][constant] = -1;
            }
            // The trailing edge is one place with two nodes; the second node's equation would repeat the first. In its
            // stead the difference of the two sides' speeds runs out straight into the edge.
            double[] edge = matrix[end];
            edge[begin] = 1;
            edge[begin + 1] = -2;
            edge[begin + 2] = 1;
            edge[end] = -1;
            edge[end - 1] = 2;
            edge[end - 2] = -1;
            double[] kutta = matrix[constant];
            kutta[begin] = 1;
            kutta[end] = 1;
        }
        lu = new DenseLu(matrix);
    }

    /**
     * Vorticity at the nodes that goes with a given stream function of everything else.
     *
     * @param others stream function at the nodes, without the vorticity's own
     */
    double[] vorticity(double[] others) {
        double[] right = new double[panels.nodes + panels.elements];
        for (int k = 0; k < panels.elements; k++) {
            for (int i = panels.begin(k); i < panels.end(k); i++) {
                right[i] = -others[i];
            }
        }
        return lu.solve(right);
    }
}
