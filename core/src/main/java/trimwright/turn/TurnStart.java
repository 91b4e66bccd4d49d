package trimwright.turn;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import trimwright.crew.ComputedHand;
import trimwright.crew.DoneTurn;
import trimwright.crew.DrillCrew;
import trimwright.crew.Habits;
import trimwright.crew.HelmOrder;
import trimwright.crew.HelmOrder.Way;
import trimwright.crew.Sight;
import trimwright.crew.TurnConduct;
import trimwright.crew.TurnKind;
import trimwright.crew.TurnOrder;
import trimwright.motion.MotionLoads;
import trimwright.motion.MotionModel;
import trimwright.motion.MotionState;
import trimwright.practice.Bounds;
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

    private static final double COUNTED_TACK = 60;

    /** Height of the lower hull over the water from which a turn is not near to touching (m): chosen. */
    public static final double CLEAR = 0.5;

    private static final double STEP = MotionModel.STEP;
    private static final int STRIPS = 16;
    private static final long NEVER = -1;
    /** Share of the card's speed with which she begins (-): chosen. */
    private static final double SPEED = 0.95;

    private final TurnSetup setup;
    private final Bounds bounds;
    private final TurnChance chance;
    private final MotionModel model;
    private final Watch watch;
    private final ComputedHand hand;
    private final DrillCrew crew;
    private final MotionState state;
    private final double time;

    public TurnStart(TurnSetup setup, TurnChance chance) {
        this.setup = setup;
        bounds = new Bounds(setup.boat(), setup.wing());
        this.chance = chance;
        WeatherSpec weather = new WeatherSpec(
                setup.wind(), /* from= */ 0, /* height= */ 10, setup.intensity(), TurbulenceSpectrum.KAIMAL, 0, 0, 0);
        model = new MotionModel(setup.boat(), setup.wing(), setup.air(), setup.water(), STRIPS);
        hand = new ComputedHand(setup.wing(), Habits.NONE, 1);
        crew = new DrillCrew(setup.boat(), setup.aims(), hand, new HelmOrder(before(), 1));
        MotionState now = FirstState.onTheFoils(model, setup.boat(), setup.aims(), setup.wind(), before(), SPEED);
        watch = new Watch(model, setup.wing(), new WindField(weather, chance.seed()), now);
        long steps = Math.round(chance.begin() / STEP);
        for (long i = 0; i < steps; i++) {
            Sight sight = watch.look(now, i * STEP, STEP);
            now = model.step(now, crew.work(sight, STEP), watch.wind(), STEP);
        }
        state = now;
        time = steps * STEP;
    }

    /**
     * Turns with the hand that is made from the one that has sailed her up to now.
     *
     * @param lead from the word until the driver is told to turn (s)
     * @param conduct of driver and flight controller, null for the usual one
     */
    public TurnOutcome turn(
            Function<ComputedHand, ? extends TurnHand> made, double lead, @Nullable TurnConduct conduct) {
        return new Sailing(made.apply(hand), Math.round(lead / STEP), conduct).outcome();
    }

    /** Turns by those moves. */
    public TurnOutcome turn(TurnMoves moves) {
        return turn(straight -> new PlannedHand(moves, chance, setup.wing(), straight), moves.lead(), moves.conduct());
    }

    /** Turns as one does without a plan. */
    public TurnOutcome turnNaively() {
        return turn(straight -> new NaiveHand(setup.wing(), straight), 0, null);
    }

    /** Sails straight on instead: what these gusts do to a boat that does not turn. */
    public TurnOutcome straight() {
        return new Sailing(new NaiveHand(setup.wing(), hand), NEVER, null).outcome();
    }

    /** Time past a limit, without what straight sailing had before the word. */
    private static final class Passed {
        private boolean isBefore = true;
        private double time;

        /** Whether what is past now is the turn's own. */
        boolean counts() {
            return !isBefore;
        }

        void see(boolean past) {
            isBefore &= past;
            time += past && !isBefore ? STEP : 0;
        }
    }

    private final class Sailing {
        private final TurnHand trimmer;
        private final MotionModel copy = model.copy();
        private final Watch sees = watch.copy(copy);
        private final DrillCrew sails;
        private double metres;
        private double least = Double.POSITIVE_INFINITY;
        private double wet;
        private boolean capsized;
        private final Passed elevator = new Passed();
        private final Passed sheet = new Passed();
        private double leeward;
        private double windward;
        private double widest;
        private double closest;
        private double helm = Double.NaN;
        private double settled = Double.NaN;

        Sailing(TurnHand trimmer, long told, @Nullable TurnConduct conduct) {
            this.trimmer = trimmer;
            sails = crew.copy(trimmer);
            if (conduct != null) {
                sails.conduct(conduct);
            }
            trimmer.hear(time);
            boolean wasWet = model.loads().hullLift() > 0;
            long until = Math.round(counted(setup.kind()) / STEP);
            MotionState now = state;
            for (long i = 0; i < until && !capsized; i++) {
                double at = time + i * STEP;
                Sight sight = sees.look(now, at, STEP);
                if (i == told) {
                    sails.tell(after());
                }
                MotionState next = copy.step(now, sails.work(sight, STEP), sees.wind(), STEP);
                TurnOrder turning = sails.turning();
                if (turning != null && Double.isNaN(helm)) {
                    helm = at - time;
                }
                if (!Double.isNaN(helm) && sails.isSettled() && Double.isNaN(settled)) {
                    settled = at - time;
                }
                add(sight, wasWet);
                now = next;
            }
        }

        private void add(Sight sight, boolean wasWet) {
            MotionLoads loads = sight.loads();
            double best = sails.bestProgress(sight);
            metres += (best - sails.progress(sight)) * STEP;
            least = Math.min(least, sight.speed());
            wet += !wasWet && loads.hullLift() > 0 ? STEP : 0;
            if (Double.isNaN(settled)) {
                elevator.see(bounds.isPastElevator(loads));
                sheet.see(bounds.isPastSheet(loads));
                if (elevator.counts() && sheet.counts()) {
                    closest = Math.max(closest, bounds.share(loads));
                }
            }
            double roll = sight.state().pose().roll();
            double heel = (sight.felt().angle() >= 0 ? 1 : -1) * roll;
            leeward = Math.max(leeward, -heel);
            windward = Math.max(windward, heel);
            closest = Math.max(closest, heel / TurnTally.floor(setup));
            if (!wasWet && setup.touching() == TurnSetup.Touching.SPOILS) {
                double clear = sight.rideHeight()
                        - StrictMath.sin(Math.abs(roll)) * setup.boat().hulls().spacing() / 2;
                closest = Math.max(closest, 1 - clear / CLEAR);
            }
            widest = Math.max(widest, Math.abs(sight.felt().angle()));
            capsized = Bounds.isCapsized(sight);
        }

        TurnOutcome outcome() {
            double went = time + helm;
            double over = trimmer.over() - went;
            double on = trimmer.on() - went;
            double done = Double.NaN;
            for (DoneTurn turn : sails.turns()) {
                if (turn.order().start() >= time) {
                    done = turn.end() - went;
                    break;
                }
            }
            return new TurnOutcome(
                    metres,
                    least,
                    wet,
                    capsized,
                    elevator.time,
                    sheet.time,
                    leeward,
                    windward,
                    widest,
                    helm,
                    over,
                    on,
                    done,
                    closest,
                    settled - helm);
        }
    }

    private Way before() {
        return setup.kind() == TurnKind.TACK || setup.kind() == TurnKind.BEAR_AWAY ? Way.UPWIND : Way.DOWNWIND;
    }

    private HelmOrder after() {
        boolean crosses = setup.kind() == TurnKind.TACK || setup.kind() == TurnKind.GYBE;
        return new HelmOrder(wayAfter(setup.kind()), crosses ? -1 : 1);
    }

    /**
     * How long after the word a turn counts (s): chosen, by then a sound crew is back on its speed. A tack that comes off the foils
     * needs longer: over half a minute a boat that stays slow on the best angle seems to win against one that bears off to fly.
     */
    public static double counted(TurnKind kind) {
        return kind == TurnKind.TACK ? COUNTED_TACK : COUNTED;
    }

    /** How she sails after a turn of that kind. */
    public static Way wayAfter(TurnKind kind) {
        return kind == TurnKind.TACK || kind == TurnKind.ROUND_UP ? Way.UPWIND : Way.DOWNWIND;
    }
}
