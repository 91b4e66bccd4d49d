package trimwright.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trimwright.evidence.ValidatedAgainst;

class GustShapeValidationTest {
    /** Wind 10 m/s at 12 m over class I, turbulence B; of what the gust meets 24 m or nothing across. */
    @ParameterizedTest
    @CsvSource({"24, 4.707, 8.738, 13.483", "0, 6.052, 8.378, 14.479"})
    @ValidatedAgainst(
            source = "IEC-61400-1",
            where = "extreme operating gust: amplitude, least and largest wind, worked out by an independent program",
            tolerance = "1e-3: rounding of the values")
    void theOperatingGustDipsAndPeaks(double across, double amplitude, double low, double high) {
        double deviation = GustShape.deviation(0.14, 10);
        assertEquals(1.834, deviation, 1e-3);
        double scale = GustShape.scale(12);
        assertEquals(8.4, scale, 1e-9);
        double found = GustShape.operatingAmplitude(10, 50, deviation, scale, across);
        assertEquals(amplitude, found, 1e-3);
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        double leastAt = 0;
        double mostAt = 0;
        for (double t = 0; t <= GustShape.OPERATING_SECONDS; t += 0.01) {
            double wind = 10 + found * GustShape.dipAndPeak(t, GustShape.OPERATING_SECONDS);
            if (wind < least) {
                least = wind;
                leastAt = t;
            }
            if (wind > most) {
                most = wind;
                mostAt = t;
            }
        }
        assertEquals(low, least, 1e-3);
        assertEquals(high, most, 1e-3);
        assertEquals(2.45, leastAt, 0.02);
        assertEquals(5.25, mostAt, 0.02);
    }

    @Test
    @ValidatedAgainst(
            source = "IEC-61400-1",
            where = "coherent gust: 180 degrees up to 4 m/s, 720 degrees m/s over the wind above; 72 degrees at 10 m/s",
            tolerance = "1e-12: closed form")
    void theCoherentGustTurnsTheWind() {
        assertEquals(Math.toRadians(72), GustShape.coherentTurn(10), 1e-12);
        assertEquals(Math.toRadians(180), GustShape.coherentTurn(3), 1e-12);
        assertEquals(Math.toRadians(180), GustShape.coherentTurn(4), 1e-12);
    }

    @Test
    @ValidatedAgainst(
            source = "IEC-61400-1",
            where = "extreme change of direction: 4 atan(sigma / (V (1 + 0.1 D / Lambda))), worked out by hand",
            tolerance = "1e-3 rad: sigma has four digits")
    void theExtremeTurnFollowsTheTurbulence() {
        // 1.834 / (10 x 1.2857) = 0.14265; atan 0.14169; four times that 0.56677 rad.
        assertEquals(0.56677, GustShape.extremeTurn(10, 1.834, 8.4, 24), 1e-3);
    }

    /** Scaled shapes reach the change that was asked for and no more. */
    @Test
    void everyShapeReachesItsChangeOnce() {
        for (GustShape shape : GustShape.values()) {
            double most = Double.NEGATIVE_INFINITY;
            for (double t = 0; t <= 6; t += 0.005) {
                most = Math.max(most, shape.share(t, 5));
            }
            assertEquals(1, most, 1e-5, shape.name());
            assertEquals(0, shape.share(-1, 5), 1e-12);
        }
        assertEquals(0.5, GustShape.COHERENT.share(2.5, 5), 1e-12);
        assertEquals(1, GustShape.COHERENT.share(7, 5), 1e-12);
        assertEquals(0, GustShape.OPERATING.share(7, 5), 1e-12);
        assertTrue(GustShape.OPERATING.share(1, 5) < 0, "a dip before the peak");
    }
}
