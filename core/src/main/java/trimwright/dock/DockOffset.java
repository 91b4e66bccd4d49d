package trimwright.dock;

/**
 * What the check says of an instrument before any sailing: what it adds to the truth (of the load: the factor on it).
 *
 * @param value (rad, -)
 * @param standardError of the value, with what the pins and the boat's own lying leave open (rad, -)
 */
public record DockOffset(Quantity quantity, double value, double standardError) {
    /** What is off, each on the signed channel. */
    public enum Quantity {
        ROLL,
        PITCH,
        CAMBER,
        TWIST,
        SHEET,
        WIND_ANGLE,
        SHEET_LOAD
    }
}
