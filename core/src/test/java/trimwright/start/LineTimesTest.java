package trimwright.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import trimwright.course.PlaneLine;
import trimwright.course.PlanePoint;

/** Seconds to the line by a table of a boat that gathers speed evenly, whose closed form is known. */
class LineTimesTest {
    /** (m/s2) */
    private static final double ACCELERATION = 0.5;

    private static final List<Double> SPEEDS = List.of(3.0, 5.0, 8.0, 12.0);

    private static final LineTimes TIMES = new LineTimes(
            SPEEDS,
            SPEEDS.stream()
                    .map(speed -> StartTrial.DISTANCES.stream()
                            .map(metres -> spread(seconds(speed, metres)))
                            .toList())
                    .toList());

    /** 5 m/s, 0.5 m/s2, 100 m: 12.3607 s (constant acceleration, worked out in the hydrodynamic reference, 4.8). */
    @Test
    void nodesAreTheTablesOwn() {
        assertEquals(12.3607, TIMES.to(5, 100).middle(), 1e-4);
        assertEquals(0, TIMES.to(5, 0).middle());
    }

    /** Straight lines over a curve: within a second here. */
    @Test
    void betweenThemItIsNear() {
        assertEquals(seconds(6.5, 175), TIMES.to(6.5, 175).middle(), 1);
        assertTrue(TIMES.to(6.5, 175).low() < TIMES.to(6.5, 175).high());
    }

    @Test
    void slowerThanAllIsTheSlowestAndFartherIsNotKnown() {
        assertEquals(TIMES.to(3, 80), TIMES.to(1, 80));
        assertEquals(TIMES.to(12, 80), TIMES.to(20, 80));
        assertTrue(Double.isNaN(TIMES.to(5, 700).middle()));
    }

    @Test
    void aBookMixesWindsAndCoursesAndEndsWhereItEnds() {
        LineTimes slower = new LineTimes(
                List.of(3.0),
                List.of(StartTrial.DISTANCES.stream().map(m -> spread(m / 3.0)).toList()));
        LineTimes faster = new LineTimes(
                List.of(3.0),
                List.of(StartTrial.DISTANCES.stream().map(m -> spread(m / 6.0)).toList()));
        LineBook book = new LineBook(
                List.of(6.0, 8.0), List.of(1.0, 1.5), List.of(List.of(slower, slower), List.of(faster, faster)));
        assertEquals(75.0 / 3, book.to(6, 1, 3, 75).middle(), 1e-9);
        assertEquals((75.0 / 3 + 75.0 / 6) / 2, book.to(7, 1.2, 3, 75).middle(), 1e-9);
        assertTrue(Double.isNaN(book.to(4, 1, 3, 75).middle()));
        assertTrue(Double.isNaN(book.to(7, 2.5, 3, 75).middle()));
        assertTrue(Double.isNaN(book.to(7, 1.2, 3, Double.NaN).middle()));
    }

    /** A line from west to east is crossed going north; from 60 m south of it, going north-east, it is 60 root 2 m. */
    @Test
    void theWayToTheLineGoesAlongTheCourse() {
        PlaneLine line = new PlaneLine(new PlanePoint(0, -50), new PlanePoint(0, 50));
        LineSight sight = sight(line, new PlanePoint(-60, 0), Math.PI / 4);
        assertEquals(60, sight.toLine(), 1e-9);
        assertEquals(60 * Math.sqrt(2), sight.way(), 1e-9);
        assertTrue(Double.isNaN(sight.spare()), "no table, no seconds");
        assertTrue(Double.isNaN(sight(line, new PlanePoint(-60, 0), Math.PI).way()), "away from it");
        LineSight over = sight(line, new PlanePoint(5, 0), 0);
        assertEquals(-5, over.toLine(), 1e-9);
        assertTrue(Double.isNaN(over.way()));
    }

    private static LineSight sight(PlaneLine line, PlanePoint bow, double course) {
        return LineSight.of(line, new LineSight.Boat(bow, course, 8, 8, 0), null, 30);
    }

    private static double seconds(double speed, double metres) {
        return (-speed + Math.sqrt(speed * speed + 2 * ACCELERATION * metres)) / ACCELERATION;
    }

    private static Spread spread(double seconds) {
        return new Spread(0.8 * seconds, seconds, 1.3 * seconds);
    }
}
