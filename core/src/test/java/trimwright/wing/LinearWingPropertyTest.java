package trimwright.wing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Objects;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import trimwright.air.AirState;

/** The wing on tangents against the wing in full: the same where it was laid, near to it nearby, silent where it does not serve. */
class LinearWingPropertyTest {
    private static final int STRIPS = 16;
    private static final Wing WING = Wing.of(TestWings.real(), STRIPS);
    private static final WingSetting SETTING = new WingSetting(Math.toRadians(8), Math.toRadians(18), 0.15, 0.5);
    private static final double HEEL = Math.toRadians(4);
    private static final double FOOT = 2.5;
    private static final double ANGLE = Math.toRadians(18);

    @Test
    void whereItWasLaidItIsTheFullAnswer() {
        LinearWing linear = laid(1);
        WingForce full = solved(SETTING, 15, ANGLE, HEEL, FOOT).force();
        WingForce force = settled(linear, SETTING, 15, ANGLE, HEEL, FOOT);
        assertNotNull(force);
        assertEquals(full.x(), force.x(), 1e-8 * Math.abs(full.y()));
        assertEquals(full.y(), force.y(), 1e-8 * Math.abs(full.y()));
        assertEquals(full.k(), force.k(), 1e-7 * Math.abs(full.k()));
        assertEquals(full.n(), force.n(), 1e-7 * Math.abs(full.k()));
    }

    /** Half a per cent of the force anywhere within its limits: what was asked of laps. */
    @Test
    void nearbyItIsTheFullAnswerWithinHalfAPerCent() {
        Random random = new Random(5);
        int answered = 0;
        for (int i = 0; i < 300; i++) {
            double angle = ANGLE + Math.toRadians(0.4) * (2 * random.nextDouble() - 1);
            double speed = 15 * (1 + 0.035 * (2 * random.nextDouble() - 1));
            double heel = HEEL + Math.toRadians(0.35) * (2 * random.nextDouble() - 1);
            double foot = FOOT + 0.1 * (2 * random.nextDouble() - 1);
            WingSetting setting = new WingSetting(
                    SETTING.sheet() + Math.toRadians(0.2) * (2 * random.nextDouble() - 1),
                    SETTING.camber() + Math.toRadians(0.4) * (2 * random.nextDouble() - 1),
                    SETTING.twist(),
                    0.5);
            WingForce force = settled(laid(1), setting, speed, angle, heel, foot);
            if (force != null) {
                answered++;
                WingForce full = solved(setting, speed, angle, heel, foot).force();
                double size = Math.hypot(full.x(), full.y());
                assertEquals(full.x(), force.x(), 0.005 * size);
                assertEquals(full.y(), force.y(), 0.005 * size);
                assertEquals(full.k(), force.k(), 0.005 * Math.abs(full.k()));
                assertEquals(full.n(), force.n(), 0.005 * size * 5.2);
            }
        }
        assertTrue(answered > 150, answered + " of 300");
    }

    @Test
    void farFromWhereItWasLaidItIsSilent() {
        assertNull(settled(laid(1), SETTING, 15, ANGLE + Math.toRadians(3), HEEL, FOOT));
        assertNull(settled(laid(1), SETTING, 18, ANGLE, HEEL, FOOT));
        assertNull(settled(laid(1), SETTING, 15, ANGLE, HEEL + Math.toRadians(2), FOOT));
        assertNull(settled(laid(1), SETTING, 15, ANGLE, HEEL, FOOT + 1));
        assertNull(settled(laid(1), SETTING.mirror(), 15, ANGLE, HEEL, FOOT));
        assertNull(settled(laid(1), SETTING, 15, -ANGLE, HEEL, FOOT));
        assertNull(settled(laid(1), SETTING, 0, ANGLE, HEEL, FOOT));
    }

    @Test
    void nearToStallNothingIsLaid() {
        boolean isLaid = true;
        for (double angle = ANGLE; angle < 0.8; angle += Math.toRadians(1)) {
            WingSolved solved = solved(SETTING, 15, angle, HEEL, FOOT);
            isLaid = LinearWing.at(solved) != null;
            assertEquals(solved.stallMargin() > LinearWing.LEAST_MARGIN, isLaid);
        }
        assertTrue(!isLaid, "the last is stalled");
    }

    @Test
    void theOtherTackIsAMirror() {
        double near = ANGLE + Math.toRadians(0.2);
        WingForce a = Objects.requireNonNull(settled(laid(1), SETTING, 15.3, near, HEEL, FOOT));
        WingForce b = Objects.requireNonNull(settled(laid(-1), SETTING.mirror(), 15.3, -near, -HEEL, FOOT));
        assertEquals(a.x(), b.x(), 1e-7 * Math.abs(a.y()));
        assertEquals(a.y(), -b.y(), 1e-7 * Math.abs(a.y()));
        assertEquals(a.k(), -b.k(), 1e-6 * Math.abs(a.k()));
        assertEquals(a.n(), -b.n(), 1e-6 * Math.abs(a.k()));
    }

    @Test
    void aCopyGoesOnByItself() {
        LinearWing one = laid(1);
        LinearWing other = one.copy();
        double near = ANGLE + Math.toRadians(0.2);
        WingForce first = force(one, SETTING, 15, near, HEEL, FOOT);
        assertNotNull(first);
        settled(one, SETTING, 14.5, ANGLE, HEEL, FOOT);
        assertEquals(first, force(other, SETTING, 15, near, HEEL, FOOT));
    }

    private static LinearWing laid(int tack) {
        WingSetting setting = tack > 0 ? SETTING : SETTING.mirror();
        return Objects.requireNonNull(LinearWing.at(solved(setting, 15, tack * ANGLE, tack * HEEL, FOOT)));
    }

    private static WingSolved solved(WingSetting setting, double speed, double angle, double heel, double foot) {
        StripAir air = StripAir.uniform(STRIPS, speed, angle, heel, AirState.STANDARD);
        return assertInstanceOf(WingSolved.class, WING.placedAt(heel, foot).solve(air, setting));
    }

    private static @Nullable WingForce settled(
            LinearWing linear, WingSetting setting, double speed, double angle, double heel, double foot) {
        for (int i = 0; i < 5; i++) {
            force(linear, setting, speed, angle, heel, foot);
        }
        return force(linear, setting, speed, angle, heel, foot);
    }

    private static @Nullable WingForce force(
            LinearWing linear, WingSetting setting, double speed, double angle, double heel, double foot) {
        StripAir air = StripAir.uniform(STRIPS, speed, angle, heel, AirState.STANDARD);
        double[] x = new double[STRIPS];
        double[] y = new double[STRIPS];
        air.copy(x, y);
        return linear.force(x, y, setting, heel, foot);
    }
}
