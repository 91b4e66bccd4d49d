package trimwright.segment;

/** Something that the day was cut into. */
public sealed interface Piece permits Turn, Leg, Phase, OffFoil {
    Span span();

    /** What pieces must have in common to be compared with one another. */
    Enum<?> kind();
}
