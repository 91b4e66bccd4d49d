package trimwright.boat;

/**
 * Air drag of platform and crew.
 *
 * @param areaAhead drag coefficient times area, wind from ahead (m2)
 * @param areaAbeam drag coefficient times area, wind from abeam (m2)
 * @param height centre of effort above the bottom of the hulls (m)
 * @param x centre of effort forward of the main foils' lift centre (m)
 */
public record Windage(double areaAhead, double areaAbeam, double height, double x) {}
