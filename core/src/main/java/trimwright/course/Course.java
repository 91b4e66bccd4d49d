package trimwright.course;

import java.util.List;

/**
 * One race course as the organiser sets it.
 *
 * @param name what people call it
 * @param gunNanos start signal (ns since 1970, UTC)
 * @param start start line
 * @param order marks and gates in the order of sailing, each one entry a rounding; the leg after the last ends at the finish
 * @param finish finish line
 * @param boundary corners of the area that must not be left, in order round it; empty where there is none
 */
public record Course(
        String name, long gunNanos, Line start, List<Waypoint> order, Line finish, List<Position> boundary) {
    public Course {
        order = List.copyOf(order);
        boundary = List.copyOf(boundary);
        if (order.isEmpty()) {
            throw new IllegalArgumentException("course " + name + " has no mark");
        }
        if (boundary.size() == 1 || boundary.size() == 2) {
            throw new IllegalArgumentException("course " + name + ": a boundary needs three corners or more");
        }
    }

    /** Start to first mark, mark to mark, last mark to finish. */
    public int legCount() {
        return order.size() + 1;
    }

    /** A plane with its origin in the middle of the start line. */
    public LocalPlane plane() {
        return new LocalPlane(new Position(
                (start.portEnd().latitude() + start.starboardEnd().latitude()) / 2,
                (start.portEnd().longitude() + start.starboardEnd().longitude()) / 2));
    }
}
