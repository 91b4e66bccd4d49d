package trimwright.hull;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import trimwright.boat.Hulls;
import trimwright.water.WaterState;

/** What must hold for the hulls at any input. */
class HullPropertyTest {
    static final WaterState SEA = new WaterState(1026.021, 1.1892e-6, 1670.9);
    static final Hulls HULLS = new Hulls(14.2, 14.0, 0.70, 0.35, 7.7, 0.40);
    private static final double G = 9.80665;
    private final HullModel hulls = new HullModel(HULLS, -1.5, SEA);

    @Test
    void everyForceIsFiniteAndResists() {
        Random random = new Random(4);
        HullLoad load = new HullLoad();
        for (int i = 0; i < 20_000; i++) {
            double speed = 40 * random.nextDouble();
            double own = 2 * random.nextDouble() - 0.7;
            double other = 2 * random.nextDouble() - 0.7;
            double pitch = 0.1 * random.nextGaussian();
            hulls.load(speed, pitch, own, other, load);
            assertTrue(load.drag() >= 0 && Double.isFinite(load.drag()));
            assertTrue(load.buoyancy() >= 0 && Double.isFinite(load.buoyancy()));
            assertTrue(Double.isFinite(load.buoyancyX() * load.buoyancy()) && Double.isFinite(load.dragZ()));
            assertEquals(own > 0, load.buoyancy() > 0);
        }
    }

    @Test
    void noDragAtRestAndNothingAtAllOutOfTheWater() {
        HullLoad load = new HullLoad();
        hulls.load(0, 0, 0.3, 0.3, load);
        assertEquals(0, load.drag(), 0);
        assertTrue(load.buoyancy() > 0);
        hulls.load(10, 0, -0.1, 0.3, load);
        assertEquals(0, load.drag(), 0);
        assertEquals(0, load.buoyancy(), 0);
    }

    @Test
    void aBoatAtItsDraftCarriesItsDisplacement() {
        double displaced = 0.40 * 14.0 * 0.70 * 0.35 * SEA.density() * G;
        assertEquals(displaced, hulls.buoyancy(0.35), 1e-9 * displaced);
    }

    @Test
    void immersionUndoesBuoyancy() {
        for (double immersion = 0.0005; immersion < 1; immersion *= 1.3) {
            assertEquals(immersion, hulls.immersion(hulls.buoyancy(immersion)), 1e-9);
        }
        assertEquals(0, hulls.immersion(0), 1e-12);
    }

    @Test
    void buoyancyGrowsWithDraftAndItsSlopeHasNoStep() {
        double before = 0;
        for (double immersion = -0.05; immersion < 1; immersion += 1e-4) {
            double slope = (hulls.buoyancy(immersion + 1e-6) - hulls.buoyancy(immersion - 1e-6)) / 2e-6;
            assertTrue(slope >= before - 1e-3, "stiffness grows with draft");
            assertEquals(before, slope, 1000, "no step of the slope over 0.1 mm");
            before = slope;
        }
    }

    @Test
    void bowUpBringsTheBowDown() {
        HullLoad load = new HullLoad();
        hulls.load(5, 0.02, 0.3, 0.3, load);
        assertTrue(load.buoyancyX() < -1.5, "bow up moves the centre of buoyancy aft");
        double aft = load.buoyancyX();
        hulls.load(5, -0.02, 0.3, 0.3, load);
        assertEquals(-1.5 - aft, load.buoyancyX() + 1.5, 1e-12);
    }

    @Test
    void resistanceIsSmoothInSpeedAndLoad() {
        double step = 1e-3;
        for (double speed = 0.05; speed < 15; speed += 0.037) {
            double v = speed;
            assertSmooth(d -> hulls.resistance(v + d, 14_000, 11_000), "speed " + v);
        }
        for (double carried = 50; carried < 60_000; carried *= 1.013) {
            double w = carried;
            assertSmooth(d -> hulls.resistance(7, w + d * 10_000 * step, 9_000), "weight " + w);
        }
    }

    private static void assertSmooth(java.util.function.DoubleUnaryOperator f, String where) {
        double scale = 1 + Math.abs(f.applyAsDouble(1e-3) - f.applyAsDouble(-1e-3)) / 2e-3;
        assertTrue(kink(f, 1e-5) <= 0.1 * kink(f, 1e-3) + 1e-3 * scale, where);
    }

    private static double kink(java.util.function.DoubleUnaryOperator f, double step) {
        return Math.abs(f.applyAsDouble(step) - 2 * f.applyAsDouble(0) + f.applyAsDouble(-step)) / step;
    }

    @Test
    void moreWeightCostsMoreDragAndFoilsThatCarryAllLeaveNone() {
        double before = 0;
        for (double carried = 0; carried < 20_000; carried += 500) {
            double drag = hulls.resistance(7, carried, carried);
            assertTrue(drag >= before);
            before = drag;
        }
        assertEquals(0, hulls.resistance(7, 0, 0), 0);
    }

    @Test
    void aSecondHullThatBarelyTouchesChangesLittle() {
        double alone = hulls.resistance(7, 14_000, 0);
        assertEquals(alone, hulls.resistance(7, 14_000, 1), 1e-3 * alone);
    }

    @Test
    void atLowFroudeNumberOnlyFrictionWithItsFormFactorIsLeft() {
        double speed = 0.3;
        double carried = 10_000;
        double volume = carried / (SEA.density() * G);
        double slenderness = 14.0 / Math.cbrt(volume);
        double re = speed * 14.0 / SEA.kinematicViscosity();
        double friction = 0.075 / Math.pow(Math.log10(re) - 2, 2);
        double r = 2.0;
        double cs = 6.554
                - 1.226 * r
                + .216 * r * r
                + .4 * (-15.409 + 4.468 * r - .694 * r * r)
                + .16 * (15.404 - 4.527 * r + .655 * r * r);
        double area = cs * Math.sqrt(volume * 14.0);
        double expected = 0.5 * SEA.density() * speed * speed * area * friction * 3.03 * Math.pow(slenderness, -0.40);
        // 0.5 percent: the wetted area's rounding at small volumes and the last of the waves
        assertEquals(expected, hulls.resistance(speed, carried, carried), 0.005 * expected);
    }

    @Test
    void beyondTheSeriesTheWavesFallNoFasterThanThinShipTheorySays() {
        // The formulas are continued from slenderness 9.5 to 12.7. Michell's integral for a parabolic hull of the same
        // proportions falls with about the fourth power; the model must stay on the safe side of it.
        for (double froude : new double[] {0.5, 0.6, 0.7, 0.8, 0.9}) {
            double model =
                    RoundBilgeSeries.at(froude, 12.7, 0.5, 1).waves / RoundBilgeSeries.at(froude, 9.5, 0.5, 1).waves;
            double thinShip = ThinShip.waveCoefficient(12.7, froude) / ThinShip.waveCoefficient(9.5, froude);
            assertTrue(model < 1 && model > thinShip, froude + ": " + model + " against " + thinShip);
        }
    }
}
