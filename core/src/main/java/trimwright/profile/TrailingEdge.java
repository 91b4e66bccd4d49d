package trimwright.profile;

/** How an aerofoil of a family ends. */
public enum TrailingEdge {
    /** As the family's formula says: at 12 percent thickness 0.25 percent of the chord thick. */
    BLUNT,
    /** To a point, by a slightly changed last coefficient of thickness. */
    SHARP
}
