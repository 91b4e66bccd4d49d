package trimwright.motion;

/**
 * Where the boat is and how she lies.
 *
 * @param north of the centre of mass (m)
 * @param east of the centre of mass (m)
 * @param height of the centre of mass above the undisturbed water (m)
 * @param heading of the bow, clockwise from north (rad)
 * @param roll starboard down positive (rad)
 * @param pitch bow up positive (rad)
 */
public record Pose(double north, double east, double height, double heading, double roll, double pitch) {}
