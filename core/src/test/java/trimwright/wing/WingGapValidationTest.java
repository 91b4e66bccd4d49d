package trimwright.wing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import trimwright.evidence.ValidatedAgainst;

class WingGapValidationTest {
    @Test
    @ValidatedAgainst(
            source = "GAP-IMAGE",
            where = "closed-form least induced drag of an upright wing over a plane: e over gap/head height",
            tolerance = "0.5 percent: optimum found over 60 strips against the closed form (K, E by AGM in the test)")
    void leastInducedDragOverTheSeaIsTheClosedForm() {
        double[] gap = {.01, .02, .05, .1, .2, .3, .5};
        double[] e = {.6662, .6226, .5441, .4602, .3434, .2555, .1268};
        for (int k = 0; k < gap.length; k++) {
            assertEquals(e[k], closedForm(gap[k]), 1e-4);
            assertEquals(e[k], leastDragEfficiency(gap[k]), 0.005 * e[k], "gap " + gap[k]);
        }
    }

    /** Efficiency of the best loading, on the height of the head above the plane. */
    private static double leastDragEfficiency(double gap) {
        double head = 10;
        Wing wing = Wing.of(TestWings.tapered(head - gap * head, 0.01, 0.01), TestWings.THIN, 60);
        // Di = Y^2/(2 pi q b^2 e) with density and speed 1, q 1/2.
        return LeastDrag.forceSquaredOverDrag(wing.placedAt(0, gap * head)) / (Math.PI * head * head);
    }

    private static double closedForm(double g) {
        // Complete elliptic integrals of modulus k' = sqrt(1 - g^2) by the arithmetic-geometric mean.
        double a = 1;
        double b = g;
        double c2 = 1 - g * g;
        double sum = 0.5 * c2;
        double power = 0.5;
        for (int i = 0; i < 40; i++) {
            double next = 0.5 * (a + b);
            double c = 0.5 * (a - b);
            b = Math.sqrt(a * b);
            a = next;
            power *= 2;
            sum += power * c * c;
        }
        // E/K = 1 - sum of 2^(i-1) c_i^2.
        return 1 + g * g - 2 * (1 - sum);
    }
}
