package trimwright.ingest;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/**
 * How the reading of a log went.
 *
 * @param lines lines read, comments and blank lines included
 * @param usable sentences or rows that gave at least one value
 * @param issues what was wrong
 * @param notes choices made
 */
public record IngestReport(long lines, long usable, Issues issues, Set<IngestNote> notes) {
    public IngestReport {
        EnumSet<IngestNote> copy = EnumSet.noneOf(IngestNote.class);
        copy.addAll(notes);
        notes = Collections.unmodifiableSet(copy);
    }
}
