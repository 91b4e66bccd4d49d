package trimwright.boat;

/** A control that a boat may have marks for. */
public enum MarkedControl {
    /** Flap angle at the foot. */
    CAMBER,
    /** Flap angle of the foot less that of the head. */
    TWIST,
    /** Angle of the whole wing to the centreline. */
    SHEET,
    /** Incidence of the main foil's tip. */
    RAKE
}
