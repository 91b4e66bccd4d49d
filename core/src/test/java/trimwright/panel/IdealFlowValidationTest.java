package trimwright.panel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import trimwright.evidence.ReferenceFiles;
import trimwright.evidence.ReferenceTest;
import trimwright.evidence.ValidatedAgainst;
import trimwright.profile.Contour;
import trimwright.profile.Naca;
import trimwright.profile.TrailingEdge;
import trimwright.profile.WingProfile;

class IdealFlowValidationTest {
    private static final double FIVE_DEGREES = Math.toRadians(5);

    @Test
    @ValidatedAgainst(
            source = "KARMAN-TREFFTZ",
            where =
                    "exact lift of mapped aerofoils, symmetric and cambered, cusp and trailing edge of 10 degrees, 5 degrees",
            tolerance =
                    "0.02 percent at 200 panels by circulation, 0.05 by pressure; error falls as panels^-1.9 at least")
    void liftOfMappedAerofoilsConvergesToTheExact() {
        MappedAerofoil[] aerofoils = {
            new MappedAerofoil(-0.1, 0, 0),
            new MappedAerofoil(-0.08, 0.1, 0),
            new MappedAerofoil(-0.1, 0, Math.toRadians(10)),
            new MappedAerofoil(-0.08, 0.1, Math.toRadians(10))
        };
        for (MappedAerofoil aerofoil : aerofoils) {
            double exact = aerofoil.lift(FIVE_DEGREES);
            double coarse = Math.abs(flow(FIVE_DEGREES, aerofoil.contour(100)).circulationLift(0) / exact - 1);
            SurfaceFlow flow = flow(FIVE_DEGREES, aerofoil.contour(200));
            double fine = Math.abs(flow.circulationLift(0) / exact - 1);
            assertTrue(fine < 2e-4, "error " + fine);
            assertTrue(Math.log(coarse / fine) / Math.log(2) > 1.9, "order " + Math.log(coarse / fine) / Math.log(2));
            assertEquals(1, flow.pressureLift(0) / exact, 5e-4);
            assertEquals(0, flow.pressureDrag(0), 1e-3);
        }
    }

    @Test
    @ValidatedAgainst(
            source = "KARMAN-TREFFTZ",
            where =
                    "symmetric Joukowski, circle 1.1 about -0.1: lift 0.59740 on chord 4.0333 at 5 degrees (section 4 no. 8)",
            tolerance = "1e-4, as the reference states for linear vorticity")
    void liftOfTheSymmetricJoukowskiAerofoil() {
        SurfaceFlow flow = flow(FIVE_DEGREES, new MappedAerofoil(-0.1, 0, 0).contour(200));
        assertEquals(0.59740, flow.circulationLift(0) / 4.0333, 1e-4);
    }

    @Test
    @ValidatedAgainst(
            source = "TWO-ELEMENT-PANELS",
            where = "section 4 no. 7: NACA 0012, closed edge, ideal lift 0.48263 at 4 and 0.96290 at 8 degrees",
            tolerance = "0.02 percent: two programs with the same panels")
    void idealLiftOfNaca0012() {
        assertEquals(
                0.48263,
                flow(Math.toRadians(4), Naca.symmetric(0.12).contour(200, TrailingEdge.SHARP))
                        .pressureLift(0),
                1e-4);
        assertEquals(
                0.96290,
                flow(Math.toRadians(8), Naca.symmetric(0.12).contour(200, TrailingEdge.SHARP))
                        .pressureLift(0),
                2e-4);
    }

    @ReferenceTest
    @ValidatedAgainst(
            source = "WILLIAMS-1973",
            where =
                    "exact two-element case, flap 30 degrees: total lift 3.7386, split 2.9065 and 0.8321 (split from memory)",
            tolerance =
                    "0.3 percent in all, 0.5 percent each, pressure against pressure; the outline is a resampled table")
    void exactTwoElementCase() {
        SurfaceFlow flow =
                flow(0, contour("reference/data/MainFoil_N_200.csv"), contour("reference/data/FlapFoil_N_200.csv"));
        assertEquals(3.7386, flow.pressureLift(0) + flow.pressureLift(1), 0.003 * 3.7386);
        assertEquals(2.9065, flow.pressureLift(0), 0.005 * 2.9065);
        assertEquals(0.8321, flow.pressureLift(1), 0.005 * 0.8321);
        assertEquals(0, flow.pressureDrag(0) + flow.pressureDrag(1), 1e-3);
    }

    @ReferenceTest
    @ValidatedAgainst(
            source = "WILLIAMS-1973",
            where =
                    "exact pressure at 62 points of each element, where its size is below 3; edge and first 1.2 percent left out",
            tolerance = "rms 0.012, as the reference states for linear vorticity")
    void exactPressureOfTheTwoElementCase() {
        Contour main = contour("reference/data/MainFoil_N_200.csv");
        Contour flap = contour("reference/data/FlapFoil_N_200.csv");
        SurfaceFlow flow = flow(0, main, flap);
        assertEquals(0, pressureMisfit(flow, 0, main, "reference/data/Cp_Main_theoretical.csv"), 0.012);
        assertEquals(0, pressureMisfit(flow, 1, flap, "reference/data/Cp_Flap_theoretical.csv"), 0.012);
    }

