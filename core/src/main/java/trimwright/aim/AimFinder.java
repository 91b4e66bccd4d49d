package trimwright.aim;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.boat.Handling;
import trimwright.card.GustAct;
import trimwright.card.GustWatch;
import trimwright.card.WingAtOnce;
import trimwright.platform.Balance;
import trimwright.platform.FoilSet;
import trimwright.platform.Platform;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.target.BelowLimits;
import trimwright.target.Target;
import trimwright.target.TargetPoint;
import trimwright.units.Units;
import trimwright.weather.FilteredGusts;

/**
 * Finds aims: from Rice's formula the rise of wind that a limit must bear, from the wing's first second in that rise how much
 * moment and load come with it, and the fastest state that leaves so much free (docs/theory/aim.md): the crew as far out as before,
 * less held down by the elevators. On the hulls moment has no margin: what holds the boat there are the hulls.
 */
public final class AimFinder {
    /** Most searches for one aim; chosen: one or two come within {@link #CLOSE}. */
    private static final int STEPS = 8;

    /** Share of moment or load by which an aim may be missed (-); chosen: a tenth of what a gauge on board shows. */
    private static final double CLOSE = 0.002;

    /** How the most to be carried falls with what is carried (-); chosen, the demo boat's upwind: only where the search begins. */
    private static final double USUAL_SLOPE = 0.07;

    /** Bound of that slope (-); chosen. */
    private static final double MOST_SLOPE = 0.5;

    /** By how much the sheet is eased to see what easing does (rad); chosen. */
    private static final double EASED = Units.fromDegrees(1);

    /** How fast a sheet goes out where the boat file says nothing (rad/s); chosen, half of the demo boat's. */
    private static final double EASE_RATE = Units.fromDegrees(20);

    private final Platform platform;
    private final Map<Variable, Double> held;
    private final FoilSet foils;
    private final Gustiness day;

    /** With all controls free. */
    public AimFinder(Platform platform, Gustiness day) {
        this(platform, Map.of(), FoilSet.LEEWARD_DOWN, day);
    }

    /**
     * @param platform of the targets
     * @param held controls that the targets hold, with their values (SI)
     * @param foils that they have down
     */
    public AimFinder(Platform platform, Map<Variable, Double> held, FoilSet foils, Gustiness day) {
        this.platform = platform;
        this.held = Map.copyOf(held);
        this.foils = foils;
        this.day = day;
    }

    /** What a solved target's own trim leaves to be carried: no search; null where a gust's flow has no answer. */
    public @Nullable AimLevels levelsAt(TargetPoint point) {
        Target target = point.getTarget();
        return levels(
                point,
                point.state(),
                target.loads().rightingMoment(),
                target.loads().sheetLoad());
    }

    /** The aim at a solved target; null where a gust's flow has no answer or no state leaves enough free. */
    public @Nullable Aim aimAt(TargetPoint point) {
        AimLevels levels = levelsAt(point);
        if (levels == null || isLow(levels)) {
            return levels == null ? null : new Aim(point, point.state(), levels);
        }
        double loadMax = levels.loadMost();
        BelowLimits lower = new BelowLimits(platform.withSheetLoadMax(loadMax), held, foils, point);
        double asked = meeting(levels, USUAL_SLOPE);
        for (int i = 0; i < STEPS; i++) {
            Balance found = lower.bestUnder(asked);
            if (found == null) {
                return null;
            }
            SailingState state = found.state();
            AimLevels before = levels;
            levels = levels(point, state, found.rightingMoment(), found.wing().sheetLoad());
            if (levels == null) {
                return null;
            }
            boolean isMomentClose = levels.moment() < (1 - CLOSE) * asked || levels.momentMost() < (1 + CLOSE) * asked;
            boolean isLoadClose = levels.load() < (1 - CLOSE) * loadMax || levels.loadMost() < (1 + CLOSE) * loadMax;
            if (isLow(levels) && isMomentClose && isLoadClose) {
                return new Aim(point, state, levels);
            }
            asked = meeting(levels, slope(before, levels));
            // A limit of the sheet that does not bind need not be followed.
            if (!isLoadClose || levels.load() > (1 + CLOSE) * levels.loadMost()) {
                loadMax = levels.loadMost();
                lower = lower.withSheetLoadMax(loadMax);
            }
        }
        return null;
    }

