package trimwright.foil;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import trimwright.boat.MainFoil;
import trimwright.boat.Side;

/** The elements against hand calculations written out here, and against each other in their limits. */
class FoilElementPropertyTest {
    private static final double RHO = 1026.021;
    private final MainFoilModel main = new MainFoilModel(DemoFoils.MAIN, Side.STARBOARD, DemoFoils.SEA);
    private final RudderModel rudder = new RudderModel(DemoFoils.RUDDER, 3.85, Side.STARBOARD, DemoFoils.SEA);
    private final FoilLoad load = new FoilLoad();

    @Test
    void theTipLiftsByItsSlopeTimesItsAngle() {
        MainFoil flat = new MainFoil(2.2, 0.40, 0.12, 1.6, 0.33, 0.10, 0.2, 0, 4.42, 3.75, -0.1, 0.2, 0.5);
        MainFoilModel level = new MainFoilModel(flat, Side.STARBOARD, DemoFoils.SEA);
        double speed = 60; // so fast that only the high-speed factors are left (and no ceiling at this small lift)
        level.tip(new Flow(-speed, 0, 0, 0.5), -0.03, load);
        double q = 0.5 * RHO * speed * speed;
        double slope = 4.153;
        double expected = slope * (-0.03 + 0.2 / (2 * Math.PI));
        // 1 %: at a depth Froude number of 27 and small angles
        assertEquals(expected, load.lift() / (q * 1.6 * 0.33), 0.01 * Math.abs(expected));
    }

    @Test
    void dragOfTheTipIsTheSumOfItsParts() {
        double speed = 15;
        double depth = 1.2;
        main.tip(new Flow(-speed, 0, 0, depth), 0.02, load);
        double cl = load.liftCoefficient();
        double q = 0.5 * RHO * speed * speed;
        double re = speed * 0.33 / 1.1892e-6;
        double friction = 0.075 / Math.pow(Math.log10(re) - 2, 2);
        double profile = 2 * friction * (1 + 2.7 * 0.1 + 100 * 1e-4) + 0.0075 * (cl - 0.25) * (cl - 0.25);
        double induced = cl * cl / (Math.PI * 1.6 / 0.33) * BreslinIntegral.dragFactor(1.6, depth, speed);
        double expected = q * 1.6 * 0.33 * (profile + induced);
        // 1 %: closed form of the wave part, and a flow along the slightly sloping tip
        assertEquals(expected, load.drag(), 0.01 * expected);
    }

    @Test
    void sideForceOfTheShaftFollowsHelmboldAndItsInducedDrag() {
        double speed = 20;
        double wetted = 1.3;
        double leeway = Math.toRadians(3);
        Flow flow = new Flow(-speed * Math.cos(leeway), -speed * Math.sin(leeway), 0, wetted);
        main.shaft(flow, load);
        double aspect = 1.1 * wetted / 0.40;
        double slope = 2 * Math.PI * aspect / (2 + Math.sqrt(aspect * aspect + 4));
        double q = 0.5 * RHO * speed * speed;
        double cl = slope * leeway;
        // 1 %: the last of the slow-water wall at a depth Froude number of 5.6
        assertEquals(-q * wetted * 0.40 * cl, load.lift(), 0.01 * q * wetted * 0.40 * cl);
        double force = load.lift();
        double t = 0.12 * 0.40;
        double re = speed * 0.40 / 1.1892e-6;
        double friction = 0.075 / Math.pow(Math.log10(re) - 2, 2);
        double given = load.liftCoefficient();
        double profile = 2 * friction * (1 + 2.7 * 0.12 + 100 * Math.pow(0.12, 4)) + 0.0075 * given * given;
        double joint = (17 * 0.11 * 0.11 - 0.05) * Math.pow(0.5 * (t + 0.033), 2);
        double expected = q * (wetted * 0.40 * profile + 0.24 * t * t + joint)
                + force * force / (q * Math.PI * wetted * wetted * 1.1);
        assertEquals(expected, load.drag(), 0.005 * expected);
    }

    @Test
    void strutsAreBetterWhereTheHullStandsOnTheWater() {
        Flow flying = new Flow(-8, -0.4, 0, 1.2);
        Flow afloat = new Flow(-8, -0.4, 0, 2.5);
        main.shaft(flying, load);
        double perArea = Math.abs(load.lift()) / (1.2 * 0.40);
        double ventilation = load.ventilationRatio();
        main.shaft(afloat, load);
        assertTrue(Math.abs(load.lift()) / (2.2 * 0.40) > perArea);
        assertTrue(ventilation > 0);
        assertEquals(0, load.ventilationRatio(), 0, "no air below a hull that floats");
    }

    @Test
    void centreOfSideForceComesFromTheLoadAssumed() {
        // Moments of sin 2 theta over z = d cos theta, summed here.
        double moment = 0;
        double force = 0;
        int n = 20_000;
        for (int i = 0; i < n; i++) {
            double theta = Math.PI / 2 * (i + 0.5) / n;
            double gamma = Math.sin(2 * theta) * Math.sin(theta);
            moment += gamma * Math.cos(theta);
            force += gamma;
        }
        main.shaft(new Flow(-200, -2, 0, 1.2), load);
        assertEquals(2.2 - 1.2 + 1.2 * moment / force, load.pointZ(), 1e-3);
    }

