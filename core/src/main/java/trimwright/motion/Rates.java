package trimwright.motion;

/**
 * How fast the boat moves, level axes, through the water.
 *
 * @param surge ahead (m/s)
 * @param sway to starboard (m/s)
 * @param climb upward (m/s)
 * @param roll starboard down (rad/s)
 * @param pitch bow up (rad/s)
 * @param yaw bow to starboard (rad/s)
 */
public record Rates(double surge, double sway, double climb, double roll, double pitch, double yaw) {
    /** Lying still. */
    public static final Rates NONE = new Rates(0, 0, 0, 0, 0, 0);

    /** Speed through the water (m/s). */
    public double speed() {
        return Math.sqrt(surge * surge + sway * sway);
    }
}
