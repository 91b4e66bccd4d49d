package trimwright.section;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** The richer section becomes the poorer one in its limit: no thickness, no viscous loss, small angles. */
class SectionLadderPropertyTest {
    private static final SectionShape FLAT = new SectionShape(0.4, 0.22, 0.012, 0);

    @Test
    void withoutThicknessAndLossTheClosedFormIsThinAerofoilTheory() {
        SectionModel rich = new ClosedFormSection(FLAT, SectionTuning.DEFAULT.withViscousLoss(0));
        SectionModel thin = new ThinSection(FLAT);
        SectionPoint a = new SectionPoint();
        SectionPoint b = new SectionPoint();
        for (double alpha = -0.02; alpha <= 0.02; alpha += 0.01) {
            for (double flap = -0.05; flap <= 0.05; flap += 0.025) {
                rich.evaluate(alpha, flap, 3e6, a);
                thin.evaluate(alpha, flap, 3e6, b);
                // The flap's fade is of third order in its angle: 1.25^2 x 0.05^3 / 6 of 2 pi x 0.75.
                assertEquals(b.cl, a.cl, 2e-4);
                assertEquals(b.clAlpha, a.clAlpha, 1e-3);
                assertEquals(b.clFlap, a.clFlap, 1.2e-2);
                assertEquals(b.cm, a.cm, 1e-4);
            }
        }
    }

    @Test
    void aFlatPlateLiftsTwoPi() {
        SectionPoint out = new SectionPoint();
        new ClosedFormSection(FLAT, SectionTuning.DEFAULT.withViscousLoss(0)).evaluate(0, 0, 3e6, out);
        assertEquals(2 * Math.PI, out.clAlpha, 1e-9);
        assertEquals(0, out.cl, 1e-15);
        assertEquals(0, out.cm, 1e-15);
    }
}
