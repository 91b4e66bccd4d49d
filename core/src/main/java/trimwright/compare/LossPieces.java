package trimwright.compare;

import java.util.ArrayList;
import java.util.List;
import trimwright.segment.Span;

/**
 * Gathers a line's losses into stretches of time: instants without loss part them, and within a stretch blocks of 10 s
 * (chosen: what a person can find on a track again) of the same sign go together.
 */
final class LossPieces {
    private static final double BLOCK = 10;

    private LossPieces() {}

    /** @param first instant of the session at which the losses begin */
    static List<LegLedger.Piece> of(double[] loss, int first, double step) {
        int block = Math.max(1, (int) Math.round(BLOCK / step));
        List<LegLedger.Piece> pieces = new ArrayList<>();
        int k = 0;
        while (k < loss.length) {
            if (loss[k] == 0) {
                k++;
                continue;
            }
            int from = k;
            double sum = 0;
            while (k < loss.length && loss[k] != 0 && k - from < block) {
                sum += loss[k];
                k++;
            }
            LegLedger.Piece last = pieces.isEmpty() ? null : pieces.get(pieces.size() - 1);
            boolean goesOn =
                    last != null && last.span().to() == first + from && Math.signum(last.loss()) == Math.signum(sum);
            if (last != null && goesOn) {
                pieces.set(
                        pieces.size() - 1,
                        new LegLedger.Piece(new Span(last.span().from(), first + k), last.loss() + sum));
            } else {
                pieces.add(new LegLedger.Piece(new Span(first + from, first + k), sum));
            }
        }
        return pieces;
    }
}
