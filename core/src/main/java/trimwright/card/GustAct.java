package trimwright.card;

import trimwright.platform.Variable;

/**
 * One control moved alone, boat speed and course as they were, until the heeling moment is no more than before the gust (no less
 * than before the lull) and the wing is as far from stall as the boat file asks.
 *
 * @param control {@link Variable#SHEET}, {@link Variable#CAMBER} or {@link Variable#TWIST}
 * @param change of the control (rad), positive eased, deeper, more twisted
 * @param isEnough whether that does both; else the change is as far as control and limits let it go
 * @param seconds that the control needs for the change
 * @param heelingMoment after the change (N m)
 * @param drive after the change (N)
 * @param stallMargin least along the wing after the change (rad)
 * @param inOneSecond heeling moment after as much of the change as one second allows (N m)
 */
public record GustAct(
        Variable control,
        double change,
        boolean isEnough,
        double seconds,
        double heelingMoment,
        double drive,
        double stallMargin,
        double inOneSecond) {
    /** How long a crew has before the boat answers a gust (s); common practice, no source. */
    public static final double IN_TIME = 1;

    /** Whether it brings the moment back within {@link #IN_TIME}. */
    public boolean isInTime() {
        return isEnough && seconds <= IN_TIME;
    }
}