    @ReferenceTest
    @ValidatedAgainst(
            source = "TWO-ELEMENT-PANELS",
            where = "section 1.4: slot, lift of each element, suction and flap moment, flap 0-35, alpha 0-12 degrees",
            tolerance =
                    "rounding of the table; pressure rise 0.35: the table takes another value for the trailing edge")
    void twoElementFamily() {
        // Main chord 1, flap 0.8, nose at 1.02 when straight, pivot at 0.9; the profile is in total chords of 1.82.
        double total = 1.82;
        WingProfile family = new WingProfile(0.18, 0.12, 0.8 / total, 0.02 / total, 0.9);
        List<String> lines = text("reference/data/two_element_inviscid_reference.csv")
                .lines()
                .skip(1)
                .toList();
        assertEquals(28, lines.size());
        for (String line : lines) {
            double[] row = numbers(line);
            double flap = Math.toRadians(row[0]);
            SurfaceFlow flow = new IdealFlow(family.elements(flap, 200, TrailingEdge.SHARP)).at(Math.toRadians(row[1]));
            assertEquals(row[2], family.slot(flap).gap() * total, 1.5e-4, line);
            assertEquals(row[4], flow.circulationLift(0) * total, 1e-4, line);
            assertEquals(row[5], flow.circulationLift(1) * total, 1e-4, line);
            assertEquals(row[6], flow.pressureRise(0), 0.35, line);
            assertEquals(row[7], flow.pressureRise(1), 0.35, line);
            assertEquals(row[8], -flow.moment(1, family.pivotX(), 0) * total * total / (0.8 * 0.8), 1.5e-4, line);
        }
    }

    @Test
    @ValidatedAgainst(
            source = "HOUGHTON-CARPENTER",
            where = "eq. (4.52): lift a2 per rad of a sealed flap, share 0.25 and 0.4, as thickness goes to nothing",
            tolerance = "1 percent: thickness extrapolated from 2 and 1 percent, the corner at the hinge has 4 panels")
    void flapLiftOfThinAerofoils() {
        for (double share : new double[] {0.25, 0.4}) {
            double phi = Math.acos(2 * share - 1);
            double exact = 2 * (Math.PI - phi + Math.sin(phi));
            double thick = flapLift(0.02, share);
            double thin = flapLift(0.01, share);
            assertEquals(exact, 2 * thin - thick, 0.01 * exact);
        }
    }

    /** Lift per rad of the flap of a thin symmetric aerofoil, bent along its centre line. */
    private static double flapLift(double thickness, double share) {
        double step = 1e-3;
        Contour straight = Naca.symmetric(thickness).contour(400, TrailingEdge.SHARP);
        double[] x = new double[straight.points()];
        double[] y = new double[straight.points()];
        for (int i = 0; i < x.length; i++) {
            x[i] = straight.x(i);
            y[i] = straight.y(i) - step * Math.max(0, x[i] - (1 - share));
        }
        return flow(0, Contour.of(x, y)).circulationLift(0) / step;
    }

    /** Root mean square of the difference, the exact points joined to the nearest panel corners by straight lines. */
    private static double pressureMisfit(SurfaceFlow flow, int element, Contour contour, String path) {
        List<double[]> exact =
                text(path).lines().map(IdealFlowValidationTest::numbers).toList();
        int nose = 0;
        for (int i = 0; i < exact.size(); i++) {
            if (exact.get(i)[0] < exact.get(nose)[0]) {
                nose = i;
            }
        }
        int turn = 0;
        for (int i = 0; i < contour.points(); i++) {
            if (contour.x(i) < contour.x(turn)) {
                turn = i;
            }
        }
        double sum = 0;
        int count = 0;
        for (int i = 2; i + 2 < exact.size(); i++) {
            double[] row = exact.get(i);
            if (row[0] < exact.get(nose)[0] + 0.012) {
                continue; // x tells no place at the nose
            }
            int from = i <= nose ? 0 : turn;
            int to = i <= nose ? turn : contour.points() - 1;
            for (int j = from; j < to; j++) {
                double low = Math.min(contour.x(j), contour.x(j + 1));
                double high = Math.max(contour.x(j), contour.x(j + 1));
                if (row[0] >= low && row[0] < high && Math.abs(row[1]) < 3) {
                    double at = (row[0] - contour.x(j)) / (contour.x(j + 1) - contour.x(j));
                    double speed = flow.speed(element, j) + at * (flow.speed(element, j + 1) - flow.speed(element, j));
                    sum += (1 - speed * speed - row[1]) * (1 - speed * speed - row[1]);
                    count++;
                }
            }
        }
        assertTrue(count > 30, "points compared: " + count);
        return Math.sqrt(sum / count);
    }

    private static SurfaceFlow flow(double alpha, Contour... elements) {
        return new IdealFlow(List.of(elements)).at(alpha);
    }

    private static Contour contour(String path) {
        List<double[]> rows =
                text(path).lines().map(IdealFlowValidationTest::numbers).toList();
        double[] x = rows.stream().mapToDouble(row -> row[0]).toArray();
        double[] y = rows.stream().mapToDouble(row -> row[1]).toArray();
        // The file's last point is its first but for rounding.
        x[x.length - 1] = x[0];
        y[y.length - 1] = y[0];
        return Contour.of(x, y);
    }

    private static String text(String path) {
        return new String(ReferenceFiles.bytes(path), StandardCharsets.UTF_8);
    }

    private static double[] numbers(String line) {
        String[] cells = line.split(",");
        double[] row = new double[cells.length];
        for (int i = 0; i < cells.length; i++) {
            row[i] = Double.parseDouble(cells[i]);
        }
        return row;
    }
}
