package trimwright.wing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import trimwright.air.AirState;

/** Two routes to the induced drag, and the sea as a plane that nothing crosses. */
class WingDragPropertyTest {
    private static final AirState AIR = AirState.STANDARD;

    @Test
    void dragAtTheWingEqualsDragInTheTrefftzPlane() {
        double worst = 0;
        for (double heel : new double[] {0, 0.1, -0.2}) {
            for (double foot : new double[] {0.3, 2.5, 20}) {
                for (double twist : new double[] {0, 0.3}) {
                    Wing wing = Wing.of(TestWings.real(), TestWings.THIN, 40);
                    // A light load, so that wing and wake lie in one plane along the stream.
                    WingSolved s = assertInstanceOf(
                            WingSolved.class,
                            wing.placedAt(heel, foot)
                                    .solve(
                                            StripAir.uniform(40, 10, 0, AIR),
                                            new WingSetting(-1e-3, 0.01, 0.01 * twist, 0.5)));
                    double far = trefftz(wing, s, heel, foot);
                    worst = Math.max(worst, Math.abs(s.inducedDrag() / far - 1));
                }
            }
        }
        assertTrue(worst < 2e-3, "worst " + worst);
    }

    @Test
    void noAirCrossesTheSea() {
        Wing wing = Wing.of(TestWings.real(), 30);
        double heel = 0.12;
        double foot = 2.0;
        PlacedWing placed = wing.placedAt(heel, foot);
        WingSolved s = assertInstanceOf(
                WingSolved.class,
                placed.solve(StripAir.uniform(30, 15, 0.4, AIR), new WingSetting(0.25, 0.3, 0.2, 0.5)));
        for (double[] at : new double[][] {{0, 0}, {5, 3}, {-20, -7}, {-3, 12}}) {
            // Body point on the sea: down by the foot's height along the sea's normal, then along the surface.
            double x = at[0];
            double y = foot * Math.sin(heel) + at[1] * Math.cos(heel);
            double z = foot * Math.cos(heel) - at[1] * Math.sin(heel);
            AirVelocity v = placed.velocityAt(s, x, y, z);
            assertEquals(0, v.y() * Math.sin(heel) + v.z() * Math.cos(heel), 1e-6);
            assertTrue(Math.abs(v.x()) + Math.abs(v.y()) > 1e-3);
        }
    }

    @Test
    void velocityAtAStripIsWhatTurnedItsAir() {
        Wing wing = Wing.of(TestWings.real(), 30);
        PlacedWing placed = wing.placedAt(-0.1, 2.0);
        WingSetting setting = new WingSetting(0.25, 0.3, 0.2, 0.5);
        double awa = 0.4;
        WingSolved s = assertInstanceOf(WingSolved.class, placed.solve(StripAir.uniform(30, 15, awa, AIR), setting));
        for (int i = 3; i < 27; i += 6) {
            AirVelocity v = placed.velocityAt(s, 0, 0, -wing.stripHeight(i));
            double x = -15 * Math.cos(awa) + v.x();
            double y = -15 * Math.sin(awa) + v.y();
            assertEquals(s.alpha(i) + setting.sheet(), Math.atan2(-y, -x), 1e-4);
        }
    }

    @Test
    void thereIsUpwashAheadOfTheWing() {
        Wing wing = Wing.of(TestWings.real(), 30);
        PlacedWing placed = wing.placedAt(0, 2.5);
        WingSolved s = assertInstanceOf(
                WingSolved.class,
                placed.solve(StripAir.uniform(30, 15, 0.35, AIR), new WingSetting(0.25, 0.3, 0.1, 0.5)));
        // Lift to port pulls the air ahead to port, which an instrument there reads as wind from further aft.
        assertTrue(placed.velocityAt(s, 4, 0, -13).y() < -0.2);
    }

    /** Drag (N) in a plane across the far wake: rho/2 sum of circulation x normal velocity x width, with image. */
    private static double trefftz(Wing wing, WingSolved s, double heel, double foot) {
        int n = wing.strips();
        double sum = 0;
        for (int i = 0; i < n; i++) {
            double across = 0;
            double yi = -wing.stripHeight(i) * -Math.sin(heel);
            double hi = foot + wing.stripHeight(i) * Math.cos(heel);
            for (int j = 0; j < n; j++) {
                for (int end = 0; end <= 1; end++) {
                    double node = end == 0 ? lowNode(wing, j) : lowNode(wing, j) + wing.stripWidth(j);
                    double g = (end == 0 ? -1 : 1) * s.circulation(j) / (2 * Math.PI);
                    double yn = node * Math.sin(heel);
                    double hn = foot + node * Math.cos(heel);
                    for (int image = 0; image <= 1; image++) {
                        double dy = yi - yn;
                        double dh = hi - (image == 0 ? hn : -hn);
                        double gi = image == 0 ? g : -g;
                        double r2 = dy * dy + dh * dh;
                        // A vortex along the stream turns the air about itself; take the part across the wing.
                        double vy = -gi * dh / r2;
                        double vh = gi * dy / r2;
                        across += vy * Math.cos(heel) - vh * Math.sin(heel);
                    }
                }
            }
            sum += s.circulation(i) * across * wing.stripWidth(i);
        }
        return Math.abs(0.5 * AIR.density() * sum);
    }

    private static double lowNode(Wing wing, int strip) {
        double sum = 0;
        for (int i = 0; i < strip; i++) {
            sum += wing.stripWidth(i);
        }
        return sum;
    }
}
