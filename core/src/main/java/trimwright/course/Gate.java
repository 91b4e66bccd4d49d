package trimwright.course;

/**
 * Two marks: a boat passes between them and then rounds either.
 *
 * @param id name in the course's order
 * @param portMark on the left for a boat that comes to the gate
 * @param starboardMark on the right
 */
public record Gate(String id, Position portMark, Position starboardMark) implements Waypoint {}
