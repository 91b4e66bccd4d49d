package trimwright.course;

/**
 * A place on the earth, WGS 84.
 *
 * @param latitude north positive (rad)
 * @param longitude east positive (rad)
 */
public record Position(double latitude, double longitude) {}
