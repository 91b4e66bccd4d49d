package trimwright.segment;

/**
 * A span of one point of sail of 60 s or more; without a course file this stands for a leg.
 *
 * @param course direction from the place where it began to the place where it ended (rad)
 * @param distance between the two (m)
 */
public record Leg(PointOfSail kind, Span span, double course, double distance) implements Piece {}
