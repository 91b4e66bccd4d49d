package trimwright.target;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Answer to a question between the nodes of a book.
 *
 * @param point the point asked for, null where the book has no answer
 * @param caveats why there is none, or why to doubt it
 */
public record TargetLookup(@Nullable TargetPoint point, Set<TargetCaveat> caveats) {
    public TargetLookup {
        EnumSet<TargetCaveat> copy = EnumSet.noneOf(TargetCaveat.class);
        copy.addAll(caveats);
        caveats = Collections.unmodifiableSet(copy);
    }

    static TargetLookup none(TargetCaveat caveat) {
        return new TargetLookup(null, Set.of(caveat));
    }

    /** The target, or null where there is none. */
    public @Nullable Target target() {
        return point == null ? null : point.target();
    }
}
