package trimwright.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class TabledSectionPropertyTest {
    private static final SectionTable TABLE = ClosedFormTable.of(TableGrid.of(List.of(0.12, 0.16, 0.2)));
    private static final SectionModel SECTION = TABLE.family(6).sectionOf(ClosedFormTable.shape(0.22, 0.15));

    @Test
    void portEqualsStarboardToTheLastBit() {
        Random random = new Random(1);
        SectionChecks.assertMirrored(SECTION, random, i -> i % 5 == 0 ? 0 : 0.8 * (2 * random.nextDouble() - 1));
    }

    @Test
    void threeStepsComeToTheSameBits() {
        Random random = new Random(6);
        SectionPoint once = new SectionPoint();
        SectionPoint steps = new SectionPoint();
        for (int i = 0; i < 5_000; i++) {
            double flap = i % 5 == 0 ? 0 : 0.8 * (2 * random.nextDouble() - 1);
            double re = Math.exp(12 + 4 * random.nextDouble());
            SECTION.hold(flap, re, steps);
            for (int k = 0; k < 3; k++) {
                double alpha = 1.2 * (2 * random.nextDouble() - 1);
                SECTION.evaluate(alpha, flap, re, once);
                SECTION.lift(StrictMath.sin(alpha), StrictMath.cos(alpha), steps);
                assertEquals(once.cl, steps.cl);
                assertEquals(once.clAlpha, steps.clAlpha);
                assertEquals(once.stallMargin, steps.stallMargin);
                SECTION.complete(StrictMath.sin(alpha), StrictMath.cos(alpha), steps);
                assertEquals(once.cd, steps.cd);
                assertEquals(once.cmFlap, steps.cmFlap);
                assertEquals(once.hingeLogRe, steps.hingeLogRe);
            }
        }
    }

    @Test
    void evenTheFirstAnswerInAPointMakesNoObjects() {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        // The first round loads classes, which counts too. The steps, since Java's own sine may make an array.
        for (int round = 0; round < 2; round++) {
            SectionPoint point = new SectionPoint();
            threads.getCurrentThreadAllocatedBytes();
            long before = threads.getCurrentThreadAllocatedBytes();
            SECTION.hold(0.3, 2e6, point);
            SECTION.lift(0.05, 0.99875, point);
            SECTION.complete(0.05, 0.99875, point);
            long made = threads.getCurrentThreadAllocatedBytes() - before;
            assertTrue(round == 0 || made == 0, made + " bytes");
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
            // Where the table's pieces meet: on nodes of the flap angle, the straight flap among them.
            double flap = i % 3 == 0 ? Math.toRadians(5 * (random.nextInt(19) - 9)) : 1.5 * random.nextDouble() - 0.75;
            double logRe = 10 + 7 * random.nextDouble();
            SECTION.evaluate(alpha, flap, Math.exp(logRe), at);
            SECTION.evaluate(alpha - h, flap, Math.exp(logRe), low);
            SECTION.evaluate(alpha + h, flap, Math.exp(logRe), high);
            String where = " at " + alpha + ", " + flap + ", " + logRe;
            same("by alpha" + where, high, low, h, at.clAlpha, at.cdAlpha, at.cmAlpha, at.hingeAlpha);
            same((high.stallMargin - low.stallMargin) / (2 * h), at.stallMarginAlpha, "margin by alpha" + where);
            SECTION.evaluate(alpha, flap - h, Math.exp(logRe), low);
            SECTION.evaluate(alpha, flap + h, Math.exp(logRe), high);
            same("by flap" + where, high, low, h, at.clFlap, at.cdFlap, at.cmFlap, at.hingeFlap);
            same((high.stallMargin - low.stallMargin) / (2 * h), at.stallMarginFlap, "margin by flap" + where);
            SECTION.evaluate(alpha, flap, Math.exp(logRe - h), low);
            SECTION.evaluate(alpha, flap, Math.exp(logRe + h), high);
            same("by log Re" + where, high, low, h, at.clLogRe, at.cdLogRe, at.cmLogRe, at.hingeLogRe);
            same((high.stallMargin - low.stallMargin) / (2 * h), at.stallMarginLogRe, "margin by log Re" + where);
        }
    }

    /** The table machinery against the function that filled it, attached and at random off the nodes. */
    @Test
    void betweenNodesItIsTheFunctionThatFilledIt() {
        Random random = new Random(4);
        SectionPoint table = new SectionPoint();
        SectionPoint exact = new SectionPoint();
        for (int outline = 0; outline < 50; outline++) {
            SectionShape shape = ClosedFormTable.shape(0.22, 0.12 + 0.08 * random.nextDouble());
            SectionModel section = TABLE.family(6).sectionOf(shape);
            SectionModel flow = new ClosedFormSection(shape, SectionTuning.DEFAULT);
            double squares = 0;
            for (int i = 0; i < 200; i++) {
                double flap = Math.toRadians(40 * random.nextDouble());
                double re = 5.5e5 * Math.exp(2.8 * random.nextDouble());
                double high = ClosedFormTable.stall(flow, flap, re, 1);
                double low = ClosedFormTable.stall(flow, flap, re, -1);
                double alpha = low + (high - low) * random.nextDouble();
                flow.evaluate(alpha, flap, re, exact);
                section.evaluate(alpha, flap, re, table);
                String where = "alpha " + alpha + ", flap " + flap + ", Re " + re;
                // Cubics over steps of 5 degrees of flap and a factor 2.7 of Reynolds number; most off at the corners
                // of
                // the closed form: against the flap near stall, and where the flap's own limit begins.
                assertEquals(exact.cl, table.cl, 0.05, where);
                assertEquals(exact.cd, table.cd, 0.08 * exact.cd, where);
                assertEquals(exact.cm, table.cm, 0.003, where);
                assertEquals(exact.hinge, table.hinge, 0.01, where);
                squares += (exact.cl - table.cl) * (exact.cl - table.cl);
            }
            assertEquals(0, Math.sqrt(squares / 200), 0.01, "rms of lift");
        }
    }

    @Test
    void liftNeverFallsBeforeFourDegreesPastStall() {
        SectionPoint out = new SectionPoint();
        for (double flap = 0; flap <= 0.6; flap += 0.05) {
            for (double alpha = 0; alpha < 0.6; alpha += 0.002) {
                SECTION.evaluate(alpha, flap, 2e6, out);
                if (out.stallMargin > Math.toRadians(-4)) {
                    assertTrue(out.clAlpha > -0.2, "alpha " + alpha + " flap " + flap + ": " + out.clAlpha);
                }
            }
        }
    }

    @Test
    void fromBehindItIsTheSameReachedEitherWay() {
        SectionPoint up = new SectionPoint();
        SectionPoint down = new SectionPoint();
        double off = 1e-9;
        for (double flap = -0.7; flap <= 0.7; flap += 0.1) {
            SECTION.evaluate(Math.PI - off, flap, 2e6, up);
            SECTION.evaluate(off - Math.PI, flap, 2e6, down);
            // Lift's slope there is under 10 per rad, over a gap of 2e-9 rad.
            assertEquals(up.cl, down.cl, 1e-7, "flap " + flap);
            assertEquals(up.cd, down.cd, 1e-7, "flap " + flap);
            assertEquals(up.cm, down.cm, 1e-7, "flap " + flap);
            assertEquals(up.hinge, down.hinge, 1e-7, "flap " + flap);
            assertEquals(up.clAlpha, down.clAlpha, 1e-6, "flap " + flap);
        }
    }

    private static void same(
            String what, SectionPoint high, SectionPoint low, double h, double cl, double cd, double cm, double hinge) {
        same((high.cl - low.cl) / (2 * h), cl, "cl " + what);
        same((high.cd - low.cd) / (2 * h), cd, "cd " + what);
        same((high.cm - low.cm) / (2 * h), cm, "cm " + what);
        same((high.hinge - low.hinge) / (2 * h), hinge, "hinge " + what);
    }

    /** The second derivative jumps between pieces: differences over h are off by h times the jump, some hundreds at most. */
    private static void same(double difference, double derivative, String what) {
        assertEquals(difference, derivative, 5e-4 * (1 + Math.abs(derivative)), what);
    }
}
