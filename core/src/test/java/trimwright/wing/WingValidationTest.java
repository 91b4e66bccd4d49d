package trimwright.wing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import trimwright.air.AirState;
import trimwright.boat.WingSpec;
import trimwright.evidence.ValidatedAgainst;

/** Textbook wings with thin sections; air from straight ahead, the sheet making the angle of attack. */
class WingValidationTest {
    private static final AirState AIR = AirState.STANDARD;
    private static final double SPEED = 10;

    @Test
    @ValidatedAgainst(
            source = "VAN-GARREL",
            where = "elliptic wing, aspect ratio 6.366, 5.7106 deg: CL 0.4765, CDi CL^2/(pi AR)",
            tolerance = "0.5 percent, as the reference case states")
    void ellipticWingHasTheClosedFormLiftAndDrag() {
        double ar = 6.366;
        double chord = 1;
        double span = ar * Math.PI * chord / 4;
        double[] c = coefficients(TestWings.elliptic(span, chord), 60, Math.toRadians(5.7106), Double.NaN);
        assertEquals(0.4765, c[0], 0.005 * 0.4765);
        assertEquals(0.01135, c[1], 0.005 * 0.01135);
    }

    @Test
    @ValidatedAgainst(
            source = "LIFTING-LINE-SERIES",
            where = "rectangular wing, lift slope 2 pi: lift slope and induced drag factor over aspect ratio 2 to 16",
            tolerance = "2e-3 of lift slope, 2e-3 of 1 + delta: 60 strips against a converged series")
    void rectangularWingsFollowTheLiftingLineTable() {
        double[] ar = {2, 3, 4, 5, 6, 7, 8, 10, 12, 16};
        double[] slope = {3.0380, 3.6314, 4.0284, 4.3141, 4.5304, 4.7004, 4.8377, 5.0468, 5.1991, 5.4074};
        double[] delta = {.0101, .0189, .0285, .0384, .0483, .0581, .0676, .0859, .1031, .1342};
        double alpha = 0.01;
        for (int k = 0; k < ar.length; k++) {
            double[] c = coefficients(TestWings.tapered(ar[k], 1, 1), 60, alpha, Double.NaN);
            assertEquals(slope[k], c[0] / alpha, 2e-3 * slope[k], "aspect ratio " + ar[k]);
            assertEquals(1 + delta[k], c[1] * Math.PI * ar[k] / (c[0] * c[0]), 2e-3, "aspect ratio " + ar[k]);
        }
    }

    @Test
    @ValidatedAgainst(
            source = "LIFTING-LINE-SERIES",
            where = "taper at aspect ratio 10: delta",
            tolerance = "2e-3 of 1 + delta: 80 strips against a converged series")
    void taperedWingsFollowTheLiftingLineTable() {
        double[] taper = {.2, .35, .4, .6, 1};
        double[] delta = {.0309, .0166, .0172, .0321, .0859};
        for (int k = 0; k < taper.length; k++) {
            // Root in the middle: two straight pieces.
            WingSpec spec = TestWings.doubleTaper(10, taper[k]);
            double[] c = coefficients(spec, 80, 0.01, Double.NaN);
            double ar = 100 / Wing.area(spec);
            assertEquals(1 + delta[k], c[1] * Math.PI * ar / (c[0] * c[0]), 2e-3, "taper " + taper[k]);
        }
    }

    @Test
    @ValidatedAgainst(
            source = "LIFTING-LINE-SERIES",
            where = "rectangular wing of aspect ratio 8 over a plane: lift slope, drag, efficiency, centre over gap",
            tolerance = "0.4 percent, 0.002 of span: 80 strips against a series converged to 1e-4")
    void rectangularWingWithGapFollowsTheImageTable() {
        double[] gap = {.01, .02, .05, .1, .2, 1};
        double[] slope = {5.132, 5.087, 5.020, 4.966, 4.918, 4.851};
        double[] drag = {.8298, .8536, .8903, .9199, .9476, .9861};
        double[] centre = {.4881, .4907, .4942, .4965, .4983, .4999};
        double alpha = 0.01;
        for (int k = 0; k < gap.length; k++) {
            double[] c = coefficients(TestWings.tapered(8, 1, 1), 80, alpha, 8 * gap[k]);
            assertEquals(slope[k], c[0] / alpha, 4e-3 * slope[k], "gap " + gap[k]);
            assertEquals(drag[k], c[1] / (alpha * alpha), 4e-3 * drag[k], "gap " + gap[k]);
            assertEquals(centre[k], c[2], 2e-3, "gap " + gap[k]);
        }
    }

    @Test
    @ValidatedAgainst(
            source = "LIFTING-LINE-SERIES",
            where = "taper 0.5, aspect ratio 6 over a plane: lift slope, drag, centre at gap 0.03, 0.1, none",
            tolerance = "0.4 percent, 0.002 of span")
    void taperedWingWithGapFollowsTheImageTable() {
        double[] gap = {.03, .1, Double.NaN};
        double[] slope = {4.7795, 4.6530, 4.4892};
        double[] drag = {1.0175, 1.0672, 1.1386};
        double[] centre = {.4643, .4698, .4742};
        double alpha = 0.01;
        // Span 6, mean chord 1: foot 4/3, head 2/3.
        for (int k = 0; k < gap.length; k++) {
            double[] c = coefficients(TestWings.tapered(6, 4.0 / 3, 2.0 / 3), 80, alpha, 6 * gap[k]);
            assertEquals(slope[k], c[0] / alpha, 4e-3 * slope[k], "gap " + gap[k]);
            assertEquals(drag[k], c[1] / (alpha * alpha), 4e-3 * drag[k], "gap " + gap[k]);
            assertEquals(centre[k], c[2], 2e-3, "gap " + gap[k]);
        }
    }

    @Test
    void aWingThatTouchesThePlaneIsHalfOfOneTwiceAsLong() {
        double[] half = coefficients(TestWings.tapered(8, 1, 1), 80, 0.01, 1e-6);
        assertEquals(5.4074, half[0] / 0.01, 0.01 * 5.4074);
    }

    /** CL, CDi and centre of effort over span, at an angle of attack; no sea where the foot height is NaN. */
    static double[] coefficients(WingSpec spec, int strips, double alpha, double footHeight) {
        Wing wing = Wing.of(spec, TestWings.THIN, strips);
        PlacedWing placed = Double.isNaN(footHeight) ? wing.inFreeAir() : wing.placedAt(0, footHeight);
        WingAnswer answer = placed.solve(StripAir.uniform(strips, SPEED, 0, AIR), new WingSetting(-alpha, 0, 0, 0.5));
        WingSolved solved = (WingSolved) answer;
        // Area as the strips have it, so that coefficients do not mix two quadratures.
        double area = 0;
        for (int i = 0; i < strips; i++) {
            area += wing.stripChord(i) * wing.stripWidth(i);
        }
        double q = 0.5 * AIR.density() * SPEED * SPEED * area;
        return new double[] {
            -solved.force().y() / q,
            solved.inducedDrag() / q,
            solved.force().k() / solved.force().y() / wing.span()
        };
    }
}
