package trimwright.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.function.IntToDoubleFunction;

/** What every section model must hold, asked of any. */
final class SectionChecks {
    private SectionChecks() {}

    /** Port equals starboard to the last bit, in random states. */
    static void assertMirrored(SectionModel section, Random random, IntToDoubleFunction flapOf) {
        SectionPoint a = new SectionPoint();
        SectionPoint b = new SectionPoint();
        for (int i = 0; i < 20_000; i++) {
            double alpha = Math.PI * (2 * random.nextDouble() - 1);
            double flap = flapOf.applyAsDouble(i);
            double re = Math.exp(10 + 7 * random.nextDouble());
            section.evaluate(alpha, flap, re, a);
            section.evaluate(-alpha, -flap, re, b);
            assertEquals(a.cl, -b.cl);
            assertEquals(a.cd, b.cd);
            assertEquals(a.cm, -b.cm);
            assertEquals(a.hinge, -b.hinge);
            assertEquals(a.stallMargin, b.stallMargin);
            assertEquals(a.clAlpha, b.clAlpha);
            assertEquals(a.cdFlap, -b.cdFlap);
        }
    }

    /** Whatever finite is put in, all that comes out is finite and drag is positive. */
    static void assertFinite(SectionModel section) {
        Random random = new Random(2);
        SectionPoint out = new SectionPoint();
        for (int i = 0; i < 50_000; i++) {
            double alpha = 20 * random.nextGaussian();
            double flap = 5 * random.nextGaussian();
            double re = i % 7 == 0 ? 0 : Math.exp(25 * random.nextDouble());
            section.evaluate(alpha, flap, re, out);
            double sum = out.cl + out.cd + out.cm + out.hinge + out.stallMargin;
            sum += out.clAlpha + out.cdAlpha + out.cmAlpha + out.hingeAlpha + out.stallMarginAlpha;
            sum += out.clFlap + out.cdFlap + out.cmFlap + out.hingeFlap + out.stallMarginFlap;
            sum += out.clLogRe + out.cdLogRe + out.cmLogRe + out.hingeLogRe + out.stallMarginLogRe;
            assertTrue(Double.isFinite(sum), () -> "alpha " + alpha + " flap " + flap + " re " + re);
            assertTrue(out.cd > 0, () -> "drag at alpha " + alpha + " flap " + flap + " re " + re);
        }
    }
}
