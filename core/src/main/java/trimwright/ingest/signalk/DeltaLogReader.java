package trimwright.ingest.signalk;

import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import trimwright.ingest.Clock;
import trimwright.ingest.ClockMarks;
import trimwright.ingest.IngestNote;
import trimwright.ingest.IngestReport;
import trimwright.ingest.IngestResult;
import trimwright.ingest.IssueKind;
import trimwright.ingest.Issues;
import trimwright.ingest.LogReader;
import trimwright.ingest.Sampled;
import trimwright.ingest.SourceTrack;
import trimwright.ingest.TimeText;

/**
 * A log of Signal K deltas, as a server writes it. Each source and path is a group. Updates without a time lie between
 * those that have one, by their order. Only the boat's own values are taken: other vessels in the log (heard by radio)
 * are counted and left out.
 */
public final class DeltaLogReader implements LogReader {
    /** ns between updates of a log with a single time: chosen. */
    private static final double PACE = 1e8;

    /** Bytes in which a first delta shows what it is. Chosen. */
    private static final int HEAD = 1 << 12;

    private final String boat;
    private final @Nullable Long start;
    private final Issues issues = new Issues();
    private final DeltaScanner scanner = new DeltaScanner(issues, new Own());
    private final ClockMarks marks = new ClockMarks();
    private final DeltaGroups groups = new DeltaGroups();
    private long position;
    private long usable;

    /**
     * @param boat name of the boat herself
     * @param startNanos begin of a log without any time (ns since 1970 UTC), or null
     */
    public DeltaLogReader(String boat, @Nullable Long startNanos) {
        this.boat = boat;
        start = startNanos;
    }

    /** Whether the first line is a delta, or the greeting of a server before one. */
    public static boolean isLikely(byte[] head, int length) {
        String text = new String(head, 0, Math.min(length, HEAD), StandardCharsets.UTF_8).stripLeading();
        return text.startsWith("{") && (text.contains("\"updates\"") || text.contains("\"roles\""));
    }

    private final class Own implements DeltaScanner.Sink {
        @Override
        public boolean wants(String context, long line) {
            boolean own = context.isEmpty() || context.equals(DeltaScanner.SELF);
            if (!own) {
                issues.add(IssueKind.OTHER_VESSEL, line, context);
            }
            return own;
        }

        @Override
        public void take(
                String context, String source, long line, long timeNanos, List<String> paths, double[] values) {
            position++;
            // The time of an update whose values are not read still tells when its neighbours came.
            long mark = timeNanos == TimeText.NONE ? -1 : marks.add(position, line, timeNanos);
            boolean any = false;
            for (double value : values) {
                any |= !Double.isNaN(value);
            }
            usable += any ? 1 : 0;
            if (!paths.isEmpty()) {
                groups.add(source, position, line, mark, paths, values);
            }
        }
    }

    /** By the clock of the log. */
    private record ByClock(Clock clock, Set<IngestNote> notes) implements DeltaRows.Placing {
        @Override
        public long time(long place, long mark) {
            return mark >= 0 ? clock.ofMark((int) mark, place) : clock.at(place);
        }

        @Override
        public Sampled.TimeOrigin origin(long place, long mark) {
            if (mark >= 0 || !clock.isFarOutside(place)) {
                return Sampled.TimeOrigin.LOG;
            }
            notes.add(IngestNote.TIME_EXTRAPOLATED);
            return Sampled.TimeOrigin.REPAIRED;
        }
    }

    @Override
    public void accept(byte[] bytes, int from, int to) {
        scanner.accept(bytes, from, to);
    }

    @Override
    public IngestResult finish() {
        scanner.end();
        Set<IngestNote> notes = EnumSet.noneOf(IngestNote.class);
        IngestReport report = new IngestReport(scanner.lines(), usable, issues, notes);
        if (usable == 0) {
            return new IngestResult.Nothing(report);
        }
        Clock clock = Clock.of(marks, start, PACE, issues, notes);
        if (clock == null) {
            return new IngestResult.NoDate(report);
        }
        if (marks.size() > 0) {
            notes.add(IngestNote.TIME_FROM_STAMPS);
        }
        return SourceTrack.of(boat, groups.placed(new ByClock(clock, notes)), notes, report);
    }
}
