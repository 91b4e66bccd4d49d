package trimwright.crew;

/**
 * What driver and flight controller do in a turn that is planned, from the driver's word on.
 *
 * @param rate of turn at most (rad/s)
 * @param exit how far beyond the best new course, toward the beam wind, the bow swings before speed is built (rad)
 * @param build share of what a slow boat usually bears off, or comes up, from the best course to gather speed after it (-)
 * @param board how far the second board is down when the helm goes over (-), 0 to 1
 * @param height more than the card's ride height until the new course is held (m)
 * @param moment share of the card's righting moment that is carried until the turn is over (-), above 0.5 to 1
 */
public record TurnConduct(double rate, double exit, double build, double board, double height, double moment) {
    /** With another share of the righting moment. */
    public TurnConduct withMoment(double share) {
        return new TurnConduct(rate, exit, build, board, height, share);
    }
}
