package trimwright.wing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import trimwright.air.AirState;
import trimwright.boat.FootPlate;
import trimwright.evidence.ValidatedAgainst;

/** A plate under the foot: between no plate and the plane of endless width. */
class FootPlateValidationTest {
    private static final double SPAN = 10;
    private static final double FREE = LeastDrag.forceSquaredOverDrag(thin(60).inFreeAir());

    @Test
    @ValidatedAgainst(
            source = "T-PLATE",
            where = "least induced drag of a wing that stands on a plate of 0.05 to 0.5 of its span, no gap",
            tolerance = "0.5 percent: strips of finite width and a gap of a millionth of the span")
    void aWingThatStandsOnAPlateHasTheClosedForm() {
        for (double width : new double[] {0.05, 0.1, 0.2, 0.5}) {
            double gain = closedForm(width);
            assertEquals(gain, gain(width, 1e-6), 0.005 * gain, "width " + width);
        }
    }

    @Test
    @ValidatedAgainst(
            source = "END-PLATE-RULE",
            where = "aspect ratio gained 1.9 h/b by plates at both ends, so half of it by one, h/b 0.1 to 0.3",
            tolerance = "12 percent of the gain: a rule of thumb, straight where theory bends")
    void theGainOfASmallPlateIsThatOfTheRule() {
        for (double width : new double[] {0.1, 0.2, 0.3}) {
            assertEquals(0.95 * width, gain(width, 1e-6) - 1, 0.12 * 0.95 * width, "width " + width);
        }
    }

    @Test
    @ValidatedAgainst(
            source = "GAP-IMAGE",
            where = "table of Di/Di_free over a plane, gap over head's height 0.01 to 0.1, from a plate 30 spans wide",
            tolerance = "0.3 percent: edges of the plate, strips")
    void aVeryWidePlateIsAPlane() {
        double[] gap = {.01, .02, .03, .05, .1};
        double[] ratio = {.7356, .7713, .7955, .8294, .8801};
        for (int k = 0; k < gap.length; k++) {
            // Gap over the height of the head: gap/(gap + span).
            double apart = SPAN * gap[k] / (1 - gap[k]);
            assertEquals(ratio[k], 1 / gain(30, apart / SPAN), 0.003 * ratio[k], "gap " + gap[k]);
        }
    }

    @Test
    void asMuchAsItIsSolid() {
        PlacedWing none = Wing.of(TestWings.real(), 30).placedAt(0.05, 2.5);
        double before = drag(none);
        assertEquals(before, drag(over(new FootPlate(8, 0.3, 0))), 1e-9 * before);
        for (double solidity : new double[] {0.25, 0.5, 0.75, 1}) {
            double drag = drag(over(new FootPlate(8, 0.3, solidity)));
            assertTrue(drag < before, "solidity " + solidity);
            before = drag;
        }
    }

    @Test
    void airAtAStripIsWhatTurnsItAndNoneCrossesTheSea() {
        PlacedWing placed = over(new FootPlate(8, 0.3, 0.6));
        double heel = placed.heel();
        WingSetting setting = new WingSetting(0.25, 0.3, 0.2, 0.5);
        WingSolved solved = (WingSolved) placed.solve(StripAir.uniform(30, 15, 0.4, AirState.STANDARD), setting);
        for (int i = 3; i < 27; i += 6) {
            AirVelocity v = placed.velocityAt(solved, 0, 0, -placed.wing().stripHeight(i));
            double x = -15 * Math.cos(0.4) + v.x();
            double y = -15 * Math.sin(0.4) + v.y();
            assertEquals(solved.alpha(i) + setting.sheet(), Math.atan2(-y, -x), 1e-4);
        }
        for (double[] at : new double[][] {{0, 0}, {-5, 3}, {-20, -7}}) {
            double y = 2.5 * Math.sin(heel) + at[1] * Math.cos(heel);
            double z = 2.5 * Math.cos(heel) - at[1] * Math.sin(heel);
            AirVelocity v = placed.velocityAt(solved, at[0], y, z);
            assertEquals(0, v.y() * Math.sin(heel) + v.z() * Math.cos(heel), 1e-6);
        }
    }

    private static PlacedWing over(FootPlate plate) {
        return Wing.of(TestWings.withPlate(TestWings.real(), plate), 30).placedAt(0.05, 2.5);
    }

    /** Induced drag over side force squared. */
    private static double drag(PlacedWing placed) {
        WingSolved solved = (WingSolved) placed.solve(
                StripAir.uniform(30, 15, 0.4, 0.05, AirState.STANDARD), new WingSetting(0.3, 0.3, 0.1, 0.5));
        return solved.inducedDrag() / (solved.force().y() * solved.force().y());
    }

    private static Wing thin(int strips) {
        return Wing.of(TestWings.tapered(SPAN, 0.01, 0.01), TestWings.THIN, strips);
    }

    /** Effective over geometric aspect ratio of a wing over a solid plate, lengths over the span. */
    private static double gain(double width, double gap) {
        FootPlate plate = new FootPlate(width * SPAN, gap * SPAN, 1);
        Wing wing = Wing.of(TestWings.withPlate(TestWings.tapered(SPAN, 0.01, 0.01), plate), TestWings.THIN, 60);
        return LeastDrag.forceSquaredOverDrag(wing.inFreeAir()) / FREE;
    }

    /**
     * Side force squared over least drag goes with the apparent mass of the cross-section, wing and plate as one body. The
     * root of z^2 + h^2 maps the plate, 2 h wide, and the wing on it to one slit from -h to sqrt(1 + h^2); the stream's
     * expansion far away gives the mass, pi (((sqrt(1 + h^2) + h)/2)^2 - h^2), against pi/4 without plate.
     */
    private static double closedForm(double width) {
        double h = width / 2;
        double half = (Math.sqrt(1 + h * h) + h) / 2;
        return 4 * (half * half - h * h);
    }
}
