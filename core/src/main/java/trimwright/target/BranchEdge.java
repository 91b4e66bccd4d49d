package trimwright.target;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Values of a surface where its branch ends within a cell, so that a corner is missing. Two roads: between the best speed made good of
 * the wind and the next angles that are solved, for the branch reaches to there; and, by {@link #beyond} only, on from the nearest
 * wind by the slopes there. Both are rough and say so.
 */
final class BranchEdge {
    /** Columns that are looked through for solved ones beside the best angle: chosen. */
    private static final int COLUMNS = 3;

    private static final List<TargetMode> ALONG = List.of(TargetMode.UPWIND, TargetMode.DOWNWIND);

    private final BookSurface surface;

    BranchEdge(BookSurface surface) {
        this.surface = surface;
    }

    /** The value in a cell without all corners, or none. */
    TargetLookup at(BookSurface.Place place) {
        for (TargetMode mode : ALONG) {
            TargetLookup found =
                    besideBest(place, surface.best(mode, place.wind()).point(), place);
            if (found != null) {
                return found;
            }
        }
        return TargetLookup.none(TargetCaveat.NEAR_BRANCH_EDGE);
    }

    /** On from the nearest wind of the book by the slopes there, no farther than to the middle between two winds; none without it. */
    TargetLookup beyond(BookSurface.Place place) {
        BookSurface.Place nearest = place.atWind(place.s() <= 0.5 ? place.i() : place.i1());
        if (nearest.isSolved(surface)) {
            Set<TargetCaveat> caveats = EnumSet.of(TargetCaveat.NEAR_BRANCH_EDGE);
            surface.addCaveats(nearest.i(), place.j(), caveats);
            surface.addCaveats(nearest.i(), place.j1(), caveats);
            return surface.answer(place, surface.tables().onFrom(nearest), surface.limits(nearest.i(), place), caveats);
        }
        for (TargetMode mode : ALONG) {
            TargetLookup found =
                    besideBest(place, surface.bestBeyond(mode, place.wind()).point(), nearest);
            if (found != null) {
                return found;
            }
        }
        return TargetLookup.none(TargetCaveat.NEAR_BRANCH_EDGE);
    }

    /** Between a best angle and the first angle farther from the wind's eye, or from dead downwind, that is solved at those winds. */
    private @Nullable TargetLookup besideBest(
            BookSurface.Place place, @Nullable TargetPoint best, BookSurface.Place winds) {
        if (best == null) {
            return null;
        }
        double angle = best.trueWindAngle();
        int step = StrictMath.cos(angle) > 0 ? 1 : -1;
        int column = surface.firstPast(angle, step);
        for (int tried = 0; tried < COLUMNS && surface.hasAngle(column); tried++, column += step) {
            BookSurface.Place on = winds.atAngle(column, surface.angle(column));
            if (on.isSolved(surface)) {
                double u = (place.angle() - angle) / (surface.angle(column) - angle);
                return u < -BookSurface.EDGE || u > 1 + BookSurface.EDGE ? null : ruled(place, best, on, u);
            }
        }
        return null;
    }

    private TargetLookup ruled(BookSurface.Place place, TargetPoint best, BookSurface.Place on, double u) {
        double[] from = TargetVector.of(best);
        double[] to = surface.tables().onFrom(on);
        double[] row = new double[TargetVector.SIZE];
        for (int k = 0; k < row.length; k++) {
            row[k] = from[k] + u * (to[k] - from[k]);
        }
        // At the best angle speed made good is stationary, so speed grows with the angle as speed times its tangent.
        double wide = on.angle() - best.trueWindAngle();
        double slope = from[TargetVector.SPEED] * StrictMath.tan(best.trueWindAngle());
        row[TargetVector.SPEED] = Hermite.value(
                from[TargetVector.SPEED],
                wide * slope,
                to[TargetVector.SPEED],
                wide * surface.tables().speedSlope(on),
                u);
        Set<TargetCaveat> caveats = EnumSet.of(TargetCaveat.NEAR_BRANCH_EDGE);
        caveats.addAll(best.getTarget().caveats());
        surface.addCaveats(on.i(), on.j(), caveats);
        surface.addCaveats(on.i1(), on.j(), caveats);
        return surface.answer(place, row, best.getTarget().limits(), caveats);
    }
}
