package trimwright.dock;

/**
 * What the crew does at the dock, and when: seconds from the begin of the list. Each control is moved when its step begins and then held;
 * what is held is read. Times chosen: ten minutes in all; a control that takes fifteen seconds for its whole
 * way may be begun ten seconds late.
 */
public enum DockStep {
    /** Nobody aboard moves; wing pinned on the centreline, flap at zero, sheet slack. */
    STILL(0, 5, 60),
    /** All aboard stand on the starboard hull. */
    CREW_STARBOARD(60, 85, 105),
    /** Camber all the way, trailing edge to starboard. */
    CAMBER_STARBOARD(105, 130, 150),
    /** Twist all the way out on that camber. */
    TWIST_STARBOARD(150, 175, 195),
    /** Twist to zero. */
    TWIST_BACK(195, 220, 240),
    /** Camber all the way, trailing edge to port. */
    CAMBER_PORT(240, 265, 285),
    /** Twist all the way out on that camber. */
    TWIST_PORT(285, 310, 330),
    /** Twist, then camber, to zero. */
    FLAP_BACK(330, 370, 390),
    /** The wing is turned by hand, trailing edge to port, as far as it may go. */
    SHEET_PORT(390, 415, 435),
    /** The same to starboard. */
    SHEET_STARBOARD(435, 460, 480),
    /** The wing swings free and finds the wind. */
    WING_FREE(480, 500, 540),
    /** The wing pinned on the centreline, a known pull on the sheet. */
    PULL(540, 560, 600);

    /** Hands may be so much early for the next step (s): chosen. */
    private static final double EARLY = 5;

    private final double begin;
    private final double heldFrom;
    private final double end;

    DockStep(double begin, double heldFrom, double end) {
        this.begin = begin;
        this.heldFrom = heldFrom;
        this.end = end;
    }

    /** When it is called (s). */
    public double begin() {
        return begin;
    }

    /** When the next is called (s). */
    public double end() {
        return end;
    }

    /** From when on it is read (s). */
    public double heldFrom() {
        return heldFrom;
    }

    /** Until when it is read (s). */
    public double heldTo() {
        return end - EARLY;
    }
}
