package trimwright.section;

/** What a table of computed sections holds. Coefficients on the total chord, the hinge moment's on the flap's. */
public enum SectionQuantity {
    /** Lift (-). */
    LIFT(-1),
    /** Natural logarithm of drag (-): interpolated so, drag stays positive. */
    LOG_DRAG(1),
    /** Moment about the quarter chord (-), positive nose to the side that positive angles lift to. */
    QUARTER_MOMENT(-1),
    /** Moment of the flap about its pivot (-), in the sense of the flap angle. */
    HINGE(-1);

    private final int mirror;

    SectionQuantity(int mirror) {
        this.mirror = mirror;
    }

    /** Factor, 1 or -1, that the quantity takes when angle of attack and flap angle change sign. */
    public int mirror() {
        return mirror;
    }
}
