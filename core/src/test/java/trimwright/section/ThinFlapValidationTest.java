package trimwright.section;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import trimwright.evidence.ValidatedAgainst;

class ThinFlapValidationTest {
    private static final double[] SHARE = {.10, .20, .25, .30, .35, .40, .45, .50};

    @Test
    @ValidatedAgainst(
            source = "HOUGHTON-CARPENTER",
            where = "eq. (4.52) to (4.57), flap share 0.1 to 0.5",
            tolerance = "1e-4: the table's rounding")
    void constantsOfASealedFlap() {
        double[] a2 = {2.4870, 3.4546, 3.8264, 4.1516, 4.4401, 4.6985, 4.9312, 5.1416};
        double[] effectiveness = {.3958, .5498, .6090, .6607, .7067, .7478, .7848, .8183};
        double[] moment = {-.5400, -.6400, -.6495, -.6416, -.6201, -.5879, -.5472, -.5000};
        double[] b1 = {-.3449, -.4994, -.5653, -.6274, -.6869, -.7448, -.8018, -.8584};
        double[] b2 = {-.8842, -.9229, -.9436, -.9654, -.9884, -1.0127, -1.0384, -1.0658};
        for (int k = 0; k < SHARE.length; k++) {
            ThinFlap flap = ThinFlap.of(SHARE[k]);
            assertEquals(a2[k], flap.lift(), 1e-4);
            assertEquals(effectiveness[k], flap.effectiveness(), 1e-4);
            assertEquals(moment[k], flap.moment(), 1e-4);
            assertEquals(b1[k], flap.hingeAlpha(), 1e-4);
            assertEquals(b2[k], flap.hingeFlap(), 1e-4);
        }
    }

    @Test
    @ValidatedAgainst(
            source = "DESKTOP-AERO",
            where = "flat plate: cl 2 pi sin(alpha), no moment about the quarter chord",
            tolerance = "1e-6")
    void flatPlate() {
        SectionPoint out = new SectionPoint();
        new ThinSection(new SectionShape(0.4, 0.25, 0, 0)).evaluate(0.1, 0, 1e6, out);
        assertEquals(2 * Math.PI * Math.sin(0.1), out.cl, 1e-12);
        assertEquals(0, out.cm, 1e-12);
        assertEquals(0.1096, new ThinFlapSlope().perDegree(), 1e-4);
    }

    /** Lift slope of the thin section per degree. */
    private static final class ThinFlapSlope {
        double perDegree() {
            SectionPoint out = new SectionPoint();
            new ThinSection(new SectionShape(0.4, 0.25, 0, 0)).evaluate(0, 0, 1e6, out);
            return out.clAlpha * Math.PI / 180;
        }
    }
}
