package trimwright.wing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import trimwright.air.AirState;

class WingPropertyTest {
    private static final AirState AIR = AirState.STANDARD;
    private static final Wing WING = Wing.of(TestWings.real(), 30);

    @Test
    void portEqualsStarboard() {
        Random random = new Random(11);
        int solved = 0;
        for (int i = 0; i < 500; i++) {
            State s = State.sailing(random);
            WingAnswer a = WING.placedAt(s.heel, s.footHeight).solve(s.air, s.setting);
            WingAnswer b = WING.placedAt(-s.heel, s.footHeight).solve(s.air.mirror(), s.setting.mirror());
            assertEquals(a.getClass(), b.getClass());
            if (a instanceof WingSolved p && b instanceof WingSolved q) {
                solved++;
                double scale = size(p.force());
                assertEquals(p.force().x(), q.force().x(), 1e-9 * scale);
                assertEquals(p.force().y(), -q.force().y(), 1e-9 * scale);
                assertEquals(p.force().k(), -q.force().k(), 1e-8 * scale);
                assertEquals(p.force().m(), q.force().m(), 1e-8 * scale);
                assertEquals(p.force().n(), -q.force().n(), 1e-8 * scale);
                assertEquals(p.stallMargin(), q.stallMargin(), 1e-9);
            }
        }
        assertTrue(solved >= 495, "solved " + solved);
    }

    @Test
    void noWindNoForce() {
        WingAnswer answer =
                WING.placedAt(0.05, 2.5).solve(StripAir.uniform(30, 0, 0, AIR), new WingSetting(0.1, 0.3, 0.1, 0.5));
        assertEquals(WingForce.NONE, assertInstanceOf(WingSolved.class, answer).force());
    }

    @Test
    void twentyThousandRandomStatesAreFiniteOrSayWhy() {
        Random random = new Random(12);
        Wing wing = Wing.of(TestWings.real(), 20);
        int failed = 0;
        for (int i = 0; i < 20_000; i++) {
            State s = State.any(random, 20);
            WingAnswer answer = wing.placedAt(s.heel, s.footHeight).solve(s.air, s.setting);
            if (answer instanceof WingSolved solved) {
                WingForce f = solved.force();
                double sum = f.x()
                        + f.y()
                        + f.k()
                        + f.m()
                        + f.n()
                        + solved.inducedDrag()
                        + solved.profileDrag()
                        + solved.stallMargin();
                assertTrue(Double.isFinite(sum), () -> "state " + s);
            } else {
                failed++;
                assertTrue(Double.isFinite(((WingNotSolved) answer).residual()), () -> "state " + s);
            }
        }
        assertTrue(failed < 600, "not solved " + failed);
    }

    @Test
    void sailingStatesAreAlwaysSolved() {
        Random random = new Random(13);
        int failed = 0;
        for (int i = 0; i < 5_000; i++) {
            State s = State.sailing(random);
            if (WING.placedAt(s.heel, s.footHeight).solve(s.air, s.setting) instanceof WingNotSolved) {
                failed++;
            }
        }
        assertTrue(failed <= 15, "not solved " + failed);
    }

    @Test
    void warmAndColdStartsGiveTheSameAnswer() {
        Random random = new Random(14);
        for (int i = 0; i < 300; i++) {
            State s = State.attached(random);
            PlacedWing placed = WING.placedAt(s.heel, s.footHeight);
            if (placed.solve(s.air, s.setting) instanceof WingSolved cold && cold.stallMargin() > 0.02) {
                WingSetting near = new WingSetting(
                        s.setting.sheet() + 0.02,
                        s.setting.camber() - 0.03,
                        s.setting.twist() + 0.02,
                        s.setting.twistMidRatio());
                WingSolved other = assertInstanceOf(WingSolved.class, placed.solve(s.air, near));
                WingSolved warm = assertInstanceOf(WingSolved.class, placed.solve(s.air, s.setting, other));
                assertEquals(cold.force().y(), warm.force().y(), 1e-8 * size(cold.force()));
                assertEquals(cold.force().x(), warm.force().x(), 1e-8 * size(cold.force()));
            }
        }
    }

    @Test
    void derivativesAgreeWithCentralDifferences() {
        Random random = new Random(15);
        int checked = 0;
        for (int i = 0; i < 200; i++) {
            State s = State.attached(random);
            PlacedWing placed = WING.placedAt(s.heel, s.footHeight);
            if (!(placed.solve(s.air, s.setting) instanceof WingSolved solved)) {
                continue;
            }
            WingSensitivity sensitivity = placed.sensitivity(s.air, s.setting, solved);
            for (WingControl control : WingControl.values()) {
                double h = 1e-5;
                WingSolved low = solve(placed, s, control, -h, solved);
                WingSolved high = solve(placed, s, control, h, solved);
                WingForce d = sensitivity.forceBy(control);
                double scale = size(solved.force()) + size(d);
                assertEquals((high.force().x() - low.force().x()) / (2 * h), d.x(), 2e-5 * scale, control + " x");
                assertEquals((high.force().y() - low.force().y()) / (2 * h), d.y(), 2e-5 * scale, control + " y");
                assertEquals((high.force().k() - low.force().k()) / (2 * h), d.k(), 1e-3 * scale, control + " k");
                assertEquals((high.force().m() - low.force().m()) / (2 * h), d.m(), 1e-3 * scale, control + " m");
                assertEquals((high.force().n() - low.force().n()) / (2 * h), d.n(), 1e-4 * scale, control + " n");
                int strip = solved.stallStrip();
                assertEquals(
                        (high.stallMargin(strip) - low.stallMargin(strip)) / (2 * h),
                        sensitivity.stallMarginBy(control),
                        1e-5,
                        control + " margin");
                checked++;
            }
        }
        assertTrue(checked > 900, "checked " + checked);
    }

