package trimwright.crew;

/**
 * How the tactician wants to sail now.
 *
 * @param sail against the wind, down it, or straight at the mark
 * @param tack +1 with the wind from starboard, -1 from port
 * @param bearing to steer when sailing straight (rad)
 * @param cause why this tack and not the other
 */
record Plan(Sail sail, int tack, double bearing, TurnCause cause) {
    /** Three ways of sailing a leg. */
    enum Sail {
        UPWIND,
        DOWNWIND,
        DIRECT
    }
}
