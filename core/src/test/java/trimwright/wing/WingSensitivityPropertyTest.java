package trimwright.wing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import trimwright.air.AirState;
import trimwright.boat.FootPlate;

/** Derivatives against central differences of whole solves at random states. */
class WingSensitivityPropertyTest {
    private static final Wing WING = Wing.of(TestWings.real(), 30);
    private static final Wing OVER_PLATE =
            Wing.of(TestWings.withPlate(TestWings.real(), new FootPlate(8, 0.3, 0.7)), 30);
    private static final double STEP = 1e-5;

    /**
     * Of force over size of force and derivative: differences of solves converged to 1e-11 over a step of 1e-5 leave 1e-6,
     * their third order less than that.
     */
    private static final double TOLERANCE = 1e-5;

    @Test
    void loadsAndMarginsAnswerEachControl() {
        Random random = new Random(15);
        int checked = 0;
        for (int i = 0; i < 200; i++) {
            Wing wing = i % 2 == 0 ? WING : OVER_PLATE;
            RandomState s = RandomState.attached(random, 30);
            if (!(solve(wing, s, null) instanceof WingSolved solved)) {
                continue;
            }
            WingSensitivity sensitivity = solved.sensitivity();
            for (WingControl control : WingControl.values()) {
                check(wing, s, solved, sensitivity, control);
                checked++;
            }
        }
        assertTrue(checked > 1400, "checked " + checked);
    }

    @Test
    void theOtherTackAnswersInTheMirror() {
        Random random = new Random(25);
        for (int i = 0; i < 50; i++) {
            RandomState s = RandomState.attached(random, 30);
            RandomState other = new RandomState(s.air().mirror(), s.setting().mirror(), -s.heel(), s.footHeight());
            WingSensitivity a = assertInstanceOf(WingSolved.class, solve(OVER_PLATE, s, null))
                    .sensitivity();
            WingSensitivity b = assertInstanceOf(WingSolved.class, solve(OVER_PLATE, other, null))
                    .sensitivity();
            for (WingControl control : WingControl.values()) {
                double sign = switch (control) {
                    case SHEET, CAMBER, TWIST, AIR_ANGLE, HEEL -> -1;
                    case TWIST_MID_RATIO, AIR_SPEED, FOOT_HEIGHT -> 1;
                };
                double scale = size(a.forceBy(control)) + 1;
                assertEquals(a.forceBy(control).x(), sign * b.forceBy(control).x(), 1e-7 * scale);
                assertEquals(a.forceBy(control).y(), -sign * b.forceBy(control).y(), 1e-7 * scale);
                assertEquals(a.effortHeightBy(control), sign * b.effortHeightBy(control), 1e-6);
            }
        }
    }

    /** Asked by the trim alone, the answers are those of all controls to the last bit, and no others are there. */
    @Test
    void byTrimAloneTheAnswersAreTheSame() {
        Random random = new Random(35);
        WingSolved solved =
                assertInstanceOf(WingSolved.class, solve(OVER_PLATE, RandomState.attached(random, 30), null));
        WingSensitivity all = solved.sensitivity();
        WingSensitivity trim = solved.sensitivity(WingControl.TRIM);
        for (WingControl control : WingControl.TRIM) {
            assertEquals(all.forceBy(control), trim.forceBy(control));
            assertEquals(all.hingeMomentBy(control, 3), trim.hingeMomentBy(control, 3));
        }
        assertThrows(IllegalStateException.class, () -> trim.forceBy(WingControl.HEEL));
    }

    @Test
    void stillAirAnswersNothing() {
        WingSolved still = assertInstanceOf(
                WingSolved.class,
                WING.placedAt(0, 2)
                        .solve(StripAir.uniform(30, 0, 0, AirState.STANDARD), new WingSetting(0.1, 0.2, 0.1, 0.5)));
        assertEquals(WingForce.NONE, still.sensitivity().forceBy(WingControl.SHEET));
    }

    private static void check(
            Wing wing, RandomState s, WingSolved solved, WingSensitivity sensitivity, WingControl control) {
        WingSolved low = assertInstanceOf(WingSolved.class, solve(wing, s.moved(control, -STEP), solved));
        WingSolved high = assertInstanceOf(WingSolved.class, solve(wing, s.moved(control, STEP), solved));
        WingForce a = low.force();
        WingForce b = high.force();
        WingForce d = sensitivity.forceBy(control);
        double scale = size(solved.force()) + size(d);
        double span = WING.span();
        same(control + " x", a.x(), b.x(), d.x(), scale);
        same(control + " y", a.y(), b.y(), d.y(), scale);
        same(control + " k", a.k(), b.k(), d.k(), span * scale);
        same(control + " m", a.m(), b.m(), d.m(), span * scale);
        same(control + " n", a.n(), b.n(), d.n(), scale);
        double height = sensitivity.effortHeightBy(control);
        double u = s.air().x(15);
        double v = s.air().y(15);
        // Where the wing carries next to nothing, its height of effort is nowhere.
        if (Math.abs(solved.force().y()) > 0.2 * 0.5 * 1.2 * (u * u + v * v) * WING.area()) {
            same(control + " effort", a.effortHeight(), b.effortHeight(), height, span + Math.abs(height));
        }
        for (int i = 0; i < WING.strips(); i++) {
            double margin = sensitivity.stallMarginBy(control, i);
            same(control + " margin", low.stallMargin(i), high.stallMargin(i), margin, 1 + Math.abs(margin));
            double hinge = sensitivity.hingeMomentBy(control, i);
            same(control + " hinge", low.hingeMoment(i), high.hingeMoment(i), hinge, 0.1 * scale);
        }
        assertEquals(sensitivity.stallMarginBy(control, solved.stallStrip()), sensitivity.stallMarginBy(control), 0.0);
    }

    private static void same(String what, double low, double high, double derivative, double scale) {
        assertEquals((high - low) / (2 * STEP), derivative, TOLERANCE * scale, what);
    }

    private static WingAnswer solve(Wing wing, RandomState s, @Nullable WingSolved start) {
        return wing.placedAt(s.heel(), s.footHeight()).solve(s.air(), s.setting(), start);
    }

    private static double size(WingForce f) {
        return Math.hypot(f.x(), f.y());
    }
}
