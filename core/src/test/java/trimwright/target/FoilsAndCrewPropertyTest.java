package trimwright.target;

import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import trimwright.air.AirState;
import trimwright.boat.Boat;
import trimwright.boat.Crew;
import trimwright.boat.FoilSpec;
import trimwright.boat.PerturbedBoats;
import trimwright.boat.Whimbrel14;
import trimwright.platform.Platform;
import trimwright.units.Units;
import trimwright.water.WaterState;

/** What foil sets and crews are chosen by goes the way that the trade expects, on the demo boat and on boats a tenth different. */
class FoilsAndCrewPropertyTest {
    private static final List<Double> REACHES = angles(80, 120, 10);

    private static List<Boat> boats() {
        List<Boat> boats = new ArrayList<>(PerturbedBoats.all());
        boats.add(Whimbrel14.boat());
        return boats;
    }

    private static List<Double> angles(double fromDeg, double toDeg, double stepDeg) {
        return DoubleStream.iterate(fromDeg, deg -> deg <= toDeg, deg -> deg + stepDeg)
                .mapToObj(Units::fromDegrees)
                .toList();
    }

    private static List<TargetPoint> points(Boat boat, double windKn, List<Double> angles) {
        Platform platform = new Platform(boat, boat.getWing("tall"), AirState.STANDARD, WaterState.sea(288.15));
        return new TargetFinder(platform, Map.of())
                .pointsAt(Units.fromKnots(windKn), angles).stream()
                        .filter(TargetPoint::isSolved)
                        .toList();
    }

    private static Boat light(Boat boat) {
        FoilSpec light = boat.findFoils("light");
        assertNotNull(light);
        return boat.withFoils(light);
    }

    @Test
    void theLargerFoilsFlyInLessWind() {
        for (Boat boat : boats()) {
            assertTrue(lowestFoiling(light(boat)) <= lowestFoiling(boat) - 0.5);
        }
    }

    /** Least wind in which something holds her up (kn). */
    private static double lowestFoiling(Boat boat) {
        for (double windKn = 7; windKn < 12; windKn += 0.5) {
            if (points(boat, windKn, REACHES).stream().anyMatch(TargetPoint::isFoiling)) {
                return windKn;
            }
        }
        return Double.NaN;
    }

    @Test
    void theLargerFoilsAreSlowerAtTheTop() {
        for (Boat boat : boats()) {
            assertTrue(fastest(light(boat), 26) < fastest(boat, 26));
        }
    }

    private static double fastest(Boat boat, double windKn) {
        return points(boat, windKn, angles(105, 135, 15)).stream()
                .mapToDouble(point -> point.getTarget().boatSpeed())
                .max()
                .orElse(Double.NaN);
    }

    @Test
    void aHeavierCrewHelpsUpwindInABreezeAndHurtsInDrifting() {
        for (Boat boat : boats()) {
            assertTrue(upwind(withCrew(boat, 1.15), 20) > upwind(boat, 20), "20 kn");
            assertTrue(upwind(withCrew(boat, 1.15), 4) < upwind(boat, 4), "4 kn");
        }
    }

    private static Boat withCrew(Boat boat, double share) {
        Crew crew = boat.crew();
        return boat.withCrew(new Crew(crew.count(), share * crew.massEach(), crew.x(), crew.yMax(), crew.height()));
    }

    /** Best way made good to windward (m/s). */
    private static double upwind(Boat boat, double windKn) {
        return points(boat, windKn, angles(40, 50, 10)).stream()
                .filter(point -> point.mode() == TargetMode.UPWIND)
                .mapToDouble(point -> point.getTarget().velocityMadeGood())
                .max()
                .orElse(Double.NaN);
    }
}
