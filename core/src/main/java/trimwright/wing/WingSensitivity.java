package trimwright.wing;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Derivatives of a solved wing's loads and stall margins by its controls, exact at the solution: implicit function theorem
 * on the converged equations. Zero in still air.
 */
public final class WingSensitivity {
    private final WingSolved solved;
    private final @Nullable WingForce[] force;
    private final double[][] stallMargin;
    private final double[][] hingeMoment;

    private WingSensitivity(WingSolved solved, List<WingControl> asked) {
        this.solved = solved;
        int controls = WingControl.values().length;
        force = new @Nullable WingForce[controls];
        stallMargin = Rows.of(controls, solved.strips());
        hingeMoment = Rows.of(controls, solved.strips());
        asked.forEach(control -> force[control.ordinal()] = WingForce.NONE);
    }

    /** Derivative of force and moment (N, N m per unit of the control). Throws {@link IllegalStateException} on one not asked for. */
    public WingForce forceBy(WingControl control) {
        WingForce by = force[control.ordinal()];
        if (by == null) {
            throw new IllegalStateException("derivatives by " + control + " were not asked for");
        }
        return by;
    }

    /** Derivative of the least stall margin (rad per unit of the control), the strip that has it held. */
    public double stallMarginBy(WingControl control) {
        return stallMarginBy(control, solved.stallStrip());
    }

    /** Derivative of a strip's stall margin (rad per unit of the control). */
    public double stallMarginBy(WingControl control, int strip) {
        return stallMargin[control.ordinal()][strip];
    }

    /** Derivative of the moment about the hinge of a strip's part of the flap (N m per unit of the control). */
    public double hingeMomentBy(WingControl control, int strip) {
        return hingeMoment[control.ordinal()][strip];
    }

    /** Derivative of the moment about the hinge of a panel of the flap (N m per unit of the control). */
    public double panelHingeMomentBy(WingControl control, int panel) {
        return solved.wing().sumOfPanel(panel, hingeMoment[control.ordinal()]);
    }

    /** Derivative of the height of effort above the foot (m per unit of the control); infinite without side force. */
    public double effortHeightBy(WingControl control) {
        WingForce by = forceBy(control);
        return (by.k() - solved.force().effortHeight() * by.y())
                / solved.force().y();
    }

    /** @param asked by which to take derivatives; the others are not there */
    static WingSensitivity at(WingSolved solved, List<WingControl> asked) {
        WingSensitivity sensitivity = new WingSensitivity(solved, asked);
        @Nullable StripFlow flow = solved.flow();
        if (flow == null) {
            return sensitivity;
        }
        LuFactors lu = factors(flow);
        FlowTangent tangent = new FlowTangent(flow);
        for (WingControl control : asked) {
            int at = control.ordinal();
            tangent.solve(control, lu);
            sensitivity.force[at] = tangent.loads(sensitivity.stallMargin[at], sensitivity.hingeMoment[at]);
        }
        return sensitivity;
    }

    /** Answers to any changes; null in still air. Throws {@link IllegalStateException} on a wing with no sea near. */
    static WingSlope @Nullable [] of(WingSolved solved, WingChange... changes) {
        @Nullable StripFlow flow = solved.flow();
        if (flow == null) {
            return null;
        }
        if (!flow.influence.placed.hasSea()) {
            throw new IllegalStateException("changes are asked of wings over the sea");
        }
        LuFactors lu = factors(flow);
        FlowTangent tangent = new FlowTangent(flow);
        double[] hinge = new double[flow.n];
        WingSlope[] slopes = new WingSlope[changes.length];
        for (int k = 0; k < changes.length; k++) {
            tangent.solve(changes[k], lu);
            double[] margin = new double[flow.n];
            slopes[k] = new WingSlope(tangent.loads(margin, hinge), margin);
        }
        return slopes;
    }

    private static LuFactors factors(StripFlow flow) {
        LuFactors lu = new LuFactors(flow.n);
        flow.jacobian(lu.columns());
        if (!lu.factor()) {
            throw new IllegalStateException("the wing's equations are singular at a solved state");
        }
        return lu;
    }
}
