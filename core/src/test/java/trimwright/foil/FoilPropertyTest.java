package trimwright.foil;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import trimwright.boat.Side;

/** What must hold for the forces on the foils at any input. */
class FoilPropertyTest {
    private static final int POINTS = 20_000;

    private final MainFoilModel port = new MainFoilModel(DemoFoils.MAIN, Side.PORT, DemoFoils.SEA);
    private final MainFoilModel starboard = new MainFoilModel(DemoFoils.MAIN, Side.STARBOARD, DemoFoils.SEA);
    private final RudderModel portRudder = new RudderModel(DemoFoils.RUDDER, 3.85, Side.PORT, DemoFoils.SEA);
    private final RudderModel starboardRudder = new RudderModel(DemoFoils.RUDDER, 3.85, Side.STARBOARD, DemoFoils.SEA);

    /** The four elements of one side behind one signature. */
    private interface Element {
        void load(Flow flow, double angle, double second, FoilLoad out);
    }

    private Element[] elements(MainFoilModel main, RudderModel rudder) {
        return new Element[] {
            (flow, angle, second, out) -> main.shaft(flow, out),
            (flow, angle, second, out) -> main.tip(flow, angle, out),
            (flow, angle, second, out) -> rudder.strut(flow, second, out),
            (flow, angle, second, out) -> rudder.elevator(flow, second, angle, out)
        };
    }

    @Test
    void everyForceIsFiniteAndTakesEnergyFromTheFlow() {
        Random random = new Random(1);
        FoilLoad load = new FoilLoad();
        for (Element element : elements(starboard, starboardRudder)) {
            for (int i = 0; i < POINTS; i++) {
                double scale = Math.pow(10, 4 * random.nextDouble() - 2);
                Flow flow = new Flow(
                        scale * random.nextGaussian(),
                        scale * random.nextGaussian(),
                        scale * random.nextGaussian(),
                        6 * random.nextDouble() - 2);
                element.load(flow, random.nextGaussian(), 0.5 * random.nextGaussian(), load);
                for (double value : values(load)) {
                    assertTrue(Double.isFinite(value), () -> "not finite at " + flow);
                }
                assertTrue(load.drag() >= 0);
                double power = load.forceX() * flow.u() + load.forceY() * flow.v() + load.forceZ() * flow.w();
                double speed = Math.sqrt(flow.u() * flow.u() + flow.v() * flow.v() + flow.w() * flow.w());
                assertEquals(
                        load.drag() * speed, power, 1e-9 * (Math.abs(power) + Math.abs(load.lift()) * speed) + 1e-12);
                assertTrue(load.cavitationRatio() >= 0 && load.ventilationRatio() >= 0 && load.stallRatio() >= 0);
            }
        }
    }

    @Test
    void portMirrorsStarboardToTheLastBit() {
        Random random = new Random(2);
        FoilLoad left = new FoilLoad();
        FoilLoad right = new FoilLoad();
        Element[] mirror = elements(port, portRudder);
        Element[] elements = elements(starboard, starboardRudder);
        for (int e = 0; e < elements.length; e++) {
            for (int i = 0; i < 2_000; i++) {
                Flow flow = new Flow(
                        -30 * random.nextDouble(),
                        random.nextGaussian(),
                        random.nextGaussian(),
                        3 * random.nextDouble());
                double angle = 0.2 * random.nextGaussian();
                double second = 0.1 * random.nextGaussian();
                elements[e].load(flow, angle, second, right);
                mirror[e].load(new Flow(flow.u(), -flow.v(), flow.w(), flow.depth()), angle, -second, left);
                assertEquals(right.forceX(), left.forceX(), 0);
                assertEquals(right.forceY(), -left.forceY(), 0);
                assertEquals(right.forceZ(), left.forceZ(), 0);
                assertEquals(right.pointX(), left.pointX(), 0);
                assertEquals(right.pointY(), -left.pointY(), 0);
                assertEquals(right.pointZ(), left.pointZ(), 0);
                assertEquals(right.drag(), left.drag(), 0);
                assertEquals(right.cavitationRatio(), left.cavitationRatio(), 0);
                assertEquals(right.ventilationRatio(), left.ventilationRatio(), 0);
            }
        }
    }

    @Test
    void noForceAtRestOrOutOfTheWater() {
        FoilLoad load = new FoilLoad();
        for (Element element : elements(starboard, starboardRudder)) {
            element.load(new Flow(0, 0, 0, 1.2), 0.1, 0.05, load);
            assertNoForce(load);
            element.load(new Flow(-15, 1, 0.3, -0.01), 0.1, 0.05, load);
            assertNoForce(load);
        }
    }

