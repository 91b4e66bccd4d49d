package trimwright.ingest.nmea;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import trimwright.ingest.IngestNote;
import trimwright.ingest.IngestReport;
import trimwright.ingest.IngestResult;
import trimwright.ingest.Issues;
import trimwright.ingest.Sampled;
import trimwright.ingest.SourceChoice;
import trimwright.ingest.SourceTrack;
import trimwright.ingest.Timeline;

/** From rows and their times to the track: one group for each talker, layout and device. */
final class NmeaTracks {
    private final String boat;
    private final List<SourceRows> sources;
    private final Issues issues;
    private final Set<IngestNote> notes;

    NmeaTracks(String boat, List<SourceRows> sources, Issues issues, Set<IngestNote> notes) {
        this.boat = boat;
        this.sources = sources;
        this.issues = issues;
        this.notes = notes;
    }

    IngestResult build(@Nullable LogTimes times, long lines, long usable) {
        if (usable == 0) {
            return new IngestResult.Nothing(new IngestReport(lines, usable, issues, notes));
        }
        if (times == null) {
            return new IngestResult.NoDate(new IngestReport(lines, usable, issues, notes));
        }
        List<SourceChoice.Source> found = new ArrayList<>();
        for (SourceRows rows : sources) {
            List<Sampled> devices = times.areOwn(rows.layout())
                    ? DeviceSplit.of(rows, times, issues, notes)
                    : List.of(placed(rows, times));
            for (int d = 0; d < devices.size(); d++) {
                String name = rows.name() + (d == 0 ? "" : "-" + (d + 1));
                found.add(new SourceChoice.Source(name, rows.layout().ordinal(), origin(rows), devices.get(d)));
            }
            if (rows.layout() == NmeaLayout.XDR) {
                notes.add(IngestNote.INSTRUMENT_SIGNS);
            }
        }
        return SourceTrack.of(boat, found, notes, new IngestReport(lines, usable, issues, notes));
    }

    private static SourceChoice.Origin origin(SourceRows rows) {
        return rows.isComputed() ? SourceChoice.Origin.OTHER_PROGRAM : SourceChoice.Origin.DEVICE;
    }

    private Sampled placed(SourceRows rows, LogTimes times) {
        Sampled samples = new Sampled(rows.layout().paths());
        for (int i = 0; i < rows.size(); i++) {
            long time = times.of(rows, i);
            if (time == Timeline.NONE) {
                continue;
            }
            boolean far = times.isFarOutside(rows, i);
            if (far) {
                notes.add(IngestNote.TIME_EXTRAPOLATED);
            }
            samples.begin(time, rows.line(i), far ? Sampled.TimeOrigin.REPAIRED : Sampled.TimeOrigin.LOG);
            for (int path = 0; path < rows.layout().paths().size(); path++) {
                samples.put(path, rows.value(path, i));
            }
        }
        return samples;
    }
}
