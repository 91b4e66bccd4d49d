package trimwright.wing;

/**
 * What the changes of the velocity of a node's image have in common, at each strip: with s the strength over 4 pi, r the
 * distance, u the wake's direction, t the image's own. A workspace, overwritten node by node.
 */
final class ImageLeg {
    private final Influence influence;

    /** s/(r (r - u.r)). */
    final double[] force;

    /** s/(r (r - u.r)^2). */
    final double[] dense;

    /** s (1/r + 1/(r - u.r))/(r^2 (r - u.r)). */
    final double[] steep;

    /** The same as dense and steep with t for u. */
    final double[] boundDense;

    final double[] boundSteep;

    /** Sum over all nodes so far of s/(r (r - t.r)). */
    final double[] bound;

    ImageLeg(Influence influence) {
        this.influence = influence;
        int n = influence.placed.wing().strips();
        force = new double[n];
        dense = new double[n];
        steep = new double[n];
        boundDense = new double[n];
        boundSteep = new double[n];
        bound = new double[n];
    }

    /** For a node whose own wake has a strength; its image's counts with the opposite sign. */
    void at(int k, double strength) {
        double[] clear = influence.imageClearance(k);
        double s = strength / (4 * Math.PI);
        double[] near = influence.placed.imageNearness(k);
        double[] line = influence.placed.imageBound(k);
        for (int i = 0; i < force.length; i++) {
            force[i] = s * near[i] * clear[i];
        }
        for (int i = 0; i < dense.length; i++) {
            dense[i] = force[i] * clear[i];
        }
        for (int i = 0; i < steep.length; i++) {
            steep[i] = near[i] * (near[i] * force[i] + dense[i]);
        }
        for (int i = 0; i < bound.length; i++) {
            bound[i] += s * near[i] * line[i];
        }
        for (int i = 0; i < boundDense.length; i++) {
            boundDense[i] = s * near[i] * line[i] * line[i];
        }
        for (int i = 0; i < boundSteep.length; i++) {
            boundSteep[i] = near[i] * (near[i] + line[i]) * s * near[i] * line[i];
        }
    }
}