    /** The moment at which what is carried and the most to be carried meet, if the latter changes with the former by a slope (-). */
    private static double meeting(AimLevels levels, double slope) {
        return levels.moment() + (levels.momentMost() - levels.moment()) / (1 - slope);
    }

    /** How the most to be carried changes with what is carried (-), from two states; bounded so that a step stays a step. */
    private static double slope(AimLevels one, AimLevels other) {
        double carried = other.moment() - one.moment();
        double slope = (other.momentMost() - one.momentMost()) / carried;
        return Math.abs(carried) > CLOSE * one.moment() ? Math.max(-MOST_SLOPE, Math.min(MOST_SLOPE, slope)) : 0;
    }

    private static boolean isLow(AimLevels levels) {
        return levels.moment() <= (1 + CLOSE) * levels.momentMost() && levels.load() <= (1 + CLOSE) * levels.loadMost();
    }

    private @Nullable AimLevels levels(TargetPoint point, SailingState state, double carried, double pulled) {
        double wind = point.trueWindSpeed();
        WingAtOnce before = WingAtOnce.of(platform, state, wind, 0);
        WingAtOnce eased = WingAtOnce.of(platform, state, wind, EASED);
        if (before == null || eased == null || !(before.heelingMoment() > 0)) {
            return null;
        }
        // First the rise for a crew that only has to think, then for one whose sheet must run as far as that rise asks.
        double answer = GustWatch.REACTION;
        FilteredGusts quick = gusts(point, answer, GustAct.IN_TIME);
        WingAtOnce gust = WingAtOnce.of(platform, state, wind + quick.riseFor(day.rate()), 0);
        if (gust == null) {
            return null;
        }
        double shed = (before.heelingMoment() - eased.heelingMoment()) / EASED;
        double angle = shed > 0 ? Math.max(0, gust.heelingMoment() - before.heelingMoment()) / shed : 0;
        answer += angle / easeRate();
        FilteredGusts forMoment = gusts(point, answer, GustAct.IN_TIME);
        FilteredGusts forLoad = gusts(point, answer, 0);
        double momentRise = forMoment.riseFor(day.rate());
        double loadRise = forLoad.riseFor(day.rate());
        WingAtOnce moment = WingAtOnce.of(platform, state, wind + momentRise, 0);
        WingAtOnce load = WingAtOnce.of(platform, state, wind + loadRise, 0);
        if (moment == null || load == null) {
            return null;
        }
        Target target = point.getTarget();
        double momentLimit = Math.max(
                target.loads().rightingMoment(),
                target.loads().rightingMoment() / target.loads().rightingMomentRatio());
        double loadLimit = platform.wing().sheet().loadMax();
        double momentJump = point.isFoiling() ? moment.heelingMoment() / before.heelingMoment() : 1;
        double loadJump = before.sheetLoad() > 0 ? load.sheetLoad() / before.sheetLoad() : 1;
        return new AimLevels(
                carried,
                momentLimit,
                momentLimit / Math.max(1, momentJump),
                pulled,
                loadLimit,
                loadLimit / Math.max(1, loadJump),
                forMoment,
                momentRise,
                forLoad,
                loadRise);
    }

    private FilteredGusts gusts(TargetPoint point, double answer, double shortest) {
        return GustsFelt.of(
                day.turbulence() * point.trueWindSpeed(),
                point.getTarget().apparentWindSpeed(),
                platform.wing().span(),
                answer,
                shortest);
    }

    private double easeRate() {
        @Nullable Handling handling = platform.boat().handling();
        return handling == null ? EASE_RATE : handling.rates().sheetEase();
    }
}
