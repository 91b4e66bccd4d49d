package trimwright.profile;

import java.util.List;

/**
 * The wing's section: a symmetric main element and a symmetric flap that turns about a point of the main element's centre
 * line. Chord 1 from the main element's nose to the straight flap's trailing edge. Flap angles exchanged in sign give the
 * mirror image to the bit.
 *
 * @param mainThickness over the main element's own chord (-)
 * @param flapThickness over the flap's own chord (-)
 * @param flapChord over the total chord (-), 0.05 to 0.6
 * @param slotLength from the main element's trailing edge to the straight flap's nose over the total chord (-), above 0
 * @param pivot aft of the main element's nose over the main element's chord (-): 0.5 to 1.2
 */
public record WingProfile(
        double mainThickness, double flapThickness, double flapChord, double slotLength, double pivot) {
    public WingProfile {
        if (!(flapChord >= 0.05 && flapChord <= 0.6)
                || !(slotLength > 0 && slotLength <= 0.1)
                || !(pivot >= 0.5 && pivot <= 1.2)) {
            throw new IllegalArgumentException("wing profile out of range (flap 0.05-0.6, slot above 0 to 0.1,"
                    + " pivot 0.5-1.2): " + flapChord + ", " + slotLength + ", " + pivot);
        }
    }

    /** Chord of the main element over the total chord (-). */
    public double mainChord() {
        return 1 - flapChord - slotLength;
    }

    /** Distance of the pivot aft of the main element's nose over the total chord (-). */
    public double pivotX() {
        return pivot * mainChord();
    }

    /** Main element and flap at a flap angle (rad), positive: trailing edge down; each in so many panels, even. */
    public List<Contour> elements(double flapAngle, int panels, TrailingEdge edge) {
        Contour main = Naca.symmetric(mainThickness).contour(panels, edge).scaled(mainChord());
        Contour flap = Naca.symmetric(flapThickness)
                .contour(panels, edge)
                .scaled(flapChord)
                .moved(1 - flapChord, 0)
                .turned(flapAngle, pivotX(), 0);
        return List.of(main, flap);
    }

    /** The slot at a flap angle (rad). */
    public Slot slot(double flapAngle) {
        return Slot.between(elements(flapAngle, 400, TrailingEdge.SHARP));
    }
}
