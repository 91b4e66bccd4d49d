package trimwright.debrief;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import trimwright.segment.Matching;
import trimwright.segment.Phase;
import trimwright.segment.Span;
import trimwright.segment.Turn;
import trimwright.segment.TurnLabel;

/** Turns and phases of a debrief against the truth, summed over boats. */
final class TruthCount {
    int turnsMatched;
    int turnsFound;
    int turnsTrue;
    int phasesMatched;
    int phasesFound;
    int phasesTrue;
    int labelsRight;
    int labelsCompared;

    /** Adds the boats of a day, within the legs that they ended. */
    void add(SimulatedDay day, DebriefReport report) throws IOException {
        double zero = SimulatedDay.zero(report);
        double step = report.clock().step();
        for (BoatDebrief boat : report.boats()) {
            List<Double> ends = day.ends(boat.boat());
            double last = ends.isEmpty() ? 0 : ends.get(ends.size() - 1) + zero;
            List<Matching.Labelled> turns = new ArrayList<>();
            List<TurnLabel> labels = new ArrayList<>();
            for (Turn turn : boat.pieces().turns()) {
                TurnLabel label = turn.label();
                if (label != null && turn.span().from() * step < last) {
                    turns.add(piece(turn.kind().name().toLowerCase(Locale.ROOT), turn.span(), step, zero));
                    labels.add(label);
                }
            }
            List<Matching.Labelled> phases = new ArrayList<>();
            for (Phase phase : boat.pieces().phases()) {
                if (phase.span().from() * step < last) {
                    phases.add(piece(phase.tack().name().toLowerCase(Locale.ROOT), phase.span(), step, zero));
                }
            }
            List<Matching.Labelled> trueTurns = day.truth(boat.boat(), "turn");
            Matching.Count ofTurns = Matching.count(turns, trueTurns);
            turnsMatched += ofTurns.matched();
            turnsFound += ofTurns.found();
            turnsTrue += ofTurns.truth();
            Matching.Count ofPhases = Matching.count(phases, day.truth(boat.boat(), "straight"));
            phasesMatched += ofPhases.matched();
            phasesFound += ofPhases.found();
            phasesTrue += ofPhases.truth();
            label(turns, labels, trueTurns, day.causes(boat.boat()));
        }
    }

    private static Matching.Labelled piece(String kind, Span span, double step, double zero) {
        return new Matching.Labelled(kind, span.from() * step - zero, span.to() * step - zero);
    }

    /** Labels of turns whose middle lies in a true one. */
    private void label(
            List<Matching.Labelled> turns,
            List<TurnLabel> labels,
            List<Matching.Labelled> trueTurns,
            List<String> causes) {
        for (int i = 0; i < turns.size(); i++) {
            double middle = (turns.get(i).from() + turns.get(i).to()) / 2;
            for (int k = 0; k < trueTurns.size(); k++) {
                if (middle >= trueTurns.get(k).from()
                        && middle <= trueTurns.get(k).to()) {
                    labelsCompared++;
                    labelsRight += labels.get(i).name().toLowerCase(Locale.ROOT).equals(causes.get(k)) ? 1 : 0;
                }
            }
        }
    }

    static double share(int part, int whole) {
        return whole == 0 ? 1 : (double) part / whole;
    }

    String row(String days) {
        return String.format(
                Locale.ROOT,
                "| %s | %.2f | %.2f | %d | %.2f | %.2f | %d | %.2f |%n",
                days,
                share(turnsMatched, turnsFound),
                share(turnsMatched, turnsTrue),
                turnsTrue,
                share(phasesMatched, phasesFound),
                share(phasesMatched, phasesTrue),
                phasesTrue,
                share(labelsRight, labelsCompared));
    }
}
