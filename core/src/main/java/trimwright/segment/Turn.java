package trimwright.segment;

import org.jspecify.annotations.Nullable;

/**
 * One turn: from the heading leaving that of before by 5 deg to the new one. Speeds are NaN where none is logged.
 *
 * @param span from the first to the last instant of the turn
 * @param entryTack tack before
 * @param entrySpeed mean over the last 3 s before (m/s)
 * @param exitSpeed mean over the 3 s that follow (m/s)
 * @param minimumSpeed least speed in the turn (m/s)
 * @param rates how fast and how far the bow went round
 * @param label why it was made; null where no course tells
 * @param recovery what it cost, for turns that change the tack; null for others, or without wind before the turn
 */
public record Turn(
        TurnKind kind,
        Span span,
        Tack entryTack,
        double entrySpeed,
        double exitSpeed,
        double minimumSpeed,
        Rates rates,
        @Nullable TurnLabel label,
        @Nullable Recovery recovery)
        implements Piece {
    /** The same turn under that label. */
    Turn with(TurnLabel why) {
        return new Turn(kind, span, entryTack, entrySpeed, exitSpeed, minimumSpeed, rates, why, recovery);
    }

    /**
     * @param angle that the heading changed by (rad), positive to starboard
     * @param mean rate of turn (rad/s), of that sign
     * @param greatest rate of turn (rad/s), without sign
     */
    public record Rates(double angle, double mean, double greatest) {}

    /**
     * Against sailing on at the VMG of before, in the wind of before.
     *
     * @param until instant at which 95 % of that VMG was back, or at which the account was closed
     * @param metresLost made good less than by sailing on, from the turn's start to {@code until} (m)
     * @param isComplete false where VMG was not back within 30 s of the turn's end, or before the next turn
     */
    public record Recovery(int until, double metresLost, boolean isComplete) {}
}
