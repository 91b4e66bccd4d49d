package trimwright.crew;

/**
 * What the driver is told.
 *
 * @param way against the wind or down it, at the best angle of the crew's card
 * @param tack +1 with the wind from starboard, -1 from port; another than now is a tack or a gybe
 */
public record HelmOrder(Way way, int tack) {
    /** Two ways of sailing. */
    public enum Way {
        UPWIND,
        DOWNWIND
    }
}
