package trimwright.panel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import trimwright.evidence.ReferenceFiles;
import trimwright.evidence.ReferenceTest;
import trimwright.evidence.ValidatedAgainst;
import trimwright.profile.Contour;
import trimwright.profile.Naca;
import trimwright.profile.Outline;
import trimwright.profile.TrailingEdge;
import trimwright.profile.WingProfile;

class PressureRuleValidationTest {
    @Test
    @ValidatedAgainst(
            source = "TWO-ELEMENT-PANELS",
            where = "section 2.6: NACA 0012, rise of 4.80, 6.79, 9.20, 11.97, 15.18 at 8, 10, 12, 14, 16 degrees; "
                    + "of 14 at 15.3 degrees, lift 1.82",
            tolerance = "rise 2 percent, angle 0.2 degrees, lift 2 percent: peaks depend on the panels at the nose")
    void riseOfNaca0012() {
        IdealFlow flow = new IdealFlow(List.of(Naca.symmetric(0.12).contour(200, TrailingEdge.SHARP)));
        double[] rises = {4.80, 6.79, 9.20, 11.97, 15.18};
        for (int i = 0; i < rises.length; i++) {
            assertEquals(rises[i], flow.at(Math.toRadians(8 + 2 * i)).pressureRise(0), 0.02 * rises[i]);
        }
        PressureRule.Limit limit = PressureRule.find(flow, 6e6);
        assertNotNull(limit);
        assertEquals(15.3, Math.toDegrees(limit.alpha()), 0.2);
        assertEquals(1.82, limit.lift(), 0.02 * 1.82);
    }

    @ReferenceTest
    @ValidatedAgainst(
            source = "NLR-MP-79034",
            where = "NLR 7301 with flap 20 degrees, Reynolds 2.51e6: maximum lift 3.194",
            tolerance =
                    "10 percent, as the reference recommends for the rule; the test's Mach number 0.185 is not that of the curve")
    void maximumLiftOfTheMeasuredSection() {
        Contour main = outline("reference/data/NLR7301MainECARP.dat");
        Contour flap = outline("reference/data/NLR7301FlapECARP.dat")
                .turned(Math.toRadians(-0.25), 0.94, -0.011)
                .moved(0, 0.0025);
        PressureRule.Limit limit = PressureRule.find(new IdealFlow(List.of(main, flap)), 2.51e6);
        assertNotNull(limit);
        assertEquals(0, limit.element());
        assertEquals(3.194, limit.lift(), 0.1 * 3.194);
    }

    /** Beyond some deflection it is the flap's own suction that sets the limit, whatever the angle of attack. */
    @Test
    void aFlapFarDownIsTheFirstToReachTheLimit() {
        WingProfile wing = new WingProfile(0.18, 0.12, 0.4, 0.012, 0.9);
        PressureRule.Limit small = limit(wing, 10);
        PressureRule.Limit large = limit(wing, 38);
        assertEquals(0, small.element());
        assertEquals(1, large.element());
        assertTrue(small.alpha() > 0 && large.alpha() < small.alpha());
    }

    /** The source has no curve there; lift at stall must not be taken for larger than such a section's at a million. */
    @Test
    void belowTheCurveTheRiseFallsOnAsItsFirstStretch() {
        double perMillion = PressureRule.rise(2e6) - PressureRule.rise(1e6);
        assertEquals(PressureRule.rise(1e6) - 0.5 * perMillion, PressureRule.rise(5e5), 1e-12);
        assertEquals(PressureRule.rise(1e6), PressureRule.rise(1e6 - 1), 1e-5);
        assertTrue(PressureRule.rise(0) > 0);
    }

    private static PressureRule.Limit limit(WingProfile wing, double flapDegrees) {
        IdealFlow flow = new IdealFlow(wing.elements(Math.toRadians(flapDegrees), 160, TrailingEdge.BLUNT));
        PressureRule.Limit limit = PressureRule.find(flow, 2e6);
        assertNotNull(limit);
        return limit;
    }

    private static Contour outline(String path) {
        List<double[]> rows = new String(ReferenceFiles.bytes(path), StandardCharsets.UTF_8)
                .lines()
                .skip(1)
                .map(line -> line.strip().split("[\\s,]+"))
                .filter(cells -> cells.length == 2)
                .map(cells -> new double[] {Double.parseDouble(cells[0]), Double.parseDouble(cells[1])})
                .toList();
        return Outline.through(
                        rows.stream().mapToDouble(row -> row[0]).toArray(),
                        rows.stream().mapToDouble(row -> row[1]).toArray())
                .contour(160);
    }
}
