package trimwright.turn;

/**
 * The most that could be felt of a turn from the driver's word until the camber went over, or without a new tack until the new trim
 * was sheeted: as long as it can be given up.
 *
 * @param touch 1 where a hull came into the water, else 0 (-)
 * @param leeward heel (rad)
 * @param windward heel (rad)
 * @param slowing share of the speed at the word that was gone (-)
 */
public record TurnSigns(double touch, double leeward, double windward, double slowing) {
    /** Before the word. */
    public static final TurnSigns NONE = new TurnSigns(0, 0, 0, 0);

    /** With what is felt now. */
    TurnSigns with(boolean touches, double heel, double slower) {
        return new TurnSigns(
                touches ? 1 : touch, Math.max(leeward, -heel), Math.max(windward, heel), Math.max(slowing, slower));
    }

    double of(TurnAbort.Sign sign) {
        return switch (sign) {
            case TOUCH -> touch;
            case LEEWARD -> leeward;
            case WINDWARD -> windward;
            case SLOWING -> slowing;
        };
    }
}
