package trimwright.boat;

/**
 * The sheet: a rope that can pull the wing in and cannot push it.
 *
 * @param lever arm of the rope about the turning axis (m)
 * @param purchase load of the wing over load in the rope's hauling part (-)
 * @param efficiency share of the grinders' power that reaches the rope (-)
 * @param loadMax largest load at the wing that maker or class allows (N)
 */
public record SheetTackle(double lever, double purchase, double efficiency, double loadMax) {
    /** The same with another largest load at the wing (N). */
    public SheetTackle withLoadMax(double load) {
        return new SheetTackle(lever, purchase, efficiency, load);
    }
}
