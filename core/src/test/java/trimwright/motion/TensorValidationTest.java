package trimwright.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import trimwright.boat.Boat;
import trimwright.boat.Whimbrel14;

/** Turning of a free rigid body against what every textbook of mechanics derives from Euler's equations (from memory). */
class TensorValidationTest {
    private static final Boat BOAT = Whimbrel14.boat();

    /** A body of revolution left to itself: its axis of turning goes round at (zz - xx) / xx times the spin. */
    @Test
    void aBodyOfRevolutionPrecessesAsEulerSays() {
        Tensor top = new Tensor(4, 4, 7, 0, 0, 0);
        Spin spin = new Spin(0.3, 0, 2);
        double rate = (7.0 - 4.0) / 4.0 * 2;
        double dt = 1e-4;
        double time = 1.7;
        for (int i = 0; i < Math.round(time / dt); i++) {
            // Heun's step: second order, so that the error of the check itself is some 1e-7.
            Spin first = change(top, spin);
            Spin second = change(top, spin.plus(first.times(dt)));
            spin = spin.plus(first.plus(second).times(dt / 2));
        }
        assertEquals(0.3 * Math.cos(rate * time), spin.p(), 1e-6);
        assertEquals(0.3 * Math.sin(rate * time), spin.q(), 1e-6);
        assertEquals(2, spin.r(), 1e-9);
    }

    @Test
    void ratesOfAMomentumAreItsRates() {
        Tensor tensor = new Inertia(BOAT, BOAT.wings().get(0)).about(2.9);
        Spin spin = new Spin(0.4, -0.2, 0.9);
        Spin back = tensor.rates(tensor.momentum(spin));
        assertEquals(spin.p(), back.p(), 1e-12);
        assertEquals(spin.q(), back.q(), 1e-12);
        assertEquals(spin.r(), back.r(), 1e-12);
        assertEquals(tensor.energy(spin), 0.5 * dot(tensor.momentum(spin), spin), 1e-9);
    }

    /** Masses of the boat file about its own centre: a published-plausible set has 78,000, 74,000 and 54,000 kg m2 (hydrodynamic reference, section 6: assumed values). */
    @Test
    void theDemoBoatsInertiaIsOfThePublishedSize() {
        Tensor tensor = new Inertia(BOAT, BOAT.wings().get(0)).about(BOAT.crew().yMax());
        assertEquals(78_000, tensor.xx(), 0.3 * 78_000);
        assertEquals(74_000, tensor.yy(), 0.3 * 74_000);
        assertEquals(54_000, tensor.zz(), 0.3 * 54_000);
    }

    private static Spin change(Tensor tensor, Spin spin) {
        return tensor.rates(tensor.momentum(spin).cross(spin));
    }

    private static double dot(Spin a, Spin b) {
        return a.p() * b.p() + a.q() * b.q() + a.r() * b.r();
    }
}
