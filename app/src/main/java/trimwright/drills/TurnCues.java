package trimwright.drills;

import java.util.ArrayList;
import java.util.List;
import trimwright.crew.DrillCrew;
import trimwright.crew.HelmOrder.Way;
import trimwright.crew.TurnConduct;
import trimwright.crew.TurnKind;
import trimwright.text.Texts;
import trimwright.turn.TurnBegin;
import trimwright.turn.TurnMoves;
import trimwright.turn.TurnOutcome;
import trimwright.turn.TurnSetup;
import trimwright.turn.TurnStart;

/** A plan in words: what is heard, seen or felt, and the move that belongs to it. */
final class TurnCues {
    /** A sheet or an ease of less is none (rad): half a degree. */
    private static final double NOTHING = Math.toRadians(0.5);

    /** A course off by less is none (rad), a height by less (m), and a share of the moment that is all of it (-). */
    private static final double ON_COURSE = Math.toRadians(2);

    private static final double LEVEL = 0.05;
    private static final double ALL = 0.985;

    private TurnCues() {}

    /**
     * One step of a plan.
     *
     * @param cue what is sensed
     * @param move what is done then
     * @param seconds from the cue before, in the mean; NaN where it never came
     */
    record Step(String cue, String move, double seconds) {}

    static List<Step> of(TurnSetup setup, TurnPlanRun.Plan plan) {
        TurnKind kind = setup.kind();
        TurnMoves moves = plan.moves();
        double helm = plan.tally().mean(TurnOutcome::helm);
        double over = plan.tally().mean(TurnOutcome::over);
        double on = plan.tally().mean(TurnOutcome::on);
        double done = plan.tally().mean(TurnOutcome::done);
        double settled = plan.tally().mean(TurnOutcome::settled);
        TurnConduct conduct = moves.conduct();
        boolean upwind = TurnStart.wayAfter(kind) == Way.UPWIND;
        boolean crosses = kind == TurnKind.TACK || kind == TurnKind.GYBE;
        List<Step> steps = new ArrayList<>();
        steps.add(new Step(Texts.of("turnplan.cue.word"), ease(moves.ease()), 0));
        steps.add(new Step(Texts.of("turnplan.cue.word"), flight(conduct), 0));
        if (setup.begin() == TurnBegin.LET_DOWN) {
            steps.add(new Step(Texts.of("turnplan.cue.word"), Texts.of("turnplan.move.let_down"), 0));
        }
        steps.add(new Step(bow(setup, conduct), helm(conduct, upwind), helm));
        if (crosses) {
            steps.add(new Step(wind(moves.over()), over(moves.across()), over));
            steps.add(new Step(wind(-moves.on()), on(moves.power()), on - over));
        } else {
            steps.add(new Step(Texts.of("turnplan.cue.true_wind", Math.toDegrees(moves.on())), on(moves.power()), on));
        }
        steps.add(new Step(Texts.of("turnplan.cue.held"), build(conduct, upwind), done - on));
        steps.add(new Step(Texts.of("turnplan.cue.speed"), Texts.of("turnplan.move.trim"), settled - done));
        return steps;
    }

    /** What the driver waits for. */
    private static String bow(TurnSetup setup, TurnConduct conduct) {
        if (setup.begin() == TurnBegin.LET_DOWN) {
            return Texts.of("turnplan.cue.hull");
        }
        boolean crosses = setup.kind() == TurnKind.TACK || setup.kind() == TurnKind.GYBE;
        return crosses && setup.begin() == TurnBegin.FOILS
                ? Texts.of("turnplan.cue.board", 100 * conduct.board())
                : Texts.of("turnplan.cue.bow");
    }

    private static String flight(TurnConduct conduct) {
        String moment = conduct.moment() > ALL
                ? Texts.of("turnplan.move.moment_all")
                : Texts.of("turnplan.move.moment", 100 * conduct.moment());
        if (Math.abs(conduct.height()) < LEVEL) {
            return moment;
        }
        return moment
                + Texts.of(
                        conduct.height() > 0 ? "turnplan.move.higher" : "turnplan.move.lower",
                        Math.abs(conduct.height()));
    }

    private static String helm(TurnConduct conduct, boolean upwind) {
        String rate = Texts.of("turnplan.move.helm", Math.toDegrees(conduct.rate()));
        if (conduct.exit() < ON_COURSE) {
            return rate + Texts.of("turnplan.move.to_course");
        }
        return rate
                + Texts.of(
                        upwind ? "turnplan.move.to_wider" : "turnplan.move.to_closer", Math.toDegrees(conduct.exit()));
    }

    private static String build(TurnConduct conduct, boolean upwind) {
        double most = conduct.build() * DrillCrew.mostBuilt(upwind ? Way.UPWIND : Way.DOWNWIND);
        if (most < ON_COURSE) {
            return Texts.of("turnplan.move.stay");
        }
        return Texts.of(upwind ? "turnplan.move.bear_off" : "turnplan.move.come_up", Math.toDegrees(most));
    }

    static String ease(double ease) {
        if (Math.abs(ease) < NOTHING) {
            return Texts.of("turnplan.move.hold");
        }
        return Texts.of(ease > 0 ? "turnplan.move.ease" : "turnplan.move.haul", Math.toDegrees(Math.abs(ease)));
    }

    static String wind(double angle) {
        if (Math.abs(angle) < NOTHING) {
            return Texts.of("turnplan.cue.ahead");
        }
        return Texts.of(angle > 0 ? "turnplan.cue.before" : "turnplan.cue.past", Math.toDegrees(Math.abs(angle)));
    }

    static String over(double across) {
        if (Math.abs(across) < NOTHING) {
            return Texts.of("turnplan.move.over_centre");
        }
        return Texts.of(
                across > 0 ? "turnplan.move.over" : "turnplan.move.over_short", Math.toDegrees(Math.abs(across)));
    }

    static String on(double power) {
        return power < NOTHING
                ? Texts.of("turnplan.move.on")
                : Texts.of("turnplan.move.on_more", Math.toDegrees(power));
    }
}
