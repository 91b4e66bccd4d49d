package trimwright.segment;

/** A spell in which a boat that can fly did not. */
public record OffFoil(Span span) implements Piece {
    /** There is one kind only. */
    public enum Kind {
        OFF_FOIL
    }

    @Override
    public Kind kind() {
        return Kind.OFF_FOIL;
    }
}
