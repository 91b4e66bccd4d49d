package trimwright.course;

/** What ends a leg: a mark or a gate. */
public sealed interface Waypoint permits Mark, Gate {
    String id();
}