    @Test
    void anElevatorInDownwashNeedsMoreAngleForTheSameLift() {
        Flow at = new Flow(-15, 0, 0, 1.2);
        main.tip(at, 0.03, load);
        double wash = main.downwash(at, load, 6.5, 1.2);
        assertTrue(wash > 0, "water behind a lifting tip goes down");
        rudder.elevator(new Flow(-15, 0, 0, 1.2), 0, 0.05, load);
        double without = load.lift();
        rudder.elevator(new Flow(-15, 0, wash, 1.2), 0, 0.05, load);
        assertTrue(load.lift() < without);
    }

    @Test
    void downwashGrowsToTwiceTheInducedAngle() {
        assertEquals(2, TandemWash.growth(1e5, 1.6), 1e-6);
        assertTrue(TandemWash.growth(6.5, 1.6) < 2.02 && TandemWash.growth(6.5, 1.6) > 1.97);
        // Written out for one semispan behind: E(1/2) summed here.
        double second = 0;
        int n = 2000;
        for (int i = 0; i < n; i++) {
            double phi = Math.PI / 2 * (i + 0.5) / n;
            second += Math.sqrt(1 - 0.5 * Math.sin(phi) * Math.sin(phi));
        }
        second *= Math.PI / 2 / n;
        assertEquals(1 + 2 / Math.PI * second / Math.sqrt(0.5), TandemWash.growth(0.8, 1.6), 1e-9);
    }

    @Test
    void downwashAboveTheWakeMatchesTheSheetOfTrailingVortices() {
        // Far behind an elliptically loaded wing: strengths y / sqrt(1 - y^2) along the span, summed at a height.
        for (double height : new double[] {0.3, 0.8, 1.5, 3}) {
            double sum = 0;
            int n = 20_000;
            for (int i = 0; i < n; i++) {
                double phi = Math.PI * (i + 0.5) / n;
                double y = Math.cos(phi);
                sum += y * y / (y * y + height * height);
            }
            double overInSheet = sum / n;
            assertEquals(overInSheet, TandemWash.away(height, 2), 0.01);
        }
    }

    @Test
    void anElevatorOutOfTheWakeFeelsLess() {
        Flow at = new Flow(-15, 0, 0, 1.2);
        main.tip(at, 0.03, load);
        double inside = main.downwash(at, load, 6.5, 1.6);
        double above = main.downwash(at, load, 6.5, 0.9);
        assertTrue(above > 0 && above < 0.7 * inside);
    }

    @Test
    void waterBehindALoadedShaftTurnsAgainstItsForce() {
        Flow at = new Flow(-15, -1, 0, 1.2);
        main.shaft(at, load);
        assertTrue(load.lift() < 0);
        double near = main.sidewash(at, load, 6.5, 4.2);
        assertTrue(near > 0);
        assertTrue(main.sidewash(at, load, 6.5, 2.5) < 0.5 * near, "the wake passes by");
        Flow mirrored = new Flow(-15, 1, 0, 1.2);
        MainFoilModel port = new MainFoilModel(DemoFoils.MAIN, Side.PORT, DemoFoils.SEA);
        port.shaft(mirrored, load);
        assertEquals(-near, port.sidewash(mirrored, load, 6.5, -4.2), 0);
    }

    private static double spare(double speed) {
        double q = 0.5 * RHO * speed * speed;
        double suction = Math.pow(1.1 + 0.25 * 30_000 / (q * 0.528), 2) - 1;
        return 101_325 + RHO * 9.80665 * 1.2 - 1670.9 - q * suction;
    }

    @Test
    void cavitationCostsDragOnlyPastItsOnset() {
        assertEquals(0, Cavitation.addedDrag(0.35, 0.99), 0);
        assertEquals(0, Cavitation.addedDrag(0.35, 1), 0);
        assertTrue(Cavitation.addedDrag(0.35, 1.2) > 0);
        // With no pressure to spare: about a supercavitating plate of the same lift, CL * alpha = 2 CL^2 / pi.
        assertEquals(2 * 0.2 * 0.2 / Math.PI, Cavitation.addedDrag(0.35, 1e9), 0.002);
    }

    @Test
    void cavitationRatioGrowsWithSpeedAndPassesOneNearFiftyKnots() {
        double before = 0;
        double onset = 0;
        for (double speed = 5; speed < 32; speed += 0.1) {
            // The rake that carries 30 kN, by bisection
            double low = -0.1;
            double high = 0.3;
            for (int i = 0; i < 50; i++) {
                double rake = 0.5 * (low + high);
                main.tip(new Flow(-speed, 0, 0, 1.2), rake, load);
                if (load.lift() < 30_000) {
                    low = rake;
                } else {
                    high = rake;
                }
            }
            if (speed > 14) {
                assertTrue(load.cavitationRatio() > before);
            }
            before = load.cavitationRatio();
            if (before < 1) {
                onset = speed;
            }
        }
        // Roof-top at 30 kN on 0.53 m2, 10 % thick, 1.2 m deep: where the pressure to spare is used up
        double byHand = 20;
        while (spare(byHand) > 0) {
            byHand += 0.01;
        }
        assertEquals(byHand, onset, 0.15);
    }
}
