package trimwright.boat;

/**
 * Where the wind is measured.
 *
 * @param height above the bottom of the hulls (m)
 * @param x forward of the main foils' lift centre (m)
 * @param turnsWithWing whether the sensor stands on the wing and so measures from its chord
 */
public record WindSensor(double height, double x, boolean turnsWithWing) {}
