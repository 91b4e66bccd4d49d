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
import trimwright.target.Target;
import trimwright.target.TargetFinder;
import trimwright.target.TargetLimit;
import trimwright.target.TargetPoint;
import trimwright.units.Units;

/**
 * Finds aims: from Rice's formula the rise of wind that a limit must bear, from the wing's first second in that rise how much
 * moment and load come with it, and the fastest state that leaves so much free (docs/theory/aim.md). The moment is taken off the
 * boat by the crew's place, which costs what any other way of carrying less does to first order. On the hulls moment has no
 * margin: what holds the boat there are the hulls.
 */
public final class AimFinder {
    /** Steps towards the aim; chosen: the moment is then within {@link #CLOSE}. */
    private static final int STEPS = 14;

    /** Share of moment or load by which an aim may be missed (-); chosen: a tenth of what a gauge on board shows. */
    private static final double CLOSE = 0.002;

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

    /**
     * Speed that carrying so much less costs (m/s), by the target's multiplier of righting moment: at least so much, as the next
     * newton metre costs more than the last. NaN where righting moment does not bind.
     */
    public double priceAtLeast(TargetPoint point, AimLevels levels) {
        double gain = point.getTarget().bands().costs().easing(TargetLimit.RIGHTING_MOMENT);
        double arm = 0.01 * platform.boat().crew().yMax();
        double moment = arm * crewWeight();
        double less = levels.moment() - levels.momentAim();
        return less == 0 ? 0 : gain > 0 ? gain * less / moment : Double.NaN;
    }

    /** The aim at a solved target; null where a gust's flow has no answer or no state leaves enough free. */
    public @Nullable Aim aimAt(TargetPoint point) {
        AimLevels levels = levelsAt(point);
        SailingState state = point.state();
        double crew = platform.boat().crew().yMax();
        for (int i = 0; levels != null; i++) {
            double momentLeft = levels.momentMost() - levels.moment();
            double loadLeft = levels.loadMost() - levels.load();
            double momentClose = CLOSE * levels.momentMost();
            double loadClose = CLOSE * levels.loadMost();
            boolean isLow = momentLeft >= -momentClose && loadLeft >= -loadClose;
            boolean isClose = i == 0 || i == STEPS || momentLeft <= momentClose || loadLeft <= loadClose;
            if (isLow && isClose) {
                return new Aim(point, state, levels);
            }
            if (i == STEPS) {
                return null;
            }
            boolean isMomentAtFault = momentLeft < -momentClose || loadLeft > loadClose;
            crew += isMomentAtFault ? momentLeft / crewWeight() : 0;
            Balance found = sailed(point, state, crew, levels.loadMost());
            if (found == null) {
                return null;
            }
            state = found.state();
            levels = levels(point, state, found.rightingMoment(), found.wing().sheetLoad());
        }
        return null;
    }

    private double crewWeight() {
        return platform.boat().crew().mass() * Units.G;
    }

    private @Nullable Balance sailed(TargetPoint point, SailingState near, double crew, double loadMax) {
        double y = Math.min(crew, platform.boat().crew().yMax());
        return new TargetFinder(platform.withSheetLoadMax(loadMax), held, foils)
                .bestOf(point.mode(), point.branch(), point.trueWindSpeed(), near, Map.of(Variable.CREW_PLACE, y));
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
        GustsFelt quick = gusts(point, answer, GustAct.IN_TIME);
        WingAtOnce gust = WingAtOnce.of(platform, state, wind + quick.riseFor(day.rate()), 0);
        if (gust == null) {
            return null;
        }
        double shed = (before.heelingMoment() - eased.heelingMoment()) / EASED;
        double angle = shed > 0 ? Math.max(0, gust.heelingMoment() - before.heelingMoment()) / shed : 0;
        answer += angle / easeRate();
        GustsFelt forMoment = gusts(point, answer, GustAct.IN_TIME);
        GustsFelt forLoad = gusts(point, answer, 0);
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

    private GustsFelt gusts(TargetPoint point, double answer, double shortest) {
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
