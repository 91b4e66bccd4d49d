package trimwright.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class ProfilePropertyTest {
    private static final WingProfile WING = new WingProfile(0.18, 0.12, 0.4, 0.012, 0.9);

    @Test
    void flapAnglesOfOppositeSignMirrorEachOtherToTheBit() {
        for (int degrees = 0; degrees <= 60; degrees += 5) {
            List<Contour> one = WING.elements(Math.toRadians(degrees), 60, TrailingEdge.BLUNT);
            List<Contour> other = WING.elements(Math.toRadians(-degrees), 60, TrailingEdge.BLUNT);
            for (int k = 0; k < 2; k++) {
                Contour mirror = one.get(k).mirrored();
                for (int i = 0; i < mirror.points(); i++) {
                    assertEquals(mirror.x(i), other.get(k).x(i));
                    assertEquals(mirror.y(i) + 0.0, other.get(k).y(i) + 0.0);
                }
            }
        }
    }

    @Test
    void theSlotStaysOpenOverTheFlapsWholeRange() {
        double before = 0;
        for (int degrees = 0; degrees <= 60; degrees += 2) {
            Slot slot = WING.slot(Math.toRadians(degrees));
            assertTrue(slot.gap() > before, "slot opens with flap angle: " + slot);
            before = slot.gap();
        }
        assertEquals(0.012, WING.slot(0).gap(), 1e-12);
        assertEquals(-0.012, WING.slot(0).overlap(), 1e-12);
    }

    @Test
    void anEdgeInsideTheFlapIsANegativeGap() {
        Contour main = Naca.symmetric(0.12).contour(60, TrailingEdge.SHARP);
        Contour flap = Naca.symmetric(0.20).contour(60, TrailingEdge.SHARP).moved(0.9, 0);
        Slot slot = Slot.between(List.of(main, flap));
        assertTrue(slot.gap() < 0);
        assertEquals(0.1, slot.overlap(), 1e-12);
    }

    @Test
    void thePanelsEnclosetheAreaOfTheThicknessPolynomial() {
        // Integral of 2 x 5 t (0.2969 sqrt x - 0.1260 x - 0.3516 x^2 + 0.2843 x^3 - 0.1036 x^4) from 0 to 1.
        double exact = 10 * 0.12 * (0.2969 * 2 / 3 - 0.1260 / 2 - 0.3516 / 3 + 0.2843 / 4 - 0.1036 / 5);
        assertEquals(
                exact, Naca.symmetric(0.12).contour(800, TrailingEdge.SHARP).area(), 1e-5);
    }

    @Test
    void digitsThatNameNoMemberAreNone() {
        for (String digits :
                new String[] {"", "12", "0000", "0045", "0212", "2012", "23112", "26012", "03012", "naca"}) {
            assertNull(Naca.find(digits), digits);
        }
        for (String digits : new String[] {"0006", "2412", "4415", "23012", "24112"}) {
            assertEquals(digits.equals("24112") ? null : digits, Naca.find(digits) == null ? null : digits);
        }
        assertNotNull(Naca.find("6409"));
    }

    @Test
    void anOutlineThroughPointsOfAnAerofoilIsThatAerofoil() {
        Contour points = assertNotNullNaca("2412").contour(120, TrailingEdge.BLUNT);
        double[] x = new double[points.points()];
        double[] y = new double[points.points()];
        for (int i = 0; i < x.length; i++) {
            x[x.length - 1 - i] = points.x(i); // the other way round: the outline turns it
            y[x.length - 1 - i] = points.y(i);
        }
        Outline outline = Outline.through(x, y);
        Contour again = outline.contour(200);
        assertEquals(1, outline.chord(), 2e-3);
        assertEquals(points.area(), again.area(), 2e-4);
        assertEquals(points.y(0) - points.y(120), again.y(0) - again.y(200), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> Outline.through(new double[5], new double[5]));
        x[0] += 0.1;
        assertThrows(IllegalArgumentException.class, () -> Outline.through(x, y));
    }

    private static Naca assertNotNullNaca(String digits) {
        Naca naca = Naca.find(digits);
        assertNotNull(naca);
        return naca;
    }
}
