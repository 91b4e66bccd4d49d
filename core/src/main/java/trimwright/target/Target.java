package trimwright.target;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/**
 * One solved target.
 *
 * @param boatSpeed through the water (m/s)
 * @param velocityMadeGood along the true wind (m/s), positive whether against it or down it
 * @param apparentWindAngle at 10 m above the water, from the bow (rad), in [0, pi]
 * @param apparentWindSpeed at 10 m above the water (m/s)
 * @param trim the trim shown: inside the bands, the one that gusts disturb least
 * @param bands how far each control may go at under half a per cent of speed, the righting moment held
 * @param attitude heel, ride height, leeway, foils
 * @param loads sheet load, righting moment, forces of the air
 * @param limits which limits bind
 * @param caveats why to doubt it; empty when there is no reason
 */
public record Target(
        double boatSpeed,
        double velocityMadeGood,
        double apparentWindAngle,
        double apparentWindSpeed,
        TrimSetting trim,
        TrimBands bands,
        Attitude attitude,
        Loads loads,
        Set<TargetLimit> limits,
        Set<TargetCaveat> caveats) {
    public Target {
        limits = inOrder(TargetLimit.class, limits);
        caveats = inOrder(TargetCaveat.class, caveats);
    }

    /** A copy that is always listed in the order of the enum, so that files have the same bytes. */
    private static <E extends Enum<E>> Set<E> inOrder(Class<E> type, Set<E> values) {
        EnumSet<E> copy = EnumSet.noneOf(type);
        copy.addAll(values);
        return Collections.unmodifiableSet(copy);
    }
}
