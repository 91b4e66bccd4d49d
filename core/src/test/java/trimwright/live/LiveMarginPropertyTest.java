package trimwright.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import trimwright.aim.Aim;
import trimwright.aim.AimFinder;
import trimwright.aim.Gustiness;
import trimwright.air.AirState;
import trimwright.boat.Boat;
import trimwright.boat.Whimbrel14;
import trimwright.platform.Platform;
import trimwright.platform.Variable;
import trimwright.target.TargetFinder;
import trimwright.target.TargetMode;
import trimwright.target.TargetPoint;
import trimwright.units.Units;
import trimwright.water.WaterState;

/** What the measured unrest takes off a target afloat. */
class LiveMarginPropertyTest {
    private static final Boat BOAT = Whimbrel14.boat();
    private static final Platform PLATFORM =
            new Platform(BOAT, BOAT.getWing("tall"), AirState.STANDARD, WaterState.sea(Units.fromCelsius(15)));
    private static final List<TargetPoint> POINTS = new TargetFinder(PLATFORM, Map.of())
            .pointsAt(Units.fromKnots(18), List.of(Units.fromDegrees(90), Units.fromDegrees(100)));
    private static final long SECOND = 1_000_000_000L;

    private static TargetPoint at(double degrees) {
        return POINTS.stream()
                .filter(point -> point.mode() == TargetMode.ANGLE && point.isFoiling() && point.isSolved())
                .filter(point -> Math.abs(point.trueWindAngle() - Units.fromDegrees(degrees)) < 1e-9)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void itIsTheAimOfTheMeasuredTurbulenceAndOfTheUsualOneWhileNoneIsKnown() {
        for (double turbulence : new double[] {0.05, 0.12, Double.NaN}) {
            LiveMargin.Margin margin = new LiveMargin(PLATFORM).at(0, at(90), turbulence);
            double day = Double.isNaN(turbulence) ? 0.08 : turbulence;
            Aim aim = Objects.requireNonNull(new AimFinder(PLATFORM, new Gustiness(day, 0.003)).aimAt(at(90)));
            double carried = at(90).getTarget().loads().rightingMoment();
            assertEquals(aim.levels().moment() / carried, margin.moment(), 0.003);
            assertEquals(aim.boatSpeed() / at(90).getTarget().boatSpeed(), margin.speed(), 1e-6);
            double sheet =
                    aim.state().get(Variable.SHEET) - at(90).getTarget().trim().sheet();
            assertEquals(sheet, margin.sheet(), 1e-9);
        }
    }

    @Test
    void theGustierTheLessAndNeverMoreThanTheTarget() {
        double last = 1;
        for (double turbulence : new double[] {0, 0.02, 0.06, 0.1, 0.2, 2}) {
            double moment = new LiveMargin(PLATFORM).at(0, at(90), turbulence).moment();
            assertTrue(moment <= last, turbulence + ": " + moment);
            last = moment;
        }
        assertTrue(last < 0.7);
    }

    @Test
    void itIsFoundAnewAfterAWhileOrElsewhereOnly() {
        LiveMargin margin = new LiveMargin(PLATFORM);
        LiveMargin.Margin first = margin.at(0, at(90), 0.08);
        assertSame(first, margin.at(SECOND, at(90), 0.2));
        assertTrue(margin.at(11 * SECOND, at(90), 0.2).moment() < first.moment());
        LiveMargin.Margin there = margin.at(12 * SECOND, at(100), 0.08);
        assertEquals(new LiveMargin(PLATFORM).at(0, at(100), 0.08), there);
    }
}
