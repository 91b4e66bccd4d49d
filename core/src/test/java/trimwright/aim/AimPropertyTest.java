package trimwright.aim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import trimwright.air.AirState;
import trimwright.air.WindProfile;
import trimwright.boat.Boat;
import trimwright.boat.Side;
import trimwright.boat.Whimbrel14;
import trimwright.platform.Balance;
import trimwright.platform.Conditions;
import trimwright.platform.FoilSet;
import trimwright.platform.Platform;
import trimwright.target.TargetFinder;
import trimwright.target.TargetMode;
import trimwright.target.TargetPoint;
import trimwright.units.Units;
import trimwright.water.WaterState;

/** The gust that an aim is made for, put on the boat as she is sailed there, with no code of the aim. */
class AimPropertyTest {
    private static final Boat BOAT = Whimbrel14.boat();
    private static final Platform PLATFORM =
            new Platform(BOAT, BOAT.getWing("tall"), AirState.STANDARD, WaterState.sea(Units.fromCelsius(15)));
    private static final double WIND = Units.fromKnots(20);
    private static final List<TargetPoint> POINTS =
            new TargetFinder(PLATFORM, Map.of()).pointsAt(WIND, List.of(Units.fromDegrees(90), Units.fromDegrees(140)));

    /** An aim is found to 0.2 per cent; the wing's flow, begun from elsewhere, to less. */
    private static final double CLOSE = 0.004;

    private static TargetPoint point(TargetMode mode) {
        return POINTS.stream()
                .filter(point -> point.mode() == mode && point.isFoiling() && point.isSolved())
                .findFirst()
                .orElseThrow();
    }

    private static Aim aim(TargetMode mode, double turbulence) {
        return Objects.requireNonNull(new AimFinder(PLATFORM, new Gustiness(turbulence, 0.003)).aimAt(point(mode)));
    }

    private static Balance inWind(Aim aim, double wind) {
        Conditions conditions = new Conditions(WindProfile.overSea(wind), Side.STARBOARD, FoilSet.LEEWARD_DOWN);
        return Objects.requireNonNull(PLATFORM.balance(aim.state(), conditions, null));
    }

    @Test
    void inTheGustAskedForMomentOrLoadComesToItsLimitAndNotPastIt() {
        for (TargetMode mode : TargetMode.values()) {
            Aim aim = aim(mode, 0.08);
            assertTrue(aim.isBelowTarget());
            Balance before = inWind(aim, WIND);
            assertTrue(before.residual() < 1e-5, mode + ": " + before.residual());
            AimLevels levels = aim.levels();
            assertTrue(levels.moment() < 0.99 * levels.momentLimit());
            double moment = before.rightingMoment() * heeling(aim, levels.momentRise()) / heeling(aim, 0);
            double load = inWind(aim, WIND + levels.loadRise()).wing().sheetLoad();
            double full = Math.max(moment / levels.momentLimit(), load / levels.loadLimit());
            assertEquals(1, full, CLOSE, mode.toString());
        }
    }

    private static double heeling(Aim aim, double rise) {
        Balance balance = inWind(aim, WIND + rise);
        return PLATFORM.heelingMoment(aim.state(), balance.conditions(), balance.wing());
    }

    @Test
    void aGustierDayAndASeldomerPassingTakeMoreOff() {
        Aim calm = aim(TargetMode.UPWIND, 0.05);
        Aim usual = aim(TargetMode.UPWIND, 0.08);
        assertTrue(usual.levels().moment() < calm.levels().moment());
        assertTrue(usual.lost() > calm.lost() && calm.lost() > 0);
        Aim often = Objects.requireNonNull(
                new AimFinder(PLATFORM, new Gustiness(0.08, 0.3)).aimAt(point(TargetMode.UPWIND)));
        assertTrue(often.levels().moment() > usual.levels().moment());
    }

    /** The next newton metre costs more than the last, so the multiplier tells the least price. */
    @Test
    void thePriceByTheMultiplierIsNoMoreThanThatOfTheSearch() {
        for (TargetMode mode : TargetMode.values()) {
            AimFinder finder = new AimFinder(PLATFORM, new Gustiness(0.03, 0.003));
            Aim aim = Objects.requireNonNull(finder.aimAt(point(mode)));
            AimLevels levels = Objects.requireNonNull(finder.levelsAt(point(mode)));
            double price = finder.priceAtLeast(point(mode), levels);
            assertTrue(price > 0.3 * aim.lost() && price < 1.05 * aim.lost(), mode + ": " + price + " " + aim.lost());
        }
    }

    @Test
    void inALightWindOnTheHullsTheTargetIsTheAim() {
        TargetPoint slow = new TargetFinder(PLATFORM, Map.of())
                .pointsAt(Units.fromKnots(5), List.of(Units.fromDegrees(90))).stream()
                        .filter(point -> !point.isFoiling() && point.isSolved())
                        .findFirst()
                        .orElseThrow();
        Aim aim = new AimFinder(PLATFORM, new Gustiness(0.08, 0.003)).aimAt(slow);
        assertNotNull(aim);
        assertFalse(aim.isBelowTarget());
        assertEquals(0, aim.lost(), 0);
        assertEquals(1, aim.speedShare(), 0);
    }
}
