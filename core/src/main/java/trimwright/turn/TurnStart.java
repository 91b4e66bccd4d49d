package trimwright.turn;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.crew.ComputedHand;
import trimwright.crew.DrillCrew;
import trimwright.crew.Habits;
import trimwright.crew.HelmOrder;
import trimwright.crew.HelmOrder.Way;
import trimwright.crew.Sight;
import trimwright.crew.TurnKind;
import trimwright.motion.MotionModel;
import trimwright.motion.MotionState;
import trimwright.practice.FirstState;
import trimwright.practice.Watch;
import trimwright.weather.TurbulenceSpectrum;
import trimwright.weather.WeatherSpec;
import trimwright.weather.WindField;

/**
 * A boat that sails straight, wind from starboard, up to the driver's word; from there any number of turns can be tried, each
 * on a copy. The same setup and chances give the same boat.
 */
public final class TurnStart {
    private static final double COUNTED = 30;

    private static final double COUNTED_OFF = 60;

    /** Height of the lower hull over the water from which a turn is not near to touching (m): chosen. */
    public static final double CLEAR = 0.5;

    private static final double STEP = MotionModel.STEP;
    private static final int STRIPS = 16;
    private static final double NEVER = -1;
    /** More time for a boat that is kept down before the word (s): chosen, by then she has come down and lost her way. */
    private static final double COMING_DOWN = 20;

    /** Share of the card's speed with which she begins (-): chosen. */
    private static final double SPEED = 0.95;

    private final TurnSetup setup;
    private final TurnChance chance;
    private final ComputedHand hand;
    private final TurnSailing.Ready ready;

    public TurnStart(TurnSetup setup, TurnChance chance) {
        this(setup, chance, MotionModel.Line.FULL);
    }

    /** @param line how the wing's equations are solved; in full unless said */
    public TurnStart(TurnSetup setup, TurnChance chance, MotionModel.Line line) {
        this.setup = setup;
        this.chance = chance;
        WeatherSpec weather = new WeatherSpec(
                setup.wind(), /* from= */ 0, /* height= */ 10, setup.intensity(), TurbulenceSpectrum.KAIMAL, 0, 0, 0);
        MotionModel model = new MotionModel(
                setup.boat(), setup.wing(), setup.air(), setup.water(), STRIPS, MotionModel.Lift.LAGGING, line);
        hand = new ComputedHand(setup.wing(), Habits.NONE, 1);
        Way way = before(setup.kind());
        DrillCrew crew = new DrillCrew(setup.boat(), setup.aims(), hand, new HelmOrder(way, 1));
        MotionState now = FirstState.onTheFoils(model, setup.boat(), setup.aims(), setup.wind(), way, SPEED);
        double settling = chance.begin();
        if (setup.begin() == TurnBegin.HULLS) {
            crew.keepDown();
            settling += COMING_DOWN;
        }
        Watch watch = new Watch(model, setup.wing(), new WindField(weather, chance.seed()), now);
        List<Double> good = new ArrayList<>();
        long steps = Math.round(settling / STEP);
        for (long i = 0; i < steps; i++) {
            Sight sight = watch.look(now, i * STEP, STEP);
            now = model.step(now, crew.work(sight, STEP), watch.wind(), STEP);
            if (i >= steps - TurnGauge.BEFORE / STEP) {
                good.add(TurnGauge.good(sight, way));
            }
        }
        ready = new TurnSailing.Ready(model, watch, crew, now, steps * STEP, good);
    }

    /** Turns by those moves. */
    public TurnOutcome turn(TurnMoves moves) {
        return turn(moves, null);
    }

    /**
     * Turns by those moves.
     *
     * @param abort when to give the turn up, null for never
     */
    public TurnOutcome turn(TurnMoves moves, @Nullable TurnAbort abort) {
        TurnHand trimmer = new PlannedHand(moves, chance, setup.wing(), hand);
        return sail(trimmer, new TurnSailing.How(moves.lead(), moves.conduct(), abort));
    }

    /** Turns as one does without a plan. */
    public TurnOutcome turnNaively() {
        return sail(new NaiveHand(setup.wing(), hand), new TurnSailing.How(0, null, null));
    }

    /** Sails straight on instead: what these gusts do to a boat that does not turn. */
    public TurnOutcome straight() {
        return sail(new NaiveHand(setup.wing(), hand), new TurnSailing.How(NEVER, null, null));
    }

    private TurnOutcome sail(TurnHand trimmer, TurnSailing.How how) {
        return new TurnSailing(setup, ready, trimmer, how).outcome();
    }

    static Way before(TurnKind kind) {
        return kind == TurnKind.TACK || kind == TurnKind.BEAR_AWAY ? Way.UPWIND : Way.DOWNWIND;
    }

    static HelmOrder after(TurnKind kind) {
        boolean crosses = kind == TurnKind.TACK || kind == TurnKind.GYBE;
        return new HelmOrder(wayAfter(kind), crosses ? -1 : 1);
    }

    /**
     * How long after the word a turn counts (s): chosen, by then a sound crew is back on its speed. A turn that comes off the foils
     * needs longer: over half a minute a boat that stays slow on the best angle seems to win against one that bears off to fly.
     */
    public static double counted(TurnSetup setup) {
        return setup.kind() == TurnKind.TACK || setup.begin() != TurnBegin.FOILS ? COUNTED_OFF : COUNTED;
    }

    /** How she sails after a turn of that kind. */
    public static Way wayAfter(TurnKind kind) {
        return kind == TurnKind.TACK || kind == TurnKind.ROUND_UP ? Way.UPWIND : Way.DOWNWIND;
    }
}
