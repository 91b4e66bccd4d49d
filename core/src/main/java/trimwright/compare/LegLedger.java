package trimwright.compare;

import java.util.List;
import trimwright.segment.Leg;
import trimwright.segment.Span;

/**
 * Seconds lost on one leg and what they were lost to. The lines add up to the total, and the pieces of a line to the
 * line; a gain is a negative loss.
 *
 * @param total (s)
 * @param lines one for each cause, in their order
 * @param losses instant by instant
 */
public record LegLedger(Leg leg, double total, List<Line> lines, LossSeries losses) {
    public LegLedger {
        lines = List.copyOf(lines);
    }

    /**
     * One line.
     *
     * @param loss (s), negative for a gain
     * @param least it is in any of the other orders of the ladder that are tried (s)
     * @param most it is in any of them (s)
     * @param pieces the stretches of time that make it up, in order
     */
    public record Line(Cause cause, double loss, double least, double most, List<Piece> pieces) {
        public Line {
            pieces = List.copyOf(pieces);
        }
    }

    /** @param loss in that stretch (s) */
    public record Piece(Span span, double loss) {}

    /** The loss of a cause (s), 0 where it has no line. */
    public double lossOf(Cause cause) {
        return lines.stream()
                .filter(line -> line.cause() == cause)
                .mapToDouble(Line::loss)
                .sum();
    }
}
