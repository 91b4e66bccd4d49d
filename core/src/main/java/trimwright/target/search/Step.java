package trimwright.target.search;

/** A step, the multipliers that go with it, and by how much the model of the problem promises to lower f. */
final class Step {
    final double[] p;
    final Multipliers multipliers;
    final double modelChange;

    Step(double[] p, Multipliers multipliers, double modelChange) {
        this.p = p;
        this.multipliers = multipliers;
        this.modelChange = modelChange;
    }

    double length() {
        return Dense.largest(p);
    }
}
