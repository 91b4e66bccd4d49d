package trimwright.platform;

import trimwright.wing.PlacedWing;
import trimwright.wing.WingSolved;

/** What the wing does to the boat in one state. */
public final class WingLoad {
    private final ForceSum force;
    private final double turningMoment;
    private final double sheetPull;
    private final PlacedWing placed;
    private final WingSolved flow;

    WingLoad(ForceSum force, double turningMoment, double sheetPull, PlacedWing placed, WingSolved flow) {
        this.force = force;
        this.turningMoment = turningMoment;
        this.sheetPull = sheetPull;
        this.placed = placed;
        this.flow = flow;
    }

    /** Force and moment about the origin of the body axes. */
    public ForceSum force() {
        return force;
    }

    /** Moment about the turning axis (N m), positive where it eases the wing and so loads the sheet. */
    public double turningMoment() {
        return turningMoment;
    }

    /** Turning moment over the sheet's lever (N); negative where the sheet is slack, for a rope cannot push. */
    public double sheetPull() {
        return sheetPull;
    }

    /** Load of the sheet at the wing (N): zero where it is slack. */
    public double sheetLoad() {
        return Math.max(0, sheetPull);
    }

    public boolean isSheetSlack() {
        return sheetPull < 0;
    }

    PlacedWing placed() {
        return placed;
    }

    /** The flow along the wing. */
    public WingSolved flow() {
        return flow;
    }
}
