package trimwright.course;

/**
 * One mark.
 *
 * @param id name in the course's order
 * @param position where it lies
 * @param leaveTo side on which it is left
 */
public record Mark(String id, Position position, Side leaveTo) implements Waypoint {}
