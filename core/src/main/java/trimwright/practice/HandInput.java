package trimwright.practice;

/**
 * What a person's hands and feet do at one instant.
 *
 * @param sheet -1 hauls, +1 eases, between them slower; 0 holds
 * @param camber -1 flattens, +1 deepens
 * @param twist -1 takes twist out, +1 puts it in
 * @param inversions how often the camber was put over since the drill began
 */
public record HandInput(double sheet, double camber, double twist, int inversions) {
    /** Hands off. */
    public static final HandInput NONE = new HandInput(0, 0, 0, 0);

    public HandInput {
        if (!(Math.abs(sheet) <= 1 && Math.abs(camber) <= 1 && Math.abs(twist) <= 1) || inversions < 0) {
            throw new IllegalArgumentException("hands: " + sheet + ", " + camber + ", " + twist + ", " + inversions);
        }
    }
}
