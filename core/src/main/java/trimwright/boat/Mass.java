package trimwright.boat;

/**
 * A mass and its place.
 *
 * @param mass (kg)
 * @param x forward of the main foils' lift centre (m), negative aft
 * @param height above the bottom of the hulls (m)
 */
public record Mass(double mass, double x, double height) {}
