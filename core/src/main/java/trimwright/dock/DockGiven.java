package trimwright.dock;

/**
 * What people measured themselves; NaN where nobody did.
 *
 * @param heel by a spirit level while nothing moved, list to starboard positive (rad); NaN: she lies level
 * @param pitch by a spirit level, bow up positive (rad); NaN: she lies level
 * @param pull on the sheet at the wing in the last step (N)
 * @param antennaAft of the bow, by tape (m)
 * @param antennaStarboard of the centreline, by tape (m)
 */
public record DockGiven(double heel, double pitch, double pull, double antennaAft, double antennaStarboard) {
    /** Nothing measured. */
    public static final DockGiven NONE = new DockGiven(Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN);
}
