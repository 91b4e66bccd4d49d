package trimwright.boat;

/**
 * Two equal slender hulls.
 *
 * @param lengthOverall length over all (m)
 * @param waterlineLength length on the waterline (m)
 * @param beam waterline beam of one hull (m)
 * @param draft draft of one hull when both carry the whole boat (m)
 * @param spacing distance between the hulls' centrelines (m)
 * @param blockCoefficient displaced volume over length, beam and draft (-)
 */
public record Hulls(
        double lengthOverall,
        double waterlineLength,
        double beam,
        double draft,
        double spacing,
        double blockCoefficient) {}
