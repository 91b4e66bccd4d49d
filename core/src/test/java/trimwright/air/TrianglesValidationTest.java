package trimwright.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import org.junit.jupiter.api.Test;
import trimwright.evidence.ValidatedAgainst;

/** Speeds in any one unit, angles in degrees at the edge of each test. */
class TrianglesValidationTest {
    @Test
    @ValidatedAgainst(
            source = "WIND-EXAMPLES",
            where = "apparent wind from true wind and boat speed, three rows",
            tolerance = "5e-3: printed digits")
    void apparentWind() {
        apparent(12, 45, 24, 33.575, 14.64);
        apparent(12, 135, 30, 23.128, 21.52);
        apparent(10, 60, 20, 26.458, 19.107);
    }

    @Test
    @ValidatedAgainst(
            source = "WIND-EXAMPLES",
            where = "apparent wind and speed made good",
            tolerance = "1e-3, as the table states")
    void apparentWindAtFoilingSpeeds() {
        ApparentWind a = apparent(23, 130, 50, 39.3775, 26.5795);
        assertEquals(-32.1394, new TrueWind(23, Math.toRadians(130)).madeGood(50), 1e-3);
        apparent(15, 45, 28, 40.0371, 15.3622);
        assertEquals(19.7990, new TrueWind(15, Math.toRadians(45)).madeGood(28), 1e-3);
        assertEquals(23, a.trueWind(50).speed(), 1e-12);
    }

    @Test
    @ValidatedAgainst(
            source = "WIND-EXAMPLES",
            where = "apparent 10 at 60 degrees, boat speed 5: true 8.66 at 90",
            tolerance = "5e-3: printed digits")
    void trueWindFromAnExample() {
        TrueWind w = new ApparentWind(10, Math.toRadians(60)).trueWind(5);
        assertEquals(8.66, w.speed(), 5e-3);
        assertEquals(90, Math.toDegrees(w.angle()), 1e-9);
    }

    @Test
    @ValidatedAgainst(
            source = "WIND-EXAMPLES",
            where = "ship 240 at 18, apparent from 280 at 30: true from 315 at 20",
            tolerance = "1 degree, 0.2 kn: a graphical solution")
    void trueWindOfAManoeuvringBoardProblem() {
        TrueWind w = new ApparentWind(30, Math.toRadians(40)).trueWind(18);
        assertEquals(20, w.speed(), 0.2);
        assertEquals(315, 240 + Math.toDegrees(w.angle()), 1);
    }

    @Test
    @ValidatedAgainst(
            source = "WIND-EXAMPLES",
            where = "course 180 at 22, apparent 70 on the port bow at 20: problem from the source, answer computed",
            tolerance = "0.05: printed digits")
    void trueWindOfAnExaminationProblem() {
        TrueWind w = new ApparentWind(20, Math.toRadians(-70)).trueWind(22);
        assertEquals(24.15, w.speed(), 0.01);
        assertEquals(51.1, 180 + Math.toDegrees(w.angle()), 0.05);
    }

    @Test
    @ValidatedAgainst(
            source = "CURRENT-EXAMPLES",
            where = "heading 070 at 12, set 135, drift 2",
            tolerance = "1e-3, as the table states")
    void currentOverGround() {
        CurrentTriangle.Way way = new CurrentTriangle(Math.toRadians(135), 2).overGround(Math.toRadians(70), 12);
        assertEquals(78.032, Math.toDegrees(way.direction()), 1e-3);
        assertEquals(12.9725, way.speed(), 1e-3);
    }

    @Test
    @ValidatedAgainst(
            source = "CURRENT-EXAMPLES",
            where = "course to steer, two chart exercises",
            tolerance = "0.01 for the exact sum; the answer sheets' 2.5 degrees and 0.1 kn are wider")
    void courseToSteer() {
        held(90, 5, 210, 2, 69.73, 3.690);
        held(150, 5.3, 50, 3.5, 190.57, 3.418);
        assertInstanceOf(CurrentTriangle.CannotBeHeld.class, new CurrentTriangle(0, 5).courseToSteer(Math.PI / 2, 4));
    }

    @Test
    @ValidatedAgainst(
            source = "LANCHESTER",
            where = "course theorem at an apparent angle of 20 degrees",
            tolerance = "1e-5, as the table states")
    void courseTheorem() {
        double beta = Math.toRadians(20);
        double fastest = CourseTheorem.fastestCourse(beta);
        assertEquals(110, Math.toDegrees(fastest), 1e-9);
        assertEquals(2.92380, CourseTheorem.speedRatio(fastest, beta), 1e-5);
        double up = CourseTheorem.upwindCourse(beta);
        assertEquals(55, Math.toDegrees(up), 1e-9);
        assertEquals(0.96190, CourseTheorem.speedRatio(up, beta) * Math.cos(up), 1e-5);
        double down = CourseTheorem.downwindCourse(beta);
        assertEquals(145, Math.toDegrees(down), 1e-9);
        assertEquals(1.96190, -CourseTheorem.speedRatio(down, beta) * Math.cos(down), 1e-5);
    }

    @Test
    @ValidatedAgainst(
            source = "LANCHESTER",
            where = "Lanchester's identity at 120 and 25.9 degrees",
            tolerance = "0.003, as the table states")
    void courseTheoremAgainstARecordRun() {
        assertEquals(2.2835, CourseTheorem.speedRatio(Math.toRadians(120), Math.toRadians(25.9)), 1e-4);
        assertEquals(50.2 / 22, CourseTheorem.speedRatio(Math.toRadians(120), Math.toRadians(25.9)), 0.003);
    }

    private static void held(double track, double speed, double set, double drift, double heading, double over) {
        CurrentTriangle.Held held = assertInstanceOf(
                CurrentTriangle.Held.class,
                new CurrentTriangle(Math.toRadians(set), drift).courseToSteer(Math.toRadians(track), speed));
        assertEquals(heading, Math.toDegrees(held.heading()), 0.01);
        assertEquals(over, held.speedOverGround(), 1e-3);
    }

    private static ApparentWind apparent(double tws, double twaDeg, double boat, double aws, double awaDeg) {
        ApparentWind a = new TrueWind(tws, Math.toRadians(twaDeg)).apparent(boat);
        assertEquals(aws, a.speed(), 1e-3);
        assertEquals(awaDeg, Math.toDegrees(a.angle()), 5e-3);
        return a;
    }
}
