package trimwright.segment;

/**
 * A straight, steady stretch that can be judged: 10 s or more inside a leg, outside turns, rate of turn under 3 deg/s,
 * TWA near its median, or making straight for the end of the leg, short departures apart, not gathering speed.
 *
 * @param kind point of sail of the leg it lies in
 */
public record Phase(PointOfSail kind, Span span, Tack tack) implements Piece {}
