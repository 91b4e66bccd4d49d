package trimwright.wind;

/**
 * How the boat lies.
 *
 * @param roll (rad), positive starboard down
 * @param pitch (rad), positive bow up
 */
public record Attitude(double roll, double pitch) {
    public static final Attitude LEVEL = new Attitude(0, 0);
}
