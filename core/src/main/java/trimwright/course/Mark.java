package trimwright.course;

/**
 * One mark.
 *
 * @param id name in the course's order
 * @param position where it lies
 * @param rounding side on which it is left
 */
public record Mark(String id, Position position, Rounding rounding) implements Waypoint {}
