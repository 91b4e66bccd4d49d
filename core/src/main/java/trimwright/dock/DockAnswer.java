package trimwright.dock;

import java.util.List;

/** What comes of a dock check. */
public sealed interface DockAnswer {
    /**
     * The list, line by line.
     *
     * @param startNanos begin of the list (ns since 1970 UTC)
     * @param seconds of data from there on
     * @param lines one an item, in their order
     * @param prior what it says of the instruments' offsets
     */
    record Checked(long startNanos, double seconds, List<DockLine> lines, List<DockOffset> prior)
            implements DockAnswer {
        public Checked {
            lines = List.copyOf(lines);
            prior = List.copyOf(prior);
        }

        /** The line of an item. */
        public DockLine get(DockItem item) {
            return lines.get(item.ordinal());
        }
    }

    /**
     * Nothing can be checked.
     *
     * @param seconds after the begin at which that shows
     * @param value speed (m/s), turn of the heading (rad), or seconds of data, as the reason has it
     */
    record Refused(Reason reason, double seconds, double value) implements DockAnswer {}

    /** Why nothing can be checked. */
    enum Reason {
        /** She moved. */
        MOVING,
        /** Her heading turned. */
        TURNING,
        /** Neither speed nor heading tells whether she lay at rest. */
        NOT_KNOWN,
        /** The data end before the first step does. */
        TOO_SHORT
    }
}
