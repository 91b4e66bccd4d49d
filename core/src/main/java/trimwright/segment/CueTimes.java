package trimwright.segment;

import org.jspecify.annotations.Nullable;
import trimwright.wind.Quantity;
import trimwright.wind.WindTrack;

/**
 * When, in a turn that was sailed, the cues of a plan came, and when what belongs to them was done. Instants of the session's clock;
 * null where a channel is lacking or it did not happen in and about the turn.
 *
 * @param over apparent wind at the angle at which the plan's camber goes over; null without a new tack
 * @param camber the camber left where it was before the turn; null without a new tack
 * @param across apparent wind on the new side for the first time; null without a new tack
 * @param on apparent wind (without a new tack: true wind) at the angle at which the plan sheets the new trim
 * @param sheet the sheet had come to where it stood after the turn
 * @param eased sheet when the bow began to move, beyond that of straight sailing before (rad); null without sheet
 */
public record CueTimes(
        @Nullable Integer over,
        @Nullable Integer camber,
        @Nullable Integer across,
        @Nullable Integer on,
        @Nullable Integer sheet,
        @Nullable Double eased) {
    /** Looked for from this much before the turn to this much after it (s), as for changes of side; chosen. */
    private static final double BEFORE = 3;

    private static final double AFTER = 6;

    /** A reading counts where the mean of so much about it does (s); chosen, against noise. */
    private static final double ABOUT = 0.3;

    /** Least way of the camber that is a start (rad), and share of it; chosen, beyond noise and trimming. */
    private static final double MOVED = Math.toRadians(3);

    private static final double MOVED_SHARE = 0.2;

    /** The sheet is there within this of where it stays (rad), for as long (s); chosen. */
    private static final double THERE = Math.toRadians(3);

    private static final double STAYS = 1;

    /** Straight sailing is taken from this long to this long before the turn (s), what follows from as long after it; chosen. */
    private static final double STRAIGHT_FROM = 8;

    private static final double STRAIGHT_TO = 3;

    /**
     * Of one turn.
     *
     * @param over apparent wind angle, positive on the side of before, at which the camber goes over (rad); of no use without a new tack
     * @param on angle at which the new trim is sheeted (rad): apparent on the new side; without a new tack the true wind angle
     */
    public static CueTimes of(WindTrack track, Turn turn, double over, double on) {
        return new Reader(track, turn).read(over, on);
    }

    private static final class Reader {
        private final WindTrack track;
        private final Turn turn;
        private final int from;
        private final int to;
        private final int side;
        private final int half;

        Reader(WindTrack track, Turn turn) {
            this.track = track;
            this.turn = turn;
            from = Math.max(0, turn.span().from() - steps(BEFORE));
            to = Math.min(track.size(), turn.span().to() + steps(AFTER));
            side = turn.entryTack().sign();
            half = Math.max(0, steps(ABOUT) / 2);
        }

        CueTimes read(double over, double on) {
            int start = turn.span().from();
            if (!turn.kind().changesTack()) {
                int sign = turn.kind() == TurnKind.BEAR_AWAY ? 1 : -1;
                Integer reached = first(Quantity.TWA, start, sign * side, sign * on);
                return new CueTimes(null, null, null, reached, sheeted(start, side), eased());
            }
            SideChange change = SideChange.of(track, turn);
            Integer across = change == null ? null : change.wind();
            Integer reached = across == null ? null : first(Quantity.AWA, across, -side, on);
            return new CueTimes(
                    first(Quantity.AWA, start, -side, -over),
                    camber(),
                    across,
                    reached,
                    across == null ? null : sheeted(across, -side),
                    eased());
        }

        /** First instant from there at which the quantity times the sign is that or more. */
        private @Nullable Integer first(Quantity quantity, int begin, int sign, double least) {
            if (!track.has(quantity)) {
                return null;
            }
            for (int i = begin; i < to; i++) {
                if (about(quantity, i) * sign >= least) {
                    return i;
                }
            }
            return null;
        }

        private @Nullable Integer camber() {
            double before = mean(Quantity.CAMBER, straightFrom(), straightTo()) * side;
            if (!(before > MOVED)) {
                return null;
            }
            return first(Quantity.CAMBER, from, -side, -(before - Math.max(MOVED, MOVED_SHARE * before)));
        }

        /** From there on, when the sheet had come to where it stays. */
        private @Nullable Integer sheeted(int begin, int newSide) {
            double stays = mean(
                    Quantity.SHEET,
                    turn.span().to() + steps(STRAIGHT_TO),
                    turn.span().to() + steps(STRAIGHT_FROM));
            if (Double.isNaN(stays)) {
                return null;
            }
            int since = -1;
            for (int i = begin; i < to; i++) {
                boolean isThere = Math.abs(newSide * (about(Quantity.SHEET, i) - stays)) < THERE;
                since = !isThere ? -1 : since < 0 ? i : since;
                if (since >= 0 && i - since >= steps(STAYS)) {
                    return since;
                }
            }
            return null;
        }

        private @Nullable Double eased() {
            double before = mean(Quantity.SHEET, straightFrom(), straightTo());
            double eased = side * (about(Quantity.SHEET, turn.span().from()) - before);
            return Double.isNaN(eased) ? null : eased;
        }

        private int straightFrom() {
            return turn.span().from() - steps(STRAIGHT_FROM);
        }

        private int straightTo() {
            return turn.span().from() - steps(STRAIGHT_TO);
        }

        private double about(Quantity quantity, int i) {
            return mean(quantity, i - half, i + half + 1);
        }

        private double mean(Quantity quantity, int begin, int end) {
            int first = Math.max(0, begin);
            int last = Math.min(track.size(), end);
            return first < last && track.has(quantity) ? track.mean(quantity, first, last) : Double.NaN;
        }

        private int steps(double time) {
            return track.clock().steps(time);
        }
    }
}
