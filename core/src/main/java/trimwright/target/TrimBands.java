package trimwright.target;

/**
 * The trims that cost under {@link #SPEED_LOSS} of the target's speed while the righting moment is held: the long flat
 * ridge on which camber, twist and sheet are traded for one another. Each band is the range of that control over the
 * ridge; the three are not free at once. {@code costs} says what it costs to be off the target with each control.
 */
public record TrimBands(Band camber, Band twist, Band sheet, TrimCosts costs) {
    /** Share of the target's speed that a trim inside the bands may cost (-); fixed by the book's definition. */
    public static final double SPEED_LOSS = 0.005;

    /** With no costs known. */
    public TrimBands(Band camber, Band twist, Band sheet) {
        this(camber, twist, sheet, TrimCosts.NONE);
    }
}
