package trimwright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import trimwright.boat.ControlMarks;
import trimwright.boat.MarkScale;
import trimwright.boat.MarkedControl;
import trimwright.boat.Side;

class MarkTextTest {
    private static final MarkScale STARBOARD = scale(0, 10, 0.4, 0);
    private static final MarkScale PORT = scale(0, 10.5, 0.4, 0.5);
    private static final ControlMarks ALIKE = new ControlMarks(MarkedControl.SHEET, "tape", 0.5, STARBOARD, STARBOARD);
    private static final ControlMarks APART = new ControlMarks(MarkedControl.SHEET, "tape", 0.5, STARBOARD, PORT);

    @Test
    void readingsAreRoundedToTheFinestPartAndBearNoIdleZeros() {
        assertEquals("7.5", MarkText.of(ALIKE, 0.1));
        assertEquals("5", MarkText.of(ALIKE, 0.2));
        assertEquals("7.5", MarkText.of(ALIKE, 0.108));
        assertEquals("10", MarkText.of(ALIKE, 0));
    }

    @Test
    void tacksThatReadDifferentlyAreBothGiven() {
        assertEquals("7.5/8", MarkText.of(APART, 0.1));
        assertEquals("8", MarkText.of(APART, Side.PORT, 0.1));
    }

    @Test
    void nothingIsReadBeyondTheMarksAndNoRoundingLeadsThere() {
        assertNull(MarkText.of(ALIKE, 0.41));
        assertNull(MarkText.of(ALIKE, -0.01));
        ControlMarks coarse = new ControlMarks(MarkedControl.SHEET, "tape", 3, STARBOARD, STARBOARD);
        // Nearest to the mark 10 is 9; 12 would not be there.
        assertEquals("9", MarkText.of(coarse, 0));
        ControlMarks odd =
                new ControlMarks(MarkedControl.SHEET, "tape", 4, scale(0, 0, 0.4, 10.5), scale(0, 0, 0.4, 10.5));
        assertEquals("8", MarkText.of(odd, 0.4));
    }

    @Test
    void changesHaveTheirSignAndFollowTheScaleWhereItBends() {
        assertEquals("-2.5", MarkText.change(ALIKE, 0.1, 0.2, RoundingMode.UP));
        assertEquals("+2.5", MarkText.change(ALIKE, 0.2, 0.1, RoundingMode.DOWN));
        assertEquals("0", MarkText.change(ALIKE, 0.2, 0.2, RoundingMode.UP));
        assertNull(MarkText.change(ALIKE, 0.3, 0.5, RoundingMode.UP));
        ControlMarks bent = new ControlMarks(
                MarkedControl.CAMBER, "steps", 0.5, scale(0, 0, 0.1, 4, 0.3, 6), scale(0, 0, 0.1, 4, 0.3, 6));
        assertEquals("+3", MarkText.change(bent, 0.05, 0.2, RoundingMode.UP));
    }

    @Test
    void anEaseIsNeverRoundedToLessThanItTakesAndNeverPastTheLastMark() {
        // 0.104 are 2.6 marks.
        assertEquals("-3", MarkText.change(ALIKE, 0.1, 0.204, RoundingMode.UP));
        assertEquals("-2.5", MarkText.change(ALIKE, 0.1, 0.204, RoundingMode.DOWN));
        assertEquals("-0.5", MarkText.change(ALIKE, 0.1, 0.101, RoundingMode.UP));
        assertEquals("0", MarkText.change(ALIKE, 0.1, 0.101, RoundingMode.DOWN));
        assertEquals("-2.5", MarkText.change(ALIKE, 0.289, 0.4, RoundingMode.UP));
    }

    private static MarkScale scale(double... anglesAndReadings) {
        List<MarkScale.Point> points = new ArrayList<>();
        for (int i = 0; i < anglesAndReadings.length; i += 2) {
            points.add(new MarkScale.Point(anglesAndReadings[i], anglesAndReadings[i + 1]));
        }
        return new MarkScale(points);
    }
}
