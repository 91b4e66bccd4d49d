package trimwright.section;

/**
 * What the closed form needs to know of a section's shape.
 *
 * @param flapChordRatio flap chord over total chord (-), 0.05 to 0.6
 * @param turningAxisRatio turning axis aft of the leading edge over total chord (-), 0 to 1
 * @param slotGapRatio slot over total chord (-), 0 to 0.1
 * @param thicknessRatio thickness of the main element over its own chord (-), 0 to 0.4
 */
public record SectionShape(double flapChordRatio, double turningAxisRatio, double slotGapRatio, double thicknessRatio) {
    public SectionShape {
        if (!(flapChordRatio >= 0.05 && flapChordRatio <= 0.6)
                || !(turningAxisRatio >= 0 && turningAxisRatio <= 1)
                || !(slotGapRatio >= 0 && slotGapRatio <= 0.1)
                || !(thicknessRatio >= 0 && thicknessRatio <= 0.4)) {
            throw new IllegalArgumentException("section shape out of range (flap 0.05-0.6, axis 0-1, slot 0-0.1,"
                    + " thickness 0-0.4): " + flapChordRatio + ", " + turningAxisRatio + ", " + slotGapRatio + ", "
                    + thicknessRatio);
        }
    }
}
