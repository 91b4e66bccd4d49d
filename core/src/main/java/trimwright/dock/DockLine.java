package trimwright.dock;

import org.jspecify.annotations.Nullable;

/**
 * One line of a dock check. Numbers in the unit of the item, NaN where there are none.
 *
 * @param read what the instrument says
 * @param error half the 95 % interval of that
 * @param expected what is known to be so
 * @param tolerance by which it may differ
 * @param other channel that moved in the place of this one; null but for {@link DockFinding#SWAPPED}
 */
public record DockLine(
        DockItem item,
        double read,
        double error,
        double expected,
        double tolerance,
        DockFinding.Verdict verdict,
        DockFinding finding,
        @Nullable String other) {
    /** Read less expected; NaN where either is not known. */
    public double difference() {
        return read - expected;
    }

    /** A line about which no number tells. */
    static DockLine of(DockItem item, DockFinding finding) {
        return new DockLine(item, Double.NaN, Double.NaN, Double.NaN, Double.NaN, finding.usual(), finding, null);
    }

    /** The same under another finding that is no more than a note. */
    DockLine noted(DockFinding other) {
        return new DockLine(item, read, error, expected, tolerance, DockFinding.Verdict.NOTE, other, null);
    }

    /** The same under another finding. */
    DockLine with(DockFinding other) {
        return new DockLine(item, read, error, expected, tolerance, other.usual(), other, null);
    }
}
