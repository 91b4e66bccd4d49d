package trimwright.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class ClosedFormSectionPropertyTest {
    private static final SectionModel SECTION =
            new ClosedFormSection(new SectionShape(0.4, 0.22, 0.012, 0.18), SectionTuning.DEFAULT);

    @Test
    void portEqualsStarboardToTheLastBit() {
        Random random = new Random(1);
        SectionChecks.assertMirrored(SECTION, random, i -> 0.8 * (2 * random.nextDouble() - 1));
    }

    @Test
    void theThreeStepsGiveTheSameToTheLastBit() {
        Random random = new Random(6);
        SectionPoint once = new SectionPoint();
        SectionPoint steps = new SectionPoint();
        for (int i = 0; i < 20_000; i++) {
            double alpha = (i % 2 == 0 ? 0.5 : Math.PI) * (2 * random.nextDouble() - 1);
            double flap = 0.8 * (2 * random.nextDouble() - 1);
            double re = Math.exp(10 + 7 * random.nextDouble());
            SECTION.evaluate(alpha, flap, re, once);
            SECTION.hold(flap, re, steps);
            double before = alpha + 0.3 * random.nextGaussian();
            SECTION.lift(StrictMath.sin(before), StrictMath.cos(before), steps);
            SECTION.lift(StrictMath.sin(alpha), StrictMath.cos(alpha), steps);
            assertEquals(once.cl, steps.cl);
            assertEquals(once.clAlpha, steps.clAlpha);
            assertTrue(steps.stallMargin <= once.stallMargin && steps.stallMargin > 0 == once.stallMargin > 0);
            if (once.stallMargin < 0) {
                assertEquals(once.stallMargin, steps.stallMargin);
                assertEquals(once.stallMarginAlpha, steps.stallMarginAlpha);
            }
            SECTION.complete(StrictMath.sin(alpha), StrictMath.cos(alpha), steps);
            assertEquals(once.stallMargin, steps.stallMargin);
            assertEquals(once.stallMarginFlap, steps.stallMarginFlap);
            assertEquals(once.cd, steps.cd);
            assertEquals(once.cdLogRe, steps.cdLogRe);
            assertEquals(once.cm, steps.cm);
            assertEquals(once.hingeFlap, steps.hingeFlap);
        }
    }

    @Test
    void everyFiniteInputGivesAFiniteAnswerWithPositiveDrag() {
        SectionChecks.assertFinite(SECTION);
    }

    @Test
    void derivativesAgreeWithCentralDifferences() {
        Random random = new Random(3);
        SectionPoint at = new SectionPoint();
        SectionPoint low = new SectionPoint();
        SectionPoint high = new SectionPoint();
        double h = 1e-6;
        for (int i = 0; i < 20_000; i++) {
            double alpha = i % 2 == 0 ? Math.PI * (2 * random.nextDouble() - 1) : 0.3 * random.nextGaussian();
            double flap = 0.7 * (2 * random.nextDouble() - 1);
            double logRe = 10 + 7 * random.nextDouble();
            SECTION.evaluate(alpha, flap, Math.exp(logRe), at);
            SECTION.evaluate(alpha - h, flap, Math.exp(logRe), low);
            SECTION.evaluate(alpha + h, flap, Math.exp(logRe), high);
            same("cl by alpha", alpha, flap, (high.cl - low.cl) / (2 * h), at.clAlpha);
            same("cd by alpha", alpha, flap, (high.cd - low.cd) / (2 * h), at.cdAlpha);
            same("cm by alpha", alpha, flap, (high.cm - low.cm) / (2 * h), at.cmAlpha);
            same("margin by alpha", alpha, flap, (high.stallMargin - low.stallMargin) / (2 * h), at.stallMarginAlpha);
            same("hinge by alpha", alpha, flap, (high.hinge - low.hinge) / (2 * h), at.hingeAlpha);
            SECTION.evaluate(alpha, flap - h, Math.exp(logRe), low);
            SECTION.evaluate(alpha, flap + h, Math.exp(logRe), high);
            same("cl by flap", alpha, flap, (high.cl - low.cl) / (2 * h), at.clFlap);
            same("cd by flap", alpha, flap, (high.cd - low.cd) / (2 * h), at.cdFlap);
            same("cm by flap", alpha, flap, (high.cm - low.cm) / (2 * h), at.cmFlap);
            same("margin by flap", alpha, flap, (high.stallMargin - low.stallMargin) / (2 * h), at.stallMarginFlap);
            same("hinge by flap", alpha, flap, (high.hinge - low.hinge) / (2 * h), at.hingeFlap);
            SECTION.evaluate(alpha, flap, Math.exp(logRe - h), low);
            SECTION.evaluate(alpha, flap, Math.exp(logRe + h), high);
            same("cl by log re", alpha, flap, (high.cl - low.cl) / (2 * h), at.clLogRe);
            same("cd by log re", alpha, flap, (high.cd - low.cd) / (2 * h), at.cdLogRe);
            same("cm by log re", alpha, flap, (high.cm - low.cm) / (2 * h), at.cmLogRe);
            same("margin by re", alpha, flap, (high.stallMargin - low.stallMargin) / (2 * h), at.stallMarginLogRe);
            same("hinge by re", alpha, flap, (high.hinge - low.hinge) / (2 * h), at.hingeLogRe);
        }
    }

    @Test
    void maximumLiftGrowsWithFlapAndWithReynoldsNumber() {
        double before = 0;
        for (int flapDeg = 0; flapDeg <= 30; flapDeg += 5) {
            double most = mostLift(Math.toRadians(flapDeg), 2e6);
            assertTrue(most > before + (flapDeg == 0 ? 0 : 0.05), "flap " + flapDeg + ": " + most);
            before = most;
        }
        assertTrue(mostLift(0.3, 4e6) > mostLift(0.3, 1e6) + 0.2);
    }

    @Test
    void liftDoesNotFallBeforeFourDegreesPastStall() {
        SectionPoint out = new SectionPoint();
        for (double flap = -0.3; flap <= 0.65; flap += 0.05) {
            for (double alpha = 0; alpha < 0.6; alpha += 0.002) {
                SECTION.evaluate(alpha, flap, 2e6, out);
                if (out.stallMargin > Math.toRadians(-4) && alpha + 0.75 * flap > 0) {
                    assertTrue(out.clAlpha > 0, "alpha " + alpha + " flap " + flap);
                }
            }
        }
    }

    @Test
    void aSlotOfTwoPercentOfTheMainChordIsBest() {
        double best = mostLift(section(0.012), 0.4, 2e6);
        assertTrue(best > mostLift(section(0.004), 0.4, 2e6));
        assertTrue(best > mostLift(section(0.024), 0.4, 2e6));
    }

    private static SectionModel section(double slot) {
        return new ClosedFormSection(new SectionShape(0.4, 0.22, slot, 0.18), SectionTuning.DEFAULT);
    }

    private static double mostLift(double flap, double re) {
        return mostLift(SECTION, flap, re);
    }

    private static double mostLift(SectionModel section, double flap, double re) {
        SectionPoint out = new SectionPoint();
        double most = 0;
        for (double alpha = -0.3; alpha < 0.6; alpha += 0.001) {
            section.evaluate(alpha, flap, re, out);
            most = Math.max(most, out.cl);
        }
        return most;
    }

    private static void same(String what, double alpha, double flap, double difference, double derivative) {
        // Central differences with 1e-6 are good to about 1e-8 of second derivatives near the corners' 1/0.02.
        assertEquals(
                difference, derivative, 2e-7 * (1 + Math.abs(derivative)) * 10, what + " at " + alpha + ", " + flap);
    }
}