    @Test
    void slopesAreContinuousInEveryInput() {
        Random random = new Random(3);
        for (Element element : elements(starboard, starboardRudder)) {
            for (int i = 0; i < 400; i++) {
                double[] at = {
                    -2 - 26 * random.nextDouble(),
                    1.5 * random.nextGaussian(),
                    1.0 * random.nextGaussian(),
                    3.2 * random.nextDouble() - 0.2,
                    0.15 * random.nextGaussian(),
                    0.1 * random.nextGaussian()
                };
                for (int input = 0; input < at.length; input++) {
                    int which = input;
                    for (int output = 0; output < 3; output++) {
                        int component = output;
                        assertSmooth(d -> force(element, at, which, d, component), at, which);
                    }
                }
            }
        }
    }

    /**
     * One-sided slopes over a step of 1e-3 differ by the curvature times the step. A kink would keep its difference when
     * the step shrinks a hundredfold; a smooth function loses it.
     */
    private static void assertSmooth(DoubleUnaryOperator force, double[] at, int input) {
        double coarse = kink(force, 1e-3);
        double fine = kink(force, 1e-5);
        double scale = 1 + Math.abs(force.applyAsDouble(1e-3) - force.applyAsDouble(-1e-3)) / 2e-3;
        assertTrue(
                fine <= 0.1 * coarse + 1e-3 * scale,
                () -> "kink in input " + input + " at " + java.util.Arrays.toString(at) + ": " + coarse + " then "
                        + fine);
    }

    private static double kink(DoubleUnaryOperator force, double step) {
        double here = force.applyAsDouble(0);
        return Math.abs(force.applyAsDouble(step) - 2 * here + force.applyAsDouble(-step)) / step;
    }

    private static double force(Element element, double[] at, int which, double change, int component) {
        double[] x = at.clone();
        x[which] += change;
        FoilLoad load = new FoilLoad();
        element.load(new Flow(x[0], x[1], x[2], x[3]), x[4], x[5], load);
        return component == 0 ? load.forceX() : component == 1 ? load.forceY() : load.forceZ();
    }

    @Test
    void theEdgesOfWaterAndHullAreCrossedWithoutAStepInSlope() {
        // The slope itself, followed over depth in small steps, must not jump anywhere.
        for (Element element : elements(starboard, starboardRudder)) {
            double[] at = {-12, 0.6, 0.2, 0, 0.05, 0.02};
            double step = 1e-4;
            double before = Double.NaN;
            double largest = 0;
            double range = 0;
            for (double depth = -0.3; depth < 3; depth += step) {
                at[3] = depth;
                double slope = (force(element, at, 3, 1e-6, 1)
                                + force(element, at, 3, 1e-6, 2)
                                - force(element, at, 3, -1e-6, 1)
                                - force(element, at, 3, -1e-6, 2))
                        / 2e-6;
                largest = Math.max(largest, Double.isNaN(before) ? 0 : Math.abs(slope - before));
                range = Math.max(range, Math.abs(slope));
                before = slope;
            }
            assertTrue(largest < 0.02 * range, largest + " of " + range);
        }
    }

    @Test
    void ridingHigherLosesLiftAndLeewayUnloadsTheTip() {
        FoilLoad load = new FoilLoad();
        starboard.tip(new Flow(-15, 0, 0, 1.2), 0.03, load);
        double deep = load.lift();
        starboard.tip(new Flow(-15, 0, 0, 0.6), 0.03, load);
        assertTrue(load.lift() < deep);
        // Drift to starboard, the leeward side of this foil: the water comes from starboard.
        starboard.tip(new Flow(-15, -1, 0, 1.2), 0.03, load);
        assertTrue(load.lift() < deep);
    }

    @Test
    void forcesPointWhereASailorExpectsThem() {
        FoilLoad load = new FoilLoad();
        starboard.tip(new Flow(-15, 0, 0, 1.2), 0.03, load);
        assertTrue(load.forceZ() < 0 && load.forceX() < 0, "the tip lifts and drags");
        starboard.shaft(new Flow(-15, -1, 0, 1.2), load);
        assertTrue(load.forceY() < 0, "drifting to starboard is resisted to port");
        starboardRudder.strut(new Flow(-15, 0, 0, 0.9), 0.05, load);
        assertTrue(load.forceY() < 0, "trailing edge to starboard pushes the stern to port");
        starboardRudder.elevator(new Flow(-15, 0, 0, 0.9), 0, 0.02, load);
        assertTrue(load.forceZ() < 0, "elevator nose up lifts the stern");
    }

    private static void assertNoForce(FoilLoad load) {
        assertEquals(0, load.forceX(), 0);
        assertEquals(0, load.forceY(), 0);
        assertEquals(0, load.forceZ(), 0);
    }

    private static double[] values(FoilLoad load) {
        return new double[] {
            load.forceX(),
            load.forceY(),
            load.forceZ(),
            load.pointX(),
            load.pointY(),
            load.pointZ(),
            load.lift(),
            load.drag(),
            load.liftCoefficient(),
            load.stallRatio(),
            load.cavitationRatio(),
            load.ventilationRatio()
        };
    }
}
