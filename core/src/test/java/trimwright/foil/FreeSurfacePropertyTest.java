package trimwright.foil;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class FreeSurfacePropertyTest {
    @Test
    void biplaneFactorMatchesDirectIntegration() {
        for (double lambda : new double[] {0.1, 0.3, 1, 2.5, 6}) {
            assertEquals(BreslinIntegral.biplane(lambda), FreeSurface.biplaneFactor(lambda), 1e-9);
        }
    }

    @Test
    void deepWaterForgetsTheSurface() {
        assertEquals(1, FreeSurface.highSpeedLiftFactor(1e6), 1e-9);
        assertEquals(0, FreeSurface.biplaneFactor(1e4), 1e-6);
        for (double froude = 0; froude < 30; froude += 0.5) {
            assertEquals(1, FreeSurface.liftFactor(1e3, froude), 1e-5);
        }
    }

    @Test
    void atHighSpeedTheLiftFactorIsTheHighSpeedOne() {
        for (double depth = 0.1; depth < 8; depth += 0.1) {
            assertEquals(FreeSurface.highSpeedLiftFactor(depth), FreeSurface.liftFactor(depth, 1e3), 1e-4);
        }
    }

    @Test
    void liftFactorStaysBetweenNothingAndOneAtAnyDepthAndSpeed() {
        for (double depth = 0; depth < 6; depth += 0.05) {
            for (double froude = 0; froude < 40; froude += 0.25) {
                double factor = FreeSurface.liftFactor(depth, froude);
                assertTrue(factor > 0.09 && factor <= 1, depth + " " + froude + " " + factor);
            }
        }
    }

    @Test
    void liftFactorHasNoKinkInSpeed() {
        double before = Double.NaN;
        for (double froude = -0.1; froude < 30; froude += 1e-3) {
            double slope = (FreeSurface.liftFactor(1, froude + 1e-6) - FreeSurface.liftFactor(1, froude - 1e-6)) / 2e-6;
            if (!Double.isNaN(before)) {
                assertEquals(before, slope, 5e-3);
            }
            before = slope;
        }
    }

    @Test
    void fastImageAddsWhatSlowWallTakesAway() {
        // 8 I tends to twice sigma at speed and to nothing at rest.
        for (double lambda : new double[] {0.3, 0.5, 1, 2}) {
            double sigma = FreeSurface.biplaneFactor(lambda);
            assertEquals(1 + sigma, FreeSurface.dragFactor(lambda, sigma, 1e-7), 1e-6);
            assertEquals(1 - sigma, FreeSurface.dragFactor(lambda, sigma, 1e4), 1e-9);
        }
    }

    @Test
    void aFullySubmergedTipHasAlmostNoHeaveStiffness() {
        // dL/dh over L is (32 x / (2 + 16 x^2)^2) / (K c): about 0.10 per chord at one chord (DERIVED).
        double h = 1e-5;
        double slope = (FreeSurface.highSpeedLiftFactor(1 + h) - FreeSurface.highSpeedLiftFactor(1 - h)) / (2 * h);
        assertEquals(32.0 / (18 * 18) / 0.94444, slope / FreeSurface.highSpeedLiftFactor(1), 1e-5);
        assertEquals(0.10, slope / FreeSurface.highSpeedLiftFactor(1), 0.005);
    }
}
