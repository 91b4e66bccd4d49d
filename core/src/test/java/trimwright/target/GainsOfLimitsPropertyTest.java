package trimwright.target;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import trimwright.air.AirState;
import trimwright.air.WindProfile;
import trimwright.boat.Boat;
import trimwright.boat.Crew;
import trimwright.boat.Limits;
import trimwright.boat.SheetTackle;
import trimwright.boat.Side;
import trimwright.boat.TrimRange;
import trimwright.boat.Whimbrel14;
import trimwright.boat.WingSpec;
import trimwright.platform.Conditions;
import trimwright.platform.FoilSet;
import trimwright.platform.Platform;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.target.search.Answer;
import trimwright.units.Units;
import trimwright.water.WaterState;

/**
 * What a book says would be gained if a limit were one per cent wider is what books of boats gain whose files have that limit one per
 * cent wider and narrower, computed from scratch. Each boat is searched again from the beginning.
 */
class GainsOfLimitsPropertyTest {
    private static final double SHARE = 0.01;

    /** Of the gain: curve over two per cent of a limit, and other limits that take over within it. */
    private static final double OFF = 0.1;

    /** A thousandth of a knot (m/s), which nobody sails by; gains of less than twice that are not compared. */
    private static final double ROUNDING = 5e-4;

    private final Set<TargetLimit> seen = EnumSet.noneOf(TargetLimit.class);

    @Test
    void aWiderLimitGainsWhatTheBookSays() {
        for (double windKn : new double[] {14, 20, 26}) {
            for (double angleDeg : new double[] {60, 100, 130}) {
                double wind = Units.fromKnots(windKn);
                double angle = Units.fromDegrees(angleDeg);
                TargetPoint point = point(Whimbrel14.boat(), wind, angle);
                for (TargetLimit limit : point.getTarget().limits()) {
                    Boat wider = with(limit, 1 + SHARE);
                    Boat narrower = with(limit, 1 - SHARE);
                    double told = point.getTarget().bands().costs().easing(limit);
                    if (wider != null && narrower != null && told > 2 * ROUNDING) {
                        double gained = (speed(wider, wind, angle) - speed(narrower, wind, angle)) / 2;
                        assertEquals(
                                gained,
                                told,
                                OFF * told + ROUNDING,
                                limit + ", " + windKn + " kn at " + angleDeg + " deg");
                        seen.add(limit);
                    }
                }
            }
        }
        assertTrue(
                seen.containsAll(
                        Set.of(TargetLimit.ELEVATOR_DOWN_FORCE, TargetLimit.SHEET_LOAD, TargetLimit.RIGHTING_MOMENT)),
                seen.toString());
    }

    /** The boat with that limit of her file so many times as wide; null where it is no number of the file. */
    private static @Nullable Boat with(TargetLimit limit, double times) {
        Boat boat = Whimbrel14.boat();
        Limits limits = boat.limits();
        return switch (limit) {
            case RIGHTING_MOMENT ->
                boat.withCrew(new Crew(
                        boat.crew().count(),
                        boat.crew().massEach(),
                        boat.crew().x(),
                        times * boat.crew().yMax(),
                        boat.crew().height()));
            case ELEVATOR_DOWN_FORCE ->
                with(boat, boat.wings(), limits.withElevatorDownForce(times * limits.elevatorDownForce()));
            case SHEET_LOAD ->
                with(
                        boat,
                        boat.wings().stream()
                                .map(wing -> with(
                                        wing,
                                        wing.trim(),
                                        wing.sheet()
                                                .withLoadMax(
                                                        times * wing.sheet().loadMax())))
                                .toList(),
                        limits);
            case CAMBER_MAX ->
                with(
                        boat,
                        boat.wings().stream()
                                .map(wing -> with(wing, camber(wing.trim(), times), wing.sheet()))
                                .toList(),
                        limits);
            case TWIST_MAX ->
                with(
                        boat,
                        boat.wings().stream()
                                .map(wing -> with(wing, twist(wing.trim(), times), wing.sheet()))
                                .toList(),
                        limits);
            default -> null;
        };
    }

    private static TrimRange camber(TrimRange range, double times) {
        return new TrimRange(
                times * range.camberMax(),
                range.twistMax(),
                range.headFlapMin(),
                range.sheetMax(),
                range.stallMarginMin());
    }

    private static TrimRange twist(TrimRange range, double times) {
        return new TrimRange(
                range.camberMax(),
                times * range.twistMax(),
                times * range.headFlapMin(),
                range.sheetMax(),
                range.stallMarginMin());
    }

    private static WingSpec with(WingSpec wing, TrimRange trim, SheetTackle sheet) {
        return new WingSpec(
                wing.id(),
                wing.stations(),
                wing.footHeight(),
                wing.x(),
                wing.flapChordRatio(),
                wing.turningAxisRatio(),
                wing.flapPanels(),
                wing.footPlate(),
                wing.slotGapRatio(),
                wing.mass(),
                wing.massHeight(),
                trim,
                sheet);
    }

    private static Boat with(Boat boat, List<WingSpec> wings, Limits limits) {
        return new Boat(
                boat.name(),
                boat.title(),
                boat.hulls(),
                boat.platform(),
                boat.crew(),
                wings,
                boat.foils(),
                boat.foilSets(),
                boat.windage(),
                limits,
                boat.windSensor(),
                boat.antenna(),
                boat.handling());
    }

    private static TargetPoint point(Boat boat, double wind, double angle) {
        Platform platform = new Platform(boat, boat.getWing("tall"), AirState.STANDARD, WaterState.sea(288.15));
        return new TargetFinder(platform, Map.of())
                .pointsAt(wind, List.of(angle)).stream()
                        .filter(each -> each.mode() == TargetMode.ANGLE && each.isFoiling() && each.isSolved())
                        .findFirst()
                        .orElseThrow();
    }

    /** Best speed (m/s), not that of the steadiest trim within 0.05 per cent of it, which is what a target shows. */
    private static double speed(Boat boat, double wind, double angle) {
        Platform platform = new Platform(boat, boat.getWing("tall"), AirState.STANDARD, WaterState.sea(288.15));
        Conditions conditions = new Conditions(WindProfile.overSea(wind), Side.STARBOARD, FoilSet.LEEWARD_DOWN);
        Task task = new Task(platform, conditions, Branch.FOILING, Map.of());
        Answer first = new Ladder(task).first();
        assertTrue(first != null);
        Sweep sweep = new Sweep(task, List.of(angle));
        double found = SailingState.ofScaled(first.x()).get(Variable.TRUE_WIND_ANGLE);
        sweep.go(first, 0, found < angle ? 1 : -1);
        Answer best = sweep.at(0);
        assertTrue(best != null && best.isConverged());
        return SailingState.ofScaled(best.x()).get(Variable.BOAT_SPEED);
    }
}
