package trimwright.boat;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * All that a crew reads on its boat. Marks of one wing come before marks for all wings.
 *
 * @param sets one for a control, or for a control of one wing
 */
public record BoatMarks(List<OfWing> sets) {
    /** A boat of whose marks nothing is known. */
    public static final BoatMarks NONE = new BoatMarks(List.of());

    /**
     * Marks of a control.
     *
     * @param wing id of the wing that they belong to; null: of any
     */
    public record OfWing(@Nullable String wing, ControlMarks marks) {}

    public BoatMarks {
        sets = List.copyOf(sets);
    }

    /** What is read on that control under that wing; null where it bears no marks. */
    public @Nullable ControlMarks find(String wing, MarkedControl control) {
        ControlMarks ofAny = null;
        for (OfWing set : sets) {
            if (set.marks().control() == control && wing.equals(set.wing())) {
                return set.marks();
            }
            if (set.marks().control() == control && set.wing() == null) {
                ofAny = set.marks();
            }
        }
        return ofAny;
    }
}
