package trimwright.learned;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Against the triangle solved anew with a sensor that is off by a little. */
class SensorDoubtTest {
    private static final double WIND = 8;
    private static final double ANGLE = 1;
    private static final double SPEED = 13;
    private static final double BY_WIND = 0.8;
    private static final double BY_ANGLE = 1.6;

    /** Logarithm of a target that goes with powers of wind and angle, of the wind found by such a sensor, with its sign changed. */
    private static double off(double turned, double factor) {
        double ahead = WIND * Math.cos(ANGLE) + SPEED;
        double side = WIND * Math.sin(ANGLE);
        double read = Math.atan2(side, ahead) + turned;
        double felt = Math.hypot(ahead, side) * Math.exp(factor);
        double foundAhead = felt * Math.cos(read) - SPEED;
        double foundSide = felt * Math.sin(read);
        double wind = Math.hypot(foundAhead, foundSide);
        return -(BY_WIND * Math.log(wind / WIND) + BY_ANGLE * (Math.atan2(foundSide, foundAhead) - ANGLE));
    }

    @Test
    void itIsWhatASmallErrorOfTheSensorDoes() {
        double small = 1e-5;
        SensorDoubt.Errors errors = new SensorDoubt.Errors(small, 2 * small, 3 * small);
        SensorDoubt starboard = SensorDoubt.of(WIND, ANGLE, 1, SPEED, errors, BY_WIND, BY_ANGLE);
        SensorDoubt port = SensorDoubt.of(WIND, ANGLE, -1, SPEED, errors, BY_WIND, BY_ANGLE);
        double rounding = 1e-8;
        assertEquals(off(small, 0), starboard.offset(), rounding);
        assertEquals(off(2 * small, 0), starboard.upwash(), rounding);
        assertEquals(off(0, 3 * small), starboard.factor(), rounding);
        assertEquals(-starboard.offset(), port.offset());
        assertEquals(starboard.upwash(), port.upwash());
        assertEquals(starboard.factor(), port.factor());
    }
}
