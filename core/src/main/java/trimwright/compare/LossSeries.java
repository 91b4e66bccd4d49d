package trimwright.compare;

/** Seconds lost in each instant of a leg, first to last; an instant without reference counts whole. */
public final class LossSeries {
    private final double[] loss;

    LossSeries(double[] loss) {
        this.loss = loss.clone();
    }

    public int size() {
        return loss.length;
    }

    /** Lost in the instant that lies so many after the leg's first (s). */
    public double at(int k) {
        return loss[k];
    }
}
