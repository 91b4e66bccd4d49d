package trimwright.target;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import trimwright.air.AirState;
import trimwright.air.WindProfile;
import trimwright.boat.Boat;
import trimwright.boat.Side;
import trimwright.boat.Whimbrel14;
import trimwright.platform.Conditions;
import trimwright.platform.FoilSet;
import trimwright.platform.Platform;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.target.search.Answer;
import trimwright.units.Units;
import trimwright.water.WaterState;

/** Where a search begins does not matter: from a neighbour in wind or angle it finds what it finds from a guess. */
class WarmStartTest {
    /** Of the speed (-). */
    private static final double SAME = 1e-6;

    private final Boat boat = Whimbrel14.boat();
    private final Platform platform =
            new Platform(boat, boat.getWing("tall"), AirState.STANDARD, WaterState.sea(288.15));

    @Test
    void fromANeighbourTheAnswerIsThatFromAGuess() {
        int compared = 0;
        for (double windKn : new double[] {13, 16, 19}) {
            for (double angleDeg : new double[] {80, 105, 130}) {
                compared += compare(windKn, angleDeg);
            }
        }
        assertTrue(compared >= 8, "only " + compared + " answers from a guess");
    }

    private int compare(double windKn, double angleDeg) {
        double angle = Units.fromDegrees(angleDeg);
        Answer cold = fromGuess(windKn, angle);
        Answer beside = fromGuess(windKn, angle - Units.fromDegrees(2));
        Answer lighter = fromGuess(windKn - 0.5, angle);
        int compared = 0;
        for (Answer neighbour : new Answer[] {beside, lighter}) {
            if (cold.isConverged() && neighbour.isConverged()) {
                Answer warm = task(windKn).atAngle(angle, neighbour.x(), neighbour);
                String what = windKn + " kn, " + angleDeg + " deg";
                assertTrue(warm.isConverged(), what);
                assertEquals(speed(cold), speed(warm), SAME * speed(cold), what);
                compared++;
            }
        }
        return compared;
    }

    private Answer fromGuess(double windKn, double angle) {
        return task(windKn).atAngle(angle, FirstGuess.foiling(platform, Units.fromKnots(windKn), angle));
    }

    private Task task(double windKn) {
        WindProfile wind = WindProfile.overSea(Units.fromKnots(windKn));
        return new Task(platform, new Conditions(wind, Side.STARBOARD, FoilSet.LEEWARD_DOWN), Branch.FOILING, Map.of());
    }

    private static double speed(Answer answer) {
        return SailingState.ofScaled(answer.x()).get(Variable.BOAT_SPEED);
    }
}
