package trimwright.layer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import trimwright.evidence.ValidatedAgainst;

class LaminarLayerValidationTest {
    private static final double REYNOLDS = 1e6;

    @Test
    @ValidatedAgainst(
            source = "BLASIUS",
            where = "flat plate: momentum thickness 0.664 x over root of Reynolds number, shape factor 2.591",
            tolerance = "1 percent: the laws are fits to a family of similar flows")
    void flatPlate() {
        double[] end = march(x -> 1.0);
        assertEquals(0.664 / Math.sqrt(REYNOLDS), end[0], 0.01 * 0.664 / Math.sqrt(REYNOLDS));
        assertEquals(2.591, end[1], 0.026);
    }

    @Test
    @ValidatedAgainst(
            source = "HOWARTH",
            where = "speed 1 - x: laminar separation at 0.1199 (from memory)",
            tolerance = "4 percent: the laws are fits to similar flows; seen 3.5 late")
    void linearlyRetardedFlowSeparates() {
        double[] end = march(x -> 1 - x);
        assertEquals(0.1199, end[2], 0.04 * 0.1199);
    }

    /** Marches a laminar layer at given speeds to 1, or until its shape factor is 4: thickness, shape, place. */
    private static double[] march(DoubleUnaryOperator speedAt) {
        StationSolver solver = new StationSolver(new Residuals(REYNOLDS, 1e9));
        LayerState state = new LayerState(2, 1);
        double x = 1e-4;
        state.theta[0] = 0.664 * Math.sqrt(x / REYNOLDS);
        state.speed[0] = speedAt.applyAsDouble(x);
        state.displaced[0] = 2.591 * state.theta[0] * state.speed[0];
        while (x < 1) {
            double next = Math.min(1, x + Math.min(2e-4, 0.02 * x));
            Station a = Unknowns.given(state, 0, Regime.LAMINAR, REYNOLDS);
            Dual from = Dual.constant(x);
            Dual to = Dual.constant(next);
            state.theta[1] = state.theta[0];
            state.speed[1] = speedAt.applyAsDouble(next);
            state.displaced[1] = state.displaced[0];
            boolean done = solver.solve(state, 1, Regime.LAMINAR, b -> Interval.laminar(a, b, from, to), 0);
            if (!done || state.shape(1) > 4) {
                break;
            }
            x = next;
            state.theta[0] = state.theta[1];
            state.speed[0] = state.speed[1];
            state.displaced[0] = state.displaced[1];
        }
        return new double[] {state.theta[0], state.shape(0), x};
    }
}
