package trimwright.wind;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import trimwright.air.ApparentWind;
import trimwright.air.TrueWind;
import trimwright.evidence.ValidatedAgainst;

class WindTriangleValidationTest {
    /** Units cancel: knots in, knots out. */
    private static TrueWind level(double aws, double awaDeg, double speed) {
        return WindTriangle.trueWind(
                new ApparentWind(aws, Math.toRadians(awaDeg)), Attitude.LEVEL, new BoatVelocity(speed, 0));
    }

    @Test
    @ValidatedAgainst(
            source = "WIND-EXAMPLES",
            where = "apparent 10 at 60 deg, boat speed 5: true 8.66 at 90 deg",
            tolerance = "0.005: last printed digit; 0.1 deg")
    void halfTheApparentSpeedAtSixtyDegreesGivesWindAbeam() {
        TrueWind wind = level(10, 60, 5);
        assertEquals(8.66, wind.speed(), 0.005);
        assertEquals(90, Math.toDegrees(wind.angle()), 0.1);
    }

    @Test
    @ValidatedAgainst(
            source = "WIND-EXAMPLES",
            where = "manoeuvring board: apparent from 280 at 30 kn, ship 240 (18 kn inferred), true from 315 at 20 kn",
            tolerance = "1 deg and 0.2 kn: solved graphically in the source")
    void manoeuvringBoardProblemIsMet() {
        TrueWind wind = level(30, 40, 18);
        assertEquals(20, wind.speed(), 0.2);
        assertEquals(315, 240 + Math.toDegrees(wind.angle()), 1.0);
    }

    @Test
    @ValidatedAgainst(
            source = "WIND-EXAMPLES",
            where =
                    "course 180 at 22 kn, apparent 70 deg to port at 20 kn; answer computed independently: 051.1, 24.15 kn",
            tolerance = "last digit of the independent computation")
    void windFromAheadOfThePortBeamIsMet() {
        TrueWind wind = level(20, -70, 22);
        assertEquals(24.15, wind.speed(), 0.005);
        assertEquals(51.1, 180 + Math.toDegrees(wind.angle()), 0.05);
    }

    @Test
    @ValidatedAgainst(
            source = "WIND-EXAMPLES",
            where = "computed independently: true 12 at 45, boat 24; 12 at 135, boat 30; 10 at 60, boat 20",
            tolerance = "last digit of the independent computation")
    void fastBoatsAreMet() {
        assertTrueWind(12, 45, level(33.575, 14.64, 24));
        assertTrueWind(12, 135, level(23.128, 21.52, 30));
        assertTrueWind(10, 60, level(26.458, 19.107, 20));
    }

    private static void assertTrueWind(double speed, double angleDeg, TrueWind wind) {
        assertEquals(speed, wind.speed(), 0.01);
        assertEquals(angleDeg, Math.toDegrees(wind.angle()), 0.05);
    }
}
