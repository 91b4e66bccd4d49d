package trimwright.ingest.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import trimwright.ingest.Clock;
import trimwright.ingest.ClockMarks;
import trimwright.ingest.DoubleList;
import trimwright.ingest.IngestNote;
import trimwright.ingest.IssueKind;
import trimwright.ingest.Issues;
import trimwright.ingest.LongList;
import trimwright.ingest.Sampled;
import trimwright.ingest.Timeline;
import trimwright.track.BoatTrack;
import trimwright.track.ChannelGroup;
import trimwright.track.QualityCheck;

/** The rows of one boat, in order of arrival. Each states its time; rows of the same stamp are spread to the next. */
final class BoatRows {
    /** ns between rows of a table that has a single stamp: chosen. */
    private static final double PACE = 1e9;

    private final String boat;
    private final CsvMapping mapping;
    private final ClockMarks marks = new ClockMarks();
    private final LongList lines = new LongList();
    private final List<DoubleList> values = new ArrayList<>();

    BoatRows(String boat, CsvMapping mapping) {
        this.boat = boat;
        this.mapping = mapping;
        for (int i = 0; i < mapping.columns().size(); i++) {
            values.add(new DoubleList());
        }
    }

    String boat() {
        return boat;
    }

    void beginFull(long timeNanos, long line) {
        marks.add(lines.size(), line, timeNanos);
        lines.add(line);
    }

    void beginTimeOfDay(long nanosOfDay, long line) {
        marks.add(lines.size(), line, nanosOfDay, ClockMarks.NO_DATE);
        lines.add(line);
    }

    void put(int column, double value) {
        values.get(column).add(value);
    }

    /** Whether the rows have times of day only, and the start is not known. */
    boolean needsStart(@Nullable Long start) {
        return start == null && marks.size() > 0 && !marks.hasAnyDate();
    }

    /** The track, or null where no value is left. */
    @Nullable
    BoatTrack toTrack(@Nullable Long start, Issues issues, Set<IngestNote> notes) {
        Clock clock = Clock.of(marks, start, PACE, issues, notes);
        if (clock == null) {
            return null;
        }
        List<String> paths = mapping.columns().stream().map(CsvColumn::path).toList();
        Sampled samples = new Sampled(paths);
        for (int row = 0; row < lines.size(); row++) {
            long stated = clock.ofMark(row, row);
            if (stated != Timeline.NONE && stated != clock.anchorBefore(row)) {
                issues.add(IssueKind.TIME_NOT_RISING, lines.get(row), boat);
            } else if (stated != Timeline.NONE) {
                samples.begin(clock.at(row), lines.get(row), Sampled.TimeOrigin.LOG);
                for (int column = 0; column < values.size(); column++) {
                    samples.put(column, values.get(column).get(row));
                }
            }
        }
        ChannelGroup group = samples.toGroup(mapping.text().group(), paths, issues);
        return group == null ? null : new BoatTrack(boat, List.of(QualityCheck.mark(group)));
    }
}
