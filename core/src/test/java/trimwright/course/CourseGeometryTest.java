package trimwright.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class CourseGeometryTest {
    private static final LocalPlane PLANE = new LocalPlane(new Position(0.6, -0.5));

    private static Position at(double north, double east) {
        return PLANE.toEarth(new PlanePoint(north, east));
    }

    /** Line at the origin, crossed northward; a gate 1000 m north; a mark 500 m east of the gate, left to starboard. */
    private static Course course() {
        return new Course(
                "test",
                0,
                new Line(at(0, -100), at(0, 100)),
                List.of(
                        new Gate("top", at(1000, -60), at(1000, 60)),
                        new Mark("wing", at(1000, 500), Rounding.STARBOARD)),
                new Line(at(0, 100), at(0, -100)),
                List.of(at(-300, -600), at(-300, 600), at(1300, 600), at(1300, -600)));
    }

    private static final CourseGeometry GEOMETRY = new CourseGeometry(course());

    @Test
    void thePlaneAndTheEarthAgreeBothWays() {
        PlanePoint point = new PlanePoint(2100, -3400);
        PlanePoint back = PLANE.toPlane(PLANE.toEarth(point));
        assertEquals(point.north(), back.north(), 1e-6);
        assertEquals(point.east(), back.east(), 1e-6);
    }

    @Test
    void aLineCountsOnlyInTheRightSenseAndBetweenItsEnds() {
        PlaneLine start = GEOMETRY.start();
        assertEquals(0.25, start.crossedAt(new PlanePoint(-1, 0), new PlanePoint(3, 0)), 1e-3);
        assertTrue(Double.isNaN(start.crossedAt(new PlanePoint(3, 0), new PlanePoint(-1, 0))));
        assertTrue(Double.isNaN(start.crossedAt(new PlanePoint(-1, 101), new PlanePoint(3, 101))));
    }

    @Test
    void aGateIsPassedBetweenItsMarks() {
        PlaneLine gate = GEOMETRY.endOfLeg(0);
        assertEquals(0.5, gate.crossedAt(new PlanePoint(999, 59), new PlanePoint(1001, 59)), 1e-3);
        assertTrue(Double.isNaN(gate.crossedAt(new PlanePoint(999, 61), new PlanePoint(1001, 61))));
    }

    @Test
    void aMarkLeftToStarboardIsPassedOutsideOnTheOtherSide() {
        PlaneLine end = GEOMETRY.endOfLeg(1);
        // From the gate the boat comes eastward, goes round north of the mark and back south-west to the finish.
        assertFalse(Double.isNaN(end.crossedAt(new PlanePoint(1010, 480), new PlanePoint(1010, 540))));
        assertTrue(Double.isNaN(end.crossedAt(new PlanePoint(990, 480), new PlanePoint(990, 540))));
    }

    @Test
    void theBoundaryIsSeenFromInside() {
        assertTrue(GEOMETRY.isInside(new PlanePoint(0, 0)));
        assertFalse(GEOMETRY.isInside(new PlanePoint(0, 601)));
        assertEquals(600, GEOMETRY.distanceToBoundary(new PlanePoint(0, 0), Math.PI / 2), 1e-2);
        assertEquals(300 * Math.sqrt(2), GEOMETRY.distanceToBoundary(new PlanePoint(0, 0), Math.toRadians(135)), 1e-2);
    }

    @Test
    void aCourseWithoutMarksOrWithHalfABoundaryIsRefused() {
        Line line = course().start();
        assertThrows(IllegalArgumentException.class, () -> new Course("x", 0, line, List.of(), line, List.of()));
        assertThrows(
                IllegalArgumentException.class,
                () -> new Course("x", 0, line, course().order(), line, List.of(at(0, 0), at(1, 1))));
    }
}
