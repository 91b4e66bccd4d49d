package trimwright.setup;

/**
 * How often a boat turns on a leg against or down the wind, and the way made good that a turn costs.
 *
 * @param perLeg turns on such a leg (-)
 * @param tackOnFoils lost in a tack that stays on the foils (m)
 * @param tackOnHulls lost in a tack on the hulls (m)
 * @param gybeOnFoils lost in a gybe that stays on the foils (m)
 * @param gybeOnHulls lost in a gybe on the hulls (m)
 */
public record TurnLosses(
        double perLeg, double tackOnFoils, double tackOnHulls, double gybeOnFoils, double gybeOnHulls) {
    /**
     * Turns where nothing is said: foiling gybe as published for a larger craft (10 to 15 m), foiling tack from memory (25 to 60
     * m), on the hulls two lengths and one of a boat of 14 m: chosen, as is the number of turns.
     */
    public static final TurnLosses USUAL = new TurnLosses(3, 45, 28, 13, 14);

    public TurnLosses {
        if (!(perLeg >= 0 && tackOnFoils >= 0 && tackOnHulls >= 0 && gybeOnFoils >= 0 && gybeOnHulls >= 0)) {
            throw new IllegalArgumentException("turns and what they cost are not negative");
        }
    }

    /** The same with another number of turns on a leg. */
    public TurnLosses withPerLeg(double other) {
        return new TurnLosses(other, tackOnFoils, tackOnHulls, gybeOnFoils, gybeOnHulls);
    }
}
