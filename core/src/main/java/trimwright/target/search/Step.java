package trimwright.target.search;

/** A step, the multipliers that go with it, and by how much the model of the problem promises to lower f. */
final class Step {
    final double[] p;
    final Multipliers multipliers;
    final double modelChange;
    final NullSpace space;

    Step(double[] p, Multipliers multipliers, double modelChange, NullSpace space) {
        this.p = p;
        this.multipliers = multipliers;
        this.modelChange = modelChange;
        this.space = space;
    }

    double length() {
        return Dense.largest(p);
    }
}
