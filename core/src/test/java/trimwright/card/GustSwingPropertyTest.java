package trimwright.card;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import trimwright.air.AirState;
import trimwright.air.GustShape;
import trimwright.boat.Limits;
import trimwright.target.TargetFinder;
import trimwright.target.TargetPoint;
import trimwright.units.Units;
import trimwright.water.WaterState;

class GustSwingPropertyTest {
    private static final WaterState SEA = WaterState.sea(Units.fromCelsius(15));
    private static final GustCard CARD = new GustCard(DemoTargets.PLATFORM, DemoTargets.HANDLING);

    private static GustWatch watch(TargetPoint point) {
        GustWatch watch = GustWatch.at(DemoTargets.PLATFORM, AirState.STANDARD, SEA, point);
        assertNotNull(watch);
        return watch;
    }

    private static GustSwing nobody(TargetPoint point, double gustKn) {
        return watch(point).swing(Units.fromKnots(gustKn), 0, GustShape.AT_ONCE, null);
    }

    /** Steady balance and motion in time have forces of their own code; a target of one stands still in the other. */
    @Test
    void withoutAGustTheBoatSailsOn() {
        for (TargetPoint point : DemoTargets.FOILING) {
            double heel = point.getTarget().attitude().heel();
            GustSwing swing = nobody(point, 0);
            // A tenth of a degree: strips of the wing differ (24 and 18), and with them its moment by some tenths per
            // cent.
            assertEquals(heel, swing.heelAfterTwo(), Units.fromDegrees(0.1));
            assertEquals(heel, swing.heelAfterFour(), Units.fromDegrees(0.2));
            assertEquals(0, swing.speedGained(), Units.fromKnots(0.1));
            assertEquals(1, swing.mostMoment(), 0.01);
            assertEquals(Double.POSITIVE_INFINITY, swing.secondsToLimit());
        }
    }

    @Test
    void aGustHeelsHerToLeewardAndAStrongerOneSooner() {
        for (TargetPoint point : DemoTargets.FOILING) {
            double heel = point.getTarget().attitude().heel();
            GustSwing two = nobody(point, 2);
            GustSwing six = nobody(point, 6);
            assertTrue(two.heelAfterOne() < heel);
            assertTrue(two.heelAfterTwo() < two.heelAfterOne());
            assertTrue(six.heelAfterOne() < two.heelAfterOne());
            assertTrue(six.secondsToLimit() < two.secondsToLimit());
            assertTrue(two.speedGained() > 0, "more wind, more drive before she lies over");
            assertTrue(nobody(point, -2).heelAfterOne() > heel, "a lull lets her fall to windward");
        }
    }

    /**
     * In the first instants nothing but the jump of moment turns the boat: heel lost is half of moment over inertia times time
     * squared at most. Damping and lag only slow it.
     */
    @Test
    void noFasterThanAFreeBodyUnderThatMoment() {
        for (TargetPoint point : DemoTargets.FOILING) {
            GustRow row = CARD.rowOf(point, Units.fromKnots(2), 0);
            assertNotNull(row);
            double heel = point.getTarget().attitude().heel();
            // The wing alone, a slender rod of 420 kg from 1.5 to 27.5 m above the hulls: less than the boat's inertia.
            double rod = 420.0 / 3 * (27.5 * 27.5 + 27.5 * 1.5 + 1.5 * 1.5);
            double most = 0.5 * row.jump() / rod;
            double lost = heel - nobody(point, 2).heelAfterOne();
            assertTrue(lost > 0 && lost < most, Units.toDegrees(lost) + " of " + Units.toDegrees(most));
        }
    }

    /** The moment that the boat feels is softer than the steady jump of the card, by lag and by the roll that gives way. */
    @Test
    void theBoatFeelsLessThanTheSteadyJump() {
        for (TargetPoint point : DemoTargets.FOILING) {
            GustRow row = CARD.rowOf(point, Units.fromKnots(4), 0);
            assertNotNull(row);
            double felt = nobody(point, 4).mostMoment() - 1;
            assertTrue(felt > 0.1 && felt < row.jump() / row.before(), felt + " of " + row.jump() / row.before());
        }
    }

    /**
     * The card against the boat in time, over winds and points of sail: where heel passes the boat file's limit with nobody moving,
     * the first act alone, a hand's reaction late, keeps it inside, both in a front and in a gust that grows; and upwind and
     * reaching it takes at least a quarter of what the growing gust adds to the moment; the rest is carried by the speed that she gains.
     */
    @Test
    void theFirstActHoldsHerWhereNobodyMovingDoesNot() {
        Limits limits = DemoTargets.BOAT.limits();
        int saved = 0;
        int held = 0;
        for (TargetPoint point : points()) {
            GustWatch watch = watch(point);
            for (double gustKn : new double[] {2, 6}) {
                GustRow row = CARD.rowOf(point, Units.fromKnots(gustKn), 0);
                assertNotNull(row);
                assertTrue(row.first().isInTime());
                for (GustShape shape : new GustShape[] {GustShape.AT_ONCE, GustShape.COHERENT}) {
                    GustSwing none = watch.swing(row.change(), 0, shape, null);
                    GustSwing act = watch.swing(row.change(), 0, shape, row.first());
                    String what = Units.toKnots(point.trueWindSpeed()) + " kn, " + point.mode() + " "
                            + Units.toDegrees(point.trueWindAngle()) + ", " + gustKn + ", " + shape;
                    assertEquals(Double.POSITIVE_INFINITY, act.secondsToLimit(), what);
                    assertTrue(act.leastHeel() > limits.heelMin(), what);
                    if (none.secondsToLimit() < 10) {
                        saved++;
                        assertTrue(none.leastHeel() < limits.heelMin(), what);
                    }
                    if (shape == GustShape.COHERENT && point.trueWindAngle() < Math.PI * 0.6) {
                        held++;
                        assertTrue(act.mostMoment() - 1 < (none.mostMoment() - 1) * 3 / 4, what);
                    }
                }
            }
        }
        assertTrue(saved >= 8, saved + " gusts heel her past her limit if nobody moves");
        assertTrue(held >= 4, held + " gusts upwind and reaching");
    }

    private static List<TargetPoint> points() {
        List<TargetPoint> points = new ArrayList<>();
        TargetFinder finder = new TargetFinder(DemoTargets.PLATFORM, Map.of());
        for (double windKn : new double[] {11, 20}) {
            for (TargetPoint point :
                    finder.pointsAt(Units.fromKnots(windKn), List.of(Units.fromDegrees(60), Units.fromDegrees(100)))) {
                if (point.isSolved() && point.isFoiling()) {
                    points.add(point);
                }
            }
        }
        return points;
    }
}
