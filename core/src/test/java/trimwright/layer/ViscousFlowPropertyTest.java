package trimwright.layer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import trimwright.panel.NoFlowException;
import trimwright.profile.Contour;
import trimwright.profile.Naca;
import trimwright.profile.TrailingEdge;
import trimwright.profile.WingProfile;

class ViscousFlowPropertyTest {
    private static final int TRIALS = 40;

    @Test
    void everyStateHasAFiniteAnswerOrATypedOne() {
        Random random = new Random(20);
        int answered = 0;
        for (int trial = 0; trial < TRIALS; trial++) {
            double thickness = 0.08 + 0.16 * random.nextDouble();
            WingProfile wing = new WingProfile(
                    thickness, 0.1, 0.3 + 0.15 * random.nextDouble(), 0.006 + 0.02 * random.nextDouble(), 0.9);
            List<Contour> elements = trial % 2 == 0
                    ? List.of(Naca.symmetric(thickness).contour(60, TrailingEdge.BLUNT))
                    : wing.elements(Math.toRadians(-10 + 50 * random.nextDouble()), 60, TrailingEdge.BLUNT);
            double alpha = Math.toRadians(-12 + 30 * random.nextDouble());
            double reynolds = 1e5 * Math.pow(100, random.nextDouble());
            ViscousAnswer answer = new ViscousFlow(elements, ViscousFlow.QUIET).at(alpha, reynolds, null);
            if (answer instanceof ViscousPoint point) {
                answered++;
                assertTrue(Math.abs(point.lift()) < 6, "lift " + point.lift());
                assertTrue(point.drag() > 0.002 && point.drag() < 1, "drag " + point.drag());
                for (LayerSide side : LayerSide.values()) {
                    assertTrue(point.transition(0, side) >= -0.01 && point.transition(0, side) <= 1.01);
                    assertTrue(point.separation(0, side) >= -0.01 && point.separation(0, side) <= 1.01);
                }
            } else {
                assertInstanceOf(NoAgreement.class, answer);
            }
        }
        assertTrue(answered > TRIALS / 2, "answered: " + answered);
    }

    @Test
    void theMirrorImageHasTheOppositeLift() {
        Naca naca = Naca.find("2412");
        assertNotNull(naca);
        Contour contour = naca.contour(100, TrailingEdge.BLUNT);
        ViscousPoint one = point(contour, 5);
        ViscousPoint other = point(contour.mirrored(), -5);
        assertEquals(one.lift(), -other.lift(), 1e-3 * one.lift());
        assertEquals(one.drag(), other.drag(), 1e-3 * one.drag());
        assertEquals(one.transition(0, LayerSide.UPPER), other.transition(0, LayerSide.LOWER), 2e-3, "transition");
    }

    @Test
    void roughStreamsMoveTransitionForwardAndRaiseDrag() {
        Contour contour = Naca.symmetric(0.12).contour(100, TrailingEdge.BLUNT);
        double before = 1;
        double drag = 0;
        for (double critical : new double[] {11, 9, 5, 2}) {
            ViscousPoint point = assertInstanceOf(
                    ViscousPoint.class, new ViscousFlow(List.of(contour), critical).at(Math.toRadians(2), 3e6, null));
            assertTrue(point.transition(0, LayerSide.UPPER) < before, "transition at N = " + critical);
            assertTrue(point.drag() > drag, "drag at N = " + critical);
            before = point.transition(0, LayerSide.UPPER);
            drag = point.drag();
        }
    }

    @Test
    void elementsThatCrossAreRefused() {
        Contour main = Naca.symmetric(0.12).contour(60, TrailingEdge.BLUNT);
        Contour flap = Naca.symmetric(0.12).contour(60, TrailingEdge.BLUNT).moved(0.9, 0);
        assertThrows(NoFlowException.class, () -> new ViscousFlow(List.of(main, flap), ViscousFlow.QUIET));
    }

    private static ViscousPoint point(Contour contour, double degrees) {
        return assertInstanceOf(
                ViscousPoint.class,
                new ViscousFlow(List.of(contour), ViscousFlow.QUIET).at(Math.toRadians(degrees), 1e6, null));
    }
}
