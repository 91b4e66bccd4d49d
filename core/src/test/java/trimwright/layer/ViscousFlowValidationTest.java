package trimwright.layer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.io.TempDir;
import trimwright.evidence.ReferenceTest;
import trimwright.evidence.ValidatedAgainst;
import trimwright.profile.Naca;
import trimwright.profile.TrailingEdge;

class ViscousFlowValidationTest {
    private static final int LAST_DEGREES = 19;

    @TempDir
    private Path folder = Path.of("");

    @ReferenceTest
    @ValidatedAgainst(
            source = "XFOIL-6.99",
            where =
                    "run for the test: NACA 0012 and 0018, Reynolds 1e6 and 3e6, N = 9, every whole degree from 0 to 14; "
                            + "maximum lift up to 19 degrees",
            tolerance = "lift 3 percent, drag 10 percent, maximum lift 8 percent; seen 1.5, 6, 2")
    void polarsOfTwoAerofoils() {
        List<String> misses = new ArrayList<>();
        int compared = 0;
        for (String naca : new String[] {"0012", "0018"}) {
            for (double reynolds : new double[] {1e6, 3e6}) {
                Map<Double, double[]> theirs = XfoilProgram.polar(folder, naca, reynolds, LAST_DEGREES);
                double[][] ours = polar(naca, reynolds);
                for (int degrees = 0; degrees <= 14; degrees++) {
                    double[] other = at(theirs, degrees);
                    if (other == null) {
                        System.out.printf(
                                Locale.ROOT,
                                "NACA %s Re %.0e %d deg: the program has no answer%n",
                                naca,
                                reynolds,
                                degrees);
                        continue;
                    }
                    compared++;
                    double lift = ours[degrees][0] - other[0];
                    double drag = ours[degrees][1] - other[1];
                    if (Math.abs(lift) > Math.max(0.001, 0.03 * other[0]) || Math.abs(drag) > 0.1 * other[1]) {
                        misses.add(String.format(
                                Locale.ROOT,
                                "NACA %s Re %.0e %d deg: lift %.4f for %.4f, drag %.5f for %.5f",
                                naca,
                                reynolds,
                                degrees,
                                ours[degrees][0],
                                other[0],
                                ours[degrees][1],
                                other[1]));
                    }
                }
                double most = theirs.values().stream()
                        .mapToDouble(point -> point[0])
                        .max()
                        .orElseThrow();
                double ourMost = 0;
                for (double[] point : ours) {
                    ourMost = Math.max(ourMost, point[0]);
                }
                assertEquals(most, ourMost, 0.08 * most, naca + " " + reynolds);
            }
        }
        misses.forEach(System.out::println);
        assertTrue(compared >= 56, "angles compared: " + compared);
        assertEquals(List.of(), misses);
    }

    private static double[][] polar(String digits, double reynolds) {
        Naca naca = Naca.find(digits);
        assertNotNull(naca);
        ViscousFlow flow = new ViscousFlow(List.of(naca.contour(160, TrailingEdge.BLUNT)), ViscousFlow.QUIET);
        double[][] points = new double[LAST_DEGREES + 1][];
        ViscousPoint near = null;
        for (int degrees = 0; degrees <= LAST_DEGREES; degrees++) {
            near = assertInstanceOf(
                    ViscousPoint.class, flow.at(Math.toRadians(degrees), reynolds, near), digits + " " + degrees);
            points[degrees] = new double[] {near.lift(), near.drag()};
        }
        return points;
    }

    /** At a whole degree; where the program did not converge, the mean of half a degree to either side. */
    private static double @Nullable [] at(Map<Double, double[]> polar, double degrees) {
        double[] point = polar.get(degrees);
        double[] before = polar.get(degrees - 0.5);
        double[] after = polar.get(degrees + 0.5);
        return point != null || before == null || after == null
                ? point
                : new double[] {0.5 * (before[0] + after[0]), 0.5 * (before[1] + after[1])};
    }
}
