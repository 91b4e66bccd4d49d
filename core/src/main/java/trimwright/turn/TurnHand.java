package trimwright.turn;

import trimwright.crew.WingHand;

/** A hand at the wing that hears the driver's word. */
public interface TurnHand extends WingHand {
    /** The driver says that a turn comes: heard at that time (s). */
    void hear(double time);

    /** The turn is given up at that time (s), so; nothing for a hand without a plan. */
    default void giveUp(double time, TurnAbort.Action action) {
        // Goes on as it is.
    }

    /** When the wind was seen to be where the camber goes over (s), NaN before and for a hand without a plan. */
    default double over() {
        return Double.NaN;
    }

    /** When the wind was seen to be where the new trim is sheeted (s), NaN before and for a hand without a plan. */
    default double on() {
        return Double.NaN;
    }
}
