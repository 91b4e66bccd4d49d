package trimwright.turn;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.crew.DoneTurn;
import trimwright.crew.DrillCrew;
import trimwright.crew.HelmOrder;
import trimwright.crew.Sight;
import trimwright.crew.TurnConduct;
import trimwright.crew.TurnKind;
import trimwright.motion.MotionLoads;
import trimwright.motion.MotionModel;
import trimwright.motion.MotionState;
import trimwright.practice.Bounds;
import trimwright.practice.Watch;

/** One turn from the driver's word on, sailed on copies. */
final class TurnSailing {
    private static final double STEP = MotionModel.STEP;

    /** Longest that a boat is waited for to come down (s): chosen. */
    private static final double COMES_DOWN = 10;

    private final TurnSetup setup;
    private final Bounds bounds;
    private final TurnHand trimmer;
    private final DrillCrew sails;
    private final double word;
    private final TurnGauge gauge;
    private final @Nullable TurnAbort abort;
    private boolean isGivenUp;
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
    private TurnSigns signs = TurnSigns.NONE;
    private double first = Double.NaN;

    /** How one turn is sailed.
     *
     * @param lead from the word, or where she is let down from when a hull touches, until the driver is told to turn (s); negative: never
     * @param conduct of driver and flight controller, null for the usual one
     * @param abort when to give it up, null for never
     */
    record How(
            double lead,
            @Nullable TurnConduct conduct,
            @Nullable TurnAbort abort) {}

    /** A boat at the driver's word.
     *
     * @param before progress of the last seconds (m/s), oldest first
     */
    record Ready(MotionModel model, Watch watch, DrillCrew crew, MotionState state, double time, List<Double> before) {}

    TurnSailing(TurnSetup setup, Ready ready, TurnHand trimmer, How how) {
        this.setup = setup;
        this.trimmer = trimmer;
        bounds = new Bounds(setup.boat(), setup.wing());
        word = ready.time();
        abort = how.abort();
        gauge = new TurnGauge(TurnStart.wayAfter(setup.kind()), ready.before());
        sails = ready.crew().copy(trimmer);
        if (how.conduct() != null) {
            sails.conduct(how.conduct());
        }
        trimmer.hear(word);
        boolean isToTurn = how.lead() >= 0;
        if (isToTurn) {
            begin();
        } else {
            sails.letFly();
        }
        MotionModel copy = ready.model().copy();
        Watch sees = ready.watch().copy(copy);
        boolean wasWet = copy.loads().hullLift() > 0;
        double told = setup.begin() == TurnBegin.LET_DOWN ? Double.NaN : how.lead();
        long until = Math.round(TurnStart.counted(setup) / STEP);
        MotionState now = ready.state();
        for (long i = 0; i < until && !capsized; i++) {
            double passed = i * STEP;
            Sight sight = sees.look(now, word + passed, STEP);
            if (Double.isNaN(told) && (sight.loads().hullLift() > 0 || passed > COMES_DOWN)) {
                told = passed + how.lead();
            }
            if (isToTurn && passed >= told - STEP / 2) {
                sails.tell(TurnStart.after(setup.kind()));
                isToTurn = false;
            }
            MotionState next = copy.step(now, sails.work(sight, STEP), sees.wind(), STEP);
            follow(passed);
            add(sight, wasWet || setup.begin() == TurnBegin.LET_DOWN);
            now = next;
        }
    }

    private void begin() {
        switch (setup.begin()) {
            case FOILS -> {}
            case HULLS -> sails.letFly();
            case LET_DOWN -> sails.keepDown();
        }
    }

    /** Where the turn stands. */
    private void follow(double passed) {
        if (sails.turning() != null && Double.isNaN(helm)) {
            helm = passed;
        }
        if (Double.isNaN(helm)) {
            return;
        }
        if (!sails.turns().isEmpty() && lastEnd() >= word) {
            sails.letFly();
        }
        if (sails.isSettled() && Double.isNaN(settled)) {
            settled = passed;
        }
    }

    private double lastEnd() {
        List<DoneTurn> done = sails.turns();
        return done.get(done.size() - 1).end();
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
        int side = sight.felt().angle() >= 0 ? 1 : -1;
        double heel = side * roll;
        leeward = Math.max(leeward, -heel);
        windward = Math.max(windward, heel);
        closest = Math.max(closest, heel / TurnTally.floor(setup));
        if (!wasWet && setup.touching() == TurnSetup.Touching.SPOILS) {
            double clear = sight.rideHeight()
                    - StrictMath.sin(Math.abs(roll)) * setup.boat().hulls().spacing() / 2;
            closest = Math.max(closest, 1 - clear / TurnStart.CLEAR);
        }
        widest = Math.max(widest, Math.abs(sight.felt().angle()));
        capsized = Bounds.isCapsized(sight);
        gauge.add(sight, side, !Double.isNaN(helm), Double.isNaN(settled));
        feel(sight, heel, !wasWet && loads.hullLift() > 0);
    }

    /** What tells early that the turn goes wrong; by it the turn is given up while that can be done. */
    private void feel(Sight sight, double heel, boolean touches) {
        first = Double.isNaN(first) ? sight.speed() : first;
        if (!Double.isNaN(trimmer.over()) || !Double.isNaN(trimmer.on()) || isGivenUp) {
            return;
        }
        signs = signs.with(touches, heel, 1 - sight.speed() / first);
        if (abort != null && abort.shows(signs)) {
            isGivenUp = true;
            trimmer.giveUp(sight.time(), abort.action());
            if (abort.action() == TurnAbort.Action.BACK) {
                sails.giveUp(sight.time(), new HelmOrder(TurnStart.before(setup.kind()), 1));
            }
        }
    }

    TurnOutcome outcome() {
        double went = word + helm;
        double done = Double.NaN;
        for (DoneTurn turn : sails.turns()) {
            if (turn.order().start() >= word) {
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
                trimmer.over() - went,
                trimmer.on() - went,
                done,
                closest,
                settled - helm,
                gauge.sheet(),
                signs,
                !capsized && (setup.kind() == TurnKind.TACK || setup.kind() == TurnKind.GYBE)
                        ? gauge.lost(helm, done)
                        : Double.NaN);
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
}
