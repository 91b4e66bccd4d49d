package trimwright.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class UnitsTest {
    @Test
    void angleOfMinusHalfTurnIsWrittenAsPlusHalfTurn() {
        assertEquals(Math.PI, Angles.signed(-Math.PI));
        assertEquals(Math.PI, Angles.signed(3 * Math.PI));
    }

    @Test
    void compassNeverReachesAFullTurn() {
        assertEquals(0.0, Angles.compass(2 * Math.PI));
        assertEquals(0.0, Angles.compass(-1e-20));
        assertEquals(1.5 * Math.PI, Angles.compass(-0.5 * Math.PI), 1e-15);
    }

    @Test
    void theShorterWayRoundIsTaken() {
        assertEquals(Math.toRadians(-20), Angles.difference(Math.toRadians(350), Math.toRadians(10)), 1e-12);
    }
}
