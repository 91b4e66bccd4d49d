package trimwright.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class WakeTrailPropertyTest {
    private static final AirVelocity NORTHERLY = new AirVelocity(-8, 0);
    private static final double GROWTH = GaussianWake.growth(0.08);

    /** A boat that sails due east at 10 m/s on port tack in a northerly, 30 s long, at the origin at time 0. */
    private static WakeTrail trail(double drag, double lift) {
        List<WakeSection> sections = new ArrayList<>();
        double towards = Math.atan2(-10, -8);
        for (double t = -30; t <= 0; t += 0.5) {
            sections.add(new WakeSection(t, 0, 10 * t, Math.hypot(8, 10), towards, drag, lift, 100, 27));
        }
        return new WakeTrail(sections);
    }

    @Test
    void theWakeLiesAlongTheApparentWind() {
        WakeTrail trail = trail(10, 0);
        double unit = 1 / Math.hypot(8, 10);
        AirVelocity inside = trail.at(-150 * 8 * unit, -150 * 10 * unit, 0, NORTHERLY, GROWTH);
        assertTrue(inside.north() > 0.02 && inside.east() > 0.02, "air is held back: " + inside);
        AirVelocity downTheTrueWind = trail.at(-150, 0, 0, NORTHERLY, GROWTH);
        assertTrue(downTheTrueWind.speed() < 0.01 * inside.speed(), "straight to leeward the air is clear");
        assertEquals(0, trail.at(50, 40, 0, NORTHERLY, GROWTH).speed(), 0, "ahead of the wing nothing is felt");
    }

    @Test
    void liftTurnsTheAirAwayFromTheForce() {
        // Force to the right of a flow toward the south-west is toward the north-west; the air goes south-east.
        AirVelocity turned = trail(0, 80).at(-80, -100, 0, NORTHERLY, GROWTH);
        assertTrue(turned.north() < 0 && turned.east() > 0, turned.toString());
        AirVelocity mirrored = trail(0, -80).at(-80, -100, 0, NORTHERLY, GROWTH);
        assertEquals(-turned.north(), mirrored.north(), 1e-12);
    }

    @Test
    void whereItBeginsTheTurningIsTheDownwashOfLiftingLineTheory() {
        // Elliptic wing with image, full span 2 h: far downwash over speed 2 CL / (pi A) = 2 L/q / (pi b^2 / 2) per
        // side.
        double lift = 8;
        double momentum = 2 * 2 * lift / (Math.PI * 54 * 54);
        double width = GaussianWake.width(0, 54, 2 * lift / (Math.PI * 54 * 54 / 4), GROWTH);
        double axis = GaussianWake.lossOnAxis(0, 54, 2 * lift / (Math.PI * 54 * 54 / 4), GROWTH);
        // The bell's integral over the section against the downwash over the disc of the span.
        double bell = axis * 2 * Math.PI * width * width;
        assertEquals(momentum * Math.PI * 54 * 54 / 4, bell, 0.05 * bell);
    }

    @Test
    void theWakeFadesWithDistance() {
        double unit = 1 / Math.hypot(8, 10);
        double before = Double.POSITIVE_INFINITY;
        for (double d = 30; d < 340; d += 30) {
            double now = trail(12, 80)
                    .at(-d * 8 * unit, -d * 10 * unit, 0, NORTHERLY, GROWTH)
                    .speed();
            assertTrue(now < before, "at " + d + " m " + now);
            before = now;
        }
    }
}
