package trimwright.card;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import trimwright.air.AirState;
import trimwright.target.TargetPoint;
import trimwright.units.Units;
import trimwright.water.WaterState;

class GustSwingPropertyTest {
    private static GustSwing swing(TargetPoint point, double gustKn) {
        GustSwing swing = GustSwing.of(
                DemoTargets.PLATFORM,
                AirState.STANDARD,
                WaterState.sea(Units.fromCelsius(15)),
                point,
                Units.fromKnots(gustKn));
        assertNotNull(swing);
        return swing;
    }

    /** Steady balance and motion in time have forces of their own code; a target of one stands still in the other. */
    @Test
    void withoutAGustTheBoatSailsOn() {
        for (TargetPoint point : DemoTargets.FOILING) {
            double heel = point.getTarget().attitude().heel();
            GustSwing swing = swing(point, 0);
            // A tenth of a degree: strips of the wing differ (24 and 18), and with them its moment by some tenths per
            // cent.
            assertEquals(heel, swing.heelAfterTwo(), Units.fromDegrees(0.1));
            assertEquals(Double.POSITIVE_INFINITY, swing.secondsToLimit());
        }
    }

    @Test
    void aGustHeelsHerToLeewardAndAStrongerOneSooner() {
        for (TargetPoint point : DemoTargets.FOILING) {
            double heel = point.getTarget().attitude().heel();
            GustSwing two = swing(point, 2);
            GustSwing six = swing(point, 6);
            assertTrue(two.heelAfterSecond() < heel);
            assertTrue(six.heelAfterSecond() < two.heelAfterSecond());
            assertTrue(six.secondsToLimit() < two.secondsToLimit());
            assertTrue(swing(point, -2).heelAfterSecond() > heel, "a lull lets her fall to windward");
        }
    }

    /**
     * In the first instants nothing but the jump of moment turns the boat: heel lost is half of moment over inertia times time
     * squared at most. Damping only slows it.
     */
    @Test
    void noFasterThanAFreeBodyUnderThatMoment() {
        GustCard card = new GustCard(DemoTargets.PLATFORM, DemoTargets.HANDLING);
        for (TargetPoint point : DemoTargets.FOILING) {
            GustRow row = card.rowOf(point, Units.fromKnots(2));
            assertNotNull(row);
            double heel = point.getTarget().attitude().heel();
            // The wing alone, a slender rod of 420 kg from 1.5 to 27.5 m above the hulls: less than the boat's inertia.
            double rod = 420.0 / 3 * (27.5 * 27.5 + 27.5 * 1.5 + 1.5 * 1.5);
            double most = 0.5 * row.jump() / rod;
            double lost = heel - swing(point, 2).heelAfterSecond();
            assertTrue(lost > 0 && lost < most, Units.toDegrees(lost) + " of " + Units.toDegrees(most));
        }
    }
}
