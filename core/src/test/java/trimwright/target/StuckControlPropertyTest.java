package trimwright.target;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import trimwright.air.AirState;
import trimwright.boat.Boat;
import trimwright.boat.Whimbrel14;
import trimwright.platform.FoilSet;
import trimwright.platform.Platform;
import trimwright.platform.Variable;
import trimwright.units.Units;
import trimwright.water.WaterState;

/** What a stuck control can do to the best speed: cost, and nothing where it is stuck at the best value. */
class StuckControlPropertyTest {
    /**
     * A target shows the trim that gusts disturb least among those within 0.05 per cent of the best speed; so two shown speeds
     * of the same best speed differ by at most that, and the search's own tolerance is a hundredth of it.
     */
    private static final double SHOWN = 0.00051;

    private static final double WIND = Units.fromKnots(14);

    /** Two angles at which the boat foils on one main foil and, at 14 kn, on two. */
    private static final List<Double> ANGLES = List.of(Units.fromDegrees(95), Units.fromDegrees(110));

    private static final Boat BOAT = Whimbrel14.boat();

    private static final Platform PLATFORM =
            new Platform(BOAT, BOAT.getWing("tall"), AirState.STANDARD, WaterState.sea(Units.fromCelsius(15)));

    private static List<TargetPoint> foiling(Map<Variable, Double> held, FoilSet foils) {
        return new TargetFinder(PLATFORM, held, foils)
                .pointsAt(WIND, ANGLES).stream()
                        .filter(point -> point.mode() == TargetMode.ANGLE && point.isFoiling())
                        .toList();
    }

    private static final List<TargetPoint> FREE = foiling(Map.of(), FoilSet.LEEWARD_DOWN);

    @Test
    void noStuckControlMakesTheBoatFaster() {
        List<Map<Variable, Double>> stuck = List.of(
                Map.of(Variable.CAMBER, Units.fromDegrees(12)),
                Map.of(Variable.TWIST, Units.fromDegrees(5)),
                Map.of(Variable.SHEET, Units.fromDegrees(14)),
                Map.of(Variable.CAMBER, Units.fromDegrees(25), Variable.TWIST, Units.fromDegrees(38)));
        int compared = 0;
        for (Map<Variable, Double> held : stuck) {
            List<TargetPoint> found = foiling(held, FoilSet.LEEWARD_DOWN);
            for (int i = 0; i < ANGLES.size(); i++) {
                if (found.get(i).isSolved()) {
                    double free = FREE.get(i).getTarget().boatSpeed();
                    double speed = found.get(i).getTarget().boatSpeed();
                    assertTrue(speed <= free * (1 + SHOWN), held + ": " + speed + " over " + free);
                    compared++;
                }
            }
        }
        assertTrue(compared >= 6, "most of these trims can be sailed: " + compared);
    }

    @Test
    void stuckWhereItIsBestCostsNothing() {
        for (int i = 0; i < ANGLES.size(); i++) {
            Target free = FREE.get(i).getTarget();
            for (Map.Entry<Variable, Double> best : Map.of(
                            Variable.CAMBER, free.trim().camber(),
                            Variable.TWIST, free.trim().twist(),
                            Variable.SHEET, free.trim().sheet())
                    .entrySet()) {
                TargetPoint held = foiling(Map.of(best.getKey(), best.getValue()), FoilSet.LEEWARD_DOWN)
                        .get(i);
                assertEquals(
                        free.boatSpeed(),
                        held.getTarget().boatSpeed(),
                        SHOWN * free.boatSpeed(),
                        best.getKey().name());
            }
        }
    }

    /** At speed the second board only drags, takes righting moment, and the boat stays inside its own foil's limits. */
    @Test
    void aBoardThatStaysDownCostsSpeedAtSpeed() {
        List<TargetPoint> found = foiling(Map.of(), FoilSet.BOTH_DOWN);
        for (int i = 0; i < ANGLES.size(); i++) {
            Target free = FREE.get(i).getTarget();
            Target down = found.get(i).getTarget();
            assertTrue(down.boatSpeed() < free.boatSpeed(), down.boatSpeed() + " against " + free.boatSpeed());
            assertTrue(down.loads().rightingMoment() < free.loads().rightingMoment());
        }
    }
}
