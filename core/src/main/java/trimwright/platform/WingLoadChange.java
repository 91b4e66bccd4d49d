package trimwright.platform;

import trimwright.wing.WingSlope;

/** First-order change of a {@link WingLoad} with one variable of its state, per unit of that variable. */
public final class WingLoadChange {
    private final ForceSum force;
    private final double sheetPull;
    private final WingSlope slope;

    WingLoadChange(ForceSum force, double sheetPull, WingSlope slope) {
        this.force = force;
        this.sheetPull = sheetPull;
        this.slope = slope;
    }

    /** Of force and moment about the origin of the body axes. */
    public ForceSum force() {
        return force;
    }

    /** Of the sheet's pull at the wing (N), a slack sheet's negative one counted too. */
    public double sheetPull() {
        return sheetPull;
    }

    /** Of the stall margin of a strip (rad). */
    public double stallMargin(int strip) {
        return slope.stallMargin(strip);
    }
}
