package trimwright.boat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class MarkScaleTest {
    /** Rounding of two divisions. */
    private static final double ROUNDING = 1e-12;

    @Test
    void betweenTwoMarksItReadsStraight() {
        MarkScale scale = scale(0, 10, 0.2, 6, 0.6, 0);
        assertEquals(8, scale.reading(0.1), ROUNDING);
        assertEquals(4.5, scale.reading(0.3), ROUNDING);
        assertEquals(0.1, scale.angle(8), ROUNDING);
        assertEquals(0.3, scale.angle(4.5), ROUNDING);
    }

    @Test
    void atTheMarksItReadsTheMarks() {
        MarkScale scale = scale(-0.1, -2, 0.3, 1, 0.5, 9);
        for (MarkScale.Point point : scale.points()) {
            assertEquals(point.reading(), scale.reading(point.angle()), ROUNDING);
            assertEquals(point.angle(), scale.angle(point.reading()), ROUNDING);
        }
    }

    @Test
    void beyondTheMarksNothingIsRead() {
        MarkScale scale = scale(0, 10, 0.2, 6);
        assertTrue(Double.isNaN(scale.reading(-0.01)));
        assertTrue(Double.isNaN(scale.reading(0.21)));
        assertTrue(Double.isNaN(scale.reading(Double.NaN)));
        assertTrue(Double.isNaN(scale.angle(10.1)));
        assertTrue(Double.isNaN(scale.angle(5.9)));
        assertTrue(Double.isNaN(scale.angle(Double.NaN)));
    }

    /** Any scale, rising or falling: there and back again, and never the other way. */
    @Test
    void everyAngleComesBackFromItsReading() {
        Random random = new Random(7);
        for (int run = 0; run < 500; run++) {
            List<MarkScale.Point> points = new ArrayList<>();
            double angle = random.nextDouble() - 0.5;
            double reading = 20 * random.nextDouble() - 10;
            double way = random.nextBoolean() ? 1 : -1;
            for (int i = 0; i < 2 + random.nextInt(6); i++) {
                points.add(new MarkScale.Point(angle, reading));
                angle += 0.01 + random.nextDouble();
                reading += way * (0.01 + 5 * random.nextDouble());
            }
            MarkScale scale = new MarkScale(points);
            double first = points.get(0).angle();
            double last = points.get(points.size() - 1).angle();
            double before = way * -1e9;
            for (int i = 0; i <= 40; i++) {
                double there = Math.min(last, first + (last - first) * i / 40);
                double read = scale.reading(there);
                assertEquals(there, scale.angle(read), 1e-10, () -> points.toString());
                assertTrue(way * read > way * before, () -> points.toString());
                before = read;
            }
        }
    }

    @Test
    void marksThatTurnBackOrStandStillAreNone() {
        assertThrows(IllegalArgumentException.class, () -> scale(0, 1));
        assertThrows(IllegalArgumentException.class, () -> scale(0, 1, 0.1, 1));
        assertThrows(IllegalArgumentException.class, () -> scale(0, 1, 0.1, 2, 0.2, 1.5));
        assertThrows(IllegalArgumentException.class, () -> scale(0, 1, 0, 2));
    }

    @Test
    void marksOfAWingComeBeforeThoseOfAny() {
        ControlMarks any = new ControlMarks(MarkedControl.CAMBER, "steps", 1, scale(0, 0, 1, 1), scale(0, 0, 1, 1));
        ControlMarks tall = new ControlMarks(MarkedControl.CAMBER, "steps", 1, scale(0, 0, 1, 2), scale(0, 0, 1, 3));
        BoatMarks marks = new BoatMarks(List.of(new BoatMarks.OfWing("tall", tall), new BoatMarks.OfWing(null, any)));
        assertSame(tall, marks.find("tall", MarkedControl.CAMBER));
        assertSame(any, marks.find("short", MarkedControl.CAMBER));
        assertNull(marks.find("tall", MarkedControl.SHEET));
        assertEquals(3, tall.on(Side.PORT).reading(1));
    }

    private static MarkScale scale(double... anglesAndReadings) {
        List<MarkScale.Point> points = new ArrayList<>();
        for (int i = 0; i < anglesAndReadings.length; i += 2) {
            points.add(new MarkScale.Point(anglesAndReadings[i], anglesAndReadings[i + 1]));
        }
        return new MarkScale(points);
    }
}
