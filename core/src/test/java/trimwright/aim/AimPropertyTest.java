package trimwright.aim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;
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
import trimwright.platform.Variable;
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

    /** The other ways of carrying so much, searched for by other code: the crew come in, or the elevators set apart by so much. */
    @Test
    void noOtherWayOfCarryingSoMuchIsFaster() {
        for (TargetMode mode : TargetMode.values()) {
            Aim aim = aim(mode, 0.08);
            double crewOut = BOAT.crew().yMax();
            assertEquals(crewOut, aim.state().get(Variable.CREW_PLACE), 1e-6, mode.toString());
            double best = along(inWind(aim, WIND));
            double byElevators = carrying(
                    aim,
                    apart -> Map.of(
                            Variable.CREW_PLACE,
                            crewOut,
                            Variable.ELEVATOR_DIFFERENTIAL,
                            aim.state().get(Variable.ELEVATOR_DIFFERENTIAL) + Units.fromDegrees(apart)));
            double byCrew = carrying(aim, in -> Map.of(Variable.CREW_PLACE, crewOut + in));
            assertTrue(best > 0.9995 * byElevators, mode + ": " + best + " " + byElevators);
            assertTrue(best > 1.005 * byCrew, mode + ": " + best + " " + byCrew);
        }
    }

    /** Speed along the wind with one thing stuck where the moment is that of the aim: found by secants. */
    private static double carrying(Aim aim, DoubleFunction<Map<Variable, Double>> stuck) {
        double last = 0;
        double here = -0.2;
        double lastMoment =
                Objects.requireNonNull(sailed(aim, stuck.apply(last))).rightingMoment();
        for (int i = 0; i < 20; i++) {
            Balance balance = sailed(aim, stuck.apply(here));
            if (balance == null) {
                // Too far at once for a search from the aim.
                here = (here + last) / 2;
                continue;
            }
            double moment = balance.rightingMoment();
            if (Math.abs(moment - aim.levels().moment()) < 1e-4 * moment) {
                return along(balance);
            }
            double next = here + (aim.levels().moment() - moment) * (here - last) / (moment - lastMoment);
            last = here;
            lastMoment = moment;
            here = next;
        }
        throw new AssertionError("no state that carries the aim's moment");
    }

    private static @Nullable Balance sailed(Aim aim, Map<Variable, Double> stuck) {
        TargetPoint point = aim.point();
        return new TargetFinder(PLATFORM.withSheetLoadMax(aim.levels().loadMost()), Map.of())
                .bestOf(point.mode(), point.branch(), WIND, aim.state(), stuck);
    }

    private static double along(Balance balance) {
        double angle = balance.state().get(Variable.TRUE_WIND_ANGLE);
        return balance.state().get(Variable.BOAT_SPEED) * Math.abs(Math.cos(angle));
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
