package trimwright.fleet;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.distribution.continuous.TDistribution;
import trimwright.segment.Pieces;
import trimwright.segment.PointOfSail;
import trimwright.segment.Turn;
import trimwright.segment.TurnKind;
import trimwright.segment.TurnLabel;

/** Metres that boats lost in tacks or gybes: a boat's mean less the mean of the others', one spread for all. */
final class TurnsCompared {
    /** Turns of a boat, and beyond the boats' number of all, below which nothing is said: chosen. */
    private static final int LEAST = 3;

    private static final double BOTH_SIDES = 0.975;

    private TurnsCompared() {}

    static List<Difference> ask(List<String> names, List<Pieces> pieces, PointOfSail on) {
        List<List<Turn>> turns = pieces.stream().map(of -> counted(of, on)).toList();
        List<Integer> boats = new ArrayList<>();
        int all = 0;
        for (int b = 0; b < turns.size(); b++) {
            if (turns.get(b).size() >= LEAST) {
                boats.add(b);
                all += turns.get(b).size();
            }
        }
        int freedom = all - boats.size();
        if (boats.size() < 2 || freedom < LEAST) {
            return List.of();
        }
        double square = 0;
        double sum = 0;
        double inverse = 0;
        for (int b : boats) {
            double mean = mean(turns.get(b));
            sum += mean;
            inverse += 1.0 / turns.get(b).size();
            for (Turn turn : turns.get(b)) {
                square += (lost(turn) - mean) * (lost(turn) - mean);
            }
        }
        double variance = square / freedom;
        int others = boats.size() - 1;
        TDistribution t = new TDistribution(freedom);
        List<Difference> found = new ArrayList<>();
        for (int b : boats) {
            List<Turn> own = turns.get(b);
            double mean = mean(own);
            double value = mean - (sum - mean) / others;
            double one = 1.0 / own.size();
            double error = Math.sqrt(variance * (one + (inverse - one) / others / others));
            if (!(error > 0)) {
                continue;
            }
            double half = error * t.inverseCumulativeProbability(BOTH_SIDES);
            Turn worst = own.get(0);
            for (Turn turn : own) {
                worst = (lost(turn) - lost(worst)) * value > 0 ? turn : worst;
            }
            found.add(new Difference(
                    names.get(b),
                    on,
                    Question.TURN,
                    value,
                    value - half,
                    value + half,
                    error,
                    2 * t.cumulativeProbability(-Math.abs(value) / error),
                    false,
                    new Difference.Evidence(
                            own.size(),
                            own.size(),
                            null,
                            null,
                            worst.span().from(),
                            worst.span().to())));
        }
        return found;
    }

    private static List<Turn> counted(Pieces pieces, PointOfSail on) {
        TurnKind kind = switch (on) {
            case UPWIND -> TurnKind.TACK;
            case DOWNWIND -> TurnKind.GYBE;
            case REACHING -> null;
        };
        return pieces.turns().stream()
                .filter(turn -> turn.kind() == kind && turn.label() != TurnLabel.MARK && turn.recovery() != null)
                .toList();
    }

    private static double lost(Turn turn) {
        Turn.Recovery recovery = turn.recovery();
        return recovery == null ? Double.NaN : recovery.metresLost();
    }

    private static double mean(List<Turn> turns) {
        return turns.stream().mapToDouble(TurnsCompared::lost).average().orElse(Double.NaN);
    }
}
