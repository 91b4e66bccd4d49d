package trimwright.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import trimwright.evidence.ValidatedAgainst;

class NormalNodesValidationTest {
    @Test
    @ValidatedAgainst(
            source = "ABRAMOWITZ-STEGUN",
            where = "table 25.10, n = 5: abscissas 0, 0.958572464613819, 2.020182870456086 and their weights",
            tolerance = "1e-12: digits of the table")
    void fivePointsAreThoseOfTheTable() {
        NormalNodes nodes = NormalNodes.gaussHermite(5);
        double[] x = {-2.020182870456086, -0.958572464613819, 0, 0.958572464613819, 2.020182870456086};
        double[] w = {1.995324205905e-2, 3.936193231522e-1, 9.453087204829e-1, 3.936193231522e-1, 1.995324205905e-2};
        for (int i = 0; i < 5; i++) {
            assertEquals(x[i] * Math.sqrt(2), nodes.z().get(i), 1e-12);
            assertEquals(w[i] / Math.sqrt(Math.PI), nodes.weight().get(i), 1e-12);
        }
    }

    @Test
    void momentsToTheNinthPowerAreThoseOfTheNormalLaw() {
        NormalNodes nodes = NormalNodes.gaussHermite(5);
        assertEquals(1, mean(nodes, z -> 1), 1e-14);
        assertEquals(1, mean(nodes, z -> z * z), 1e-13);
        assertEquals(3, mean(nodes, z -> Math.pow(z, 4)), 1e-12);
        assertEquals(105, mean(nodes, z -> Math.pow(z, 8)), 1e-10);
        assertEquals(0, mean(nodes, z -> Math.pow(z, 9)), 1e-10);
    }

    /** A kink at 0.3: E max(0, z - k) = phi(k) - k (1 - Phi(k)); Phi(0.3) = 0.617911 as every table has it. */
    @Test
    void evenStepsTakeAKinkAndAreExactForWhatIsSmooth() {
        NormalNodes nodes = NormalNodes.even(5, 0.25);
        assertEquals(1, mean(nodes, z -> z * z), 2e-5);
        double phi = Math.exp(-0.045) / Math.sqrt(2 * Math.PI);
        assertEquals(phi - 0.3 * (1 - 0.617911), mean(nodes, z -> Math.max(0, z - 0.3)), 0.25 * 0.25 / 8 * phi);
    }

    private static double mean(NormalNodes nodes, DoubleUnaryOperator value) {
        double sum = 0;
        for (int i = 0; i < nodes.count(); i++) {
            sum += nodes.weight().get(i) * value.applyAsDouble(nodes.z().get(i));
        }
        return sum;
    }
}
