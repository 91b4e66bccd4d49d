package trimwright.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import trimwright.target.Branch;

class WayMadeTest {
    private static final double SPEED = 9;

    /** Nine metres a second at every angle in every wind. */
    private static final WayMade EVEN =
            new WayMade(HandMadeBook.of(wind -> SPEED, wind -> SPEED, 2, 2), Branch.FOILING);

    @Test
    void againstTheWindSheMakesGoodWhatTackingAllowsAndOnAReachHerSpeed() {
        assertEquals(SPEED * Math.cos(HandMadeBook.UP), EVEN.along(0, 8, 0, 0, 0), 1e-9);
        assertEquals(SPEED, EVEN.along(Math.PI / 2, 8, 0, 0, 0), 1e-9);
        assertEquals(SPEED * Math.cos(HandMadeBook.UP), EVEN.along(Math.PI, 8, 0, 0, 0), 1e-9);
        // A mark 20 degrees off the wind is nearer to windward than it is far.
        double off = Math.toRadians(20);
        assertEquals(SPEED * Math.cos(HandMadeBook.UP) / Math.cos(off), EVEN.along(off, 8, 0, 0, 0), 1e-9);
        assertEquals(WayMade.Way.TACKED, EVEN.way(off, 8, 0));
        assertEquals(WayMade.Way.STRAIGHT, EVEN.way(1.5, 8, 0));
        assertEquals(WayMade.Way.GYBED, EVEN.way(3, 8, 0));
    }

    /** Drift alone: the triangle of velocities, the current square to the leg. */
    @Test
    void aCrossCurrentIsSteeredInto() {
        double current = 2;
        double expected = Math.sqrt(SPEED * SPEED - current * current);
        assertEquals(expected, EVEN.along(Math.PI / 2, 8, 0, Math.PI, current), 1e-6);
        assertEquals(SPEED + current, EVEN.along(Math.PI / 2, 8, 0, Math.PI / 2, current), 1e-6);
    }

    /** Two tacks laid end to end over ground by hand, in the wind over the water. */
    @Test
    void tackingInACurrentIsTheSumOfTwoTacks() {
        double bearing = Math.toRadians(12);
        double wind = 8;
        double currentTo = Math.toRadians(250);
        double current = 1.5;
        double cn = current * Math.cos(currentTo);
        double ce = current * Math.sin(currentTo);
        // The wind comes from north: over the water it has the water's own way taken from it.
        double from = Math.atan2(ce, wind + cn);
        double[] one = {SPEED * Math.cos(from + HandMadeBook.UP) + cn, SPEED * Math.sin(from + HandMadeBook.UP) + ce};
        double[] two = {SPEED * Math.cos(from - HandMadeBook.UP) + cn, SPEED * Math.sin(from - HandMadeBook.UP) + ce};
        double det = one[0] * two[1] - one[1] * two[0];
        double first = (Math.cos(bearing) * two[1] - Math.sin(bearing) * two[0]) / det;
        double second = (one[0] * Math.sin(bearing) - one[1] * Math.cos(bearing)) / det;
        assertTrue(first > 0 && second > 0);
        assertEquals(1 / (first + second), EVEN.along(bearing, wind, 0, currentTo, current), 1e-6);
    }

    @Test
    void noWindOfTheBookAndNoStreamTooStrongIsAnswered() {
        assertTrue(Double.isNaN(EVEN.along(0, 25, 0, 0, 0)));
        assertTrue(Double.isNaN(EVEN.along(Math.PI / 2, 8, 0, -Math.PI / 2, SPEED + 1)));
        assertNull(EVEN.way(0.5, 25, 0));
    }
}
