package trimwright.wing;

/** How a solved wing answers a {@link WingChange}: first-order changes of its force and of each strip's stall margin. */
public final class WingSlope {
    private final WingForce force;
    private final double[] stallMargin;

    WingSlope(WingForce force, double[] stallMargin) {
        this.force = force;
        this.stallMargin = stallMargin;
    }

    /** Change of force and moment about the step (N, N m per unit of the change). */
    public WingForce force() {
        return force;
    }

    /** Change of a strip's stall margin (rad per unit of the change). */
    public double stallMargin(int strip) {
        return stallMargin[strip];
    }
}
