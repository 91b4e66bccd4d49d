package trimwright.drills;

import java.util.ArrayList;
import java.util.List;
import trimwright.crew.TurnKind;
import trimwright.text.Texts;
import trimwright.turn.TurnMoves;
import trimwright.turn.TurnOutcome;

/** A plan in words: what is heard, seen or felt, and the move that belongs to it. */
final class TurnCues {
    /** A sheet or an ease of less is none (rad): half a degree. */
    private static final double NOTHING = Math.toRadians(0.5);

    private TurnCues() {}

    /**
     * One step of a plan.
     *
     * @param cue what is sensed
     * @param move what is done then
     * @param seconds from the cue before, in the mean; NaN where it never came
     */
    record Step(String cue, String move, double seconds) {}

    static List<Step> of(TurnKind kind, TurnPlanRun.Plan plan) {
        TurnMoves moves = plan.moves();
        double helm = plan.tally().mean(TurnOutcome::helm);
        double over = plan.tally().mean(TurnOutcome::over);
        double on = plan.tally().mean(TurnOutcome::on);
        double done = plan.tally().mean(TurnOutcome::done);
        boolean crosses = kind == TurnKind.TACK || kind == TurnKind.GYBE;
        List<Step> steps = new ArrayList<>();
        steps.add(new Step(Texts.of("turnplan.cue.word"), ease(moves.ease()), 0));
        steps.add(new Step(
                Texts.of(crosses ? "turnplan.cue.board" : "turnplan.cue.bow"),
                Texts.of("turnplan.move.helm", Math.toDegrees(moves.rate())),
                helm));
        if (crosses) {
            steps.add(new Step(wind(moves.over()), over(moves.across()), over));
            steps.add(new Step(wind(-moves.on()), on(moves.power()), on - over));
        } else {
            steps.add(new Step(Texts.of("turnplan.cue.true_wind", Math.toDegrees(moves.on())), on(moves.power()), on));
        }
        steps.add(new Step(Texts.of("turnplan.cue.held"), Texts.of("turnplan.move.trim"), done - on));
        return steps;
    }

    private static String ease(double ease) {
        if (Math.abs(ease) < NOTHING) {
            return Texts.of("turnplan.move.hold");
        }
        return Texts.of(ease > 0 ? "turnplan.move.ease" : "turnplan.move.haul", Math.toDegrees(Math.abs(ease)));
    }

    private static String wind(double angle) {
        if (Math.abs(angle) < NOTHING) {
            return Texts.of("turnplan.cue.ahead");
        }
        return Texts.of(angle > 0 ? "turnplan.cue.before" : "turnplan.cue.past", Math.toDegrees(Math.abs(angle)));
    }

    private static String over(double across) {
        if (Math.abs(across) < NOTHING) {
            return Texts.of("turnplan.move.over_centre");
        }
        return Texts.of(
                across > 0 ? "turnplan.move.over" : "turnplan.move.over_short", Math.toDegrees(Math.abs(across)));
    }

    private static String on(double power) {
        return power < NOTHING
                ? Texts.of("turnplan.move.on")
                : Texts.of("turnplan.move.on_more", Math.toDegrees(power));
    }
}