    @Test
    void theMiddleOfAVeryLongWingIsItsSection() {
        Wing wing = Wing.of(TestWings.tapered(1000, 1, 1), TestWings.THIN, 41);
        WingSolved solved = assertInstanceOf(
                WingSolved.class,
                wing.inFreeAir().solve(StripAir.uniform(41, 10, 0.05, AIR), new WingSetting(0, 0.1, 0, 0.5)));
        double effectiveness = 0.7478; // thin aerofoil, flap share 0.4
        assertEquals(2 * Math.PI * Math.sin(0.05 + effectiveness * 0.1), solved.cl(20), 5e-3 * solved.cl(20));
    }

    @Test
    void withoutReynoldsNumberForcesGrowWithTheSquareOfSpeed() {
        Wing wing = Wing.of(TestWings.real(), TestWings.THIN, 30);
        State s = State.attached(new Random(16));
        PlacedWing placed = wing.placedAt(s.heel, s.footHeight);
        WingSolved a = assertInstanceOf(WingSolved.class, placed.solve(s.air, s.setting));
        WingSolved b = assertInstanceOf(WingSolved.class, placed.solve(s.air.scaled(2), s.setting));
        assertEquals(4 * a.force().y(), b.force().y(), 1e-8 * size(b.force()));
    }

    private static WingSolved solve(PlacedWing placed, State s, WingControl control, double h, WingSolved start) {
        WingSetting w = s.setting;
        WingSetting moved = new WingSetting(
                w.sheet() + (control == WingControl.SHEET ? h : 0),
                w.camber() + (control == WingControl.CAMBER ? h : 0),
                w.twist() + (control == WingControl.TWIST ? h : 0),
                w.twistMidRatio() + (control == WingControl.TWIST_MID_RATIO ? h : 0));
        StripAir air = control == WingControl.AIR_SPEED ? s.air.scaled(Math.exp(h)) : s.air;
        return assertInstanceOf(WingSolved.class, placed.solve(air, moved, start));
    }

    private static double size(WingForce f) {
        return Math.hypot(f.x(), f.y());
    }

    /** A random state of wind, trim, heel and height. */
    private record State(StripAir air, WingSetting setting, double heel, double footHeight) {
        /** Starboard tack, attached or not far from it. */
        static State sailing(Random r) {
            double awa = Math.toRadians(10 + 30 * r.nextDouble());
            double sheet = awa - Math.toRadians(-6 + 22 * r.nextDouble());
            return make(r, 30, awa, sheet, 0.6 * r.nextDouble(), 0.6 * r.nextDouble());
        }

        static State attached(Random r) {
            double awa = Math.toRadians(12 + 25 * r.nextDouble());
            double sheet = awa - Math.toRadians(-3 + 10 * r.nextDouble());
            return make(r, 30, awa, sheet, 0.4 * r.nextDouble(), 0.4 * r.nextDouble());
        }

        /** Anything: from astern, stalled, inverted. */
        static State any(Random r, int strips) {
            return make(
                    r,
                    strips,
                    Math.PI * (2 * r.nextDouble() - 1),
                    0.8 * (2 * r.nextDouble() - 1),
                    0.7 * (2 * r.nextDouble() - 1),
                    0.7 * (2 * r.nextDouble() - 1));
        }

        private static State make(Random r, int strips, double awa, double sheet, double camber, double twist) {
            double speed = 1 + 25 * r.nextDouble();
            double veer = 0.1 * (r.nextDouble() - 0.5);
            double shear = 0.2 * r.nextDouble();
            double[] x = new double[strips];
            double[] y = new double[strips];
            double[] z = new double[strips];
            double heel = 0.2 * (r.nextDouble() - 0.5);
            for (int i = 0; i < strips; i++) {
                double share = (i + 0.5) / strips;
                double u = speed * (1 + shear * (share - 0.5));
                double angle = awa + veer * (share - 0.5);
                x[i] = -u * Math.cos(angle);
                y[i] = -u * Math.sin(angle) * Math.cos(heel);
                z[i] = u * Math.sin(angle) * Math.sin(heel);
            }
            return new State(
                    new StripAir(x, y, z, AIR),
                    new WingSetting(sheet, camber, twist, 0.3 + 0.4 * r.nextDouble()),
                    heel,
                    0.5 + 3 * r.nextDouble());
        }
    }
}
