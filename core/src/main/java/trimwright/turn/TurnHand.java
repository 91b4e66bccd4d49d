package trimwright.turn;

import trimwright.crew.WingHand;

/** A hand at the wing that hears the driver's word. */
public interface TurnHand extends WingHand {
    /** The driver says that a turn comes: heard at that time (s). */
    void hear(double time);
}
