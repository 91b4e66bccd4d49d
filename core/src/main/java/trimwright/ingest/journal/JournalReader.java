package trimwright.ingest.journal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import trimwright.ingest.IngestNote;
import trimwright.ingest.IngestReport;
import trimwright.ingest.IngestResult;
import trimwright.ingest.IssueKind;
import trimwright.ingest.Issues;
import trimwright.ingest.LogReader;
import trimwright.ingest.nmea.ChecksumRule;
import trimwright.ingest.nmea.NmeaOptions;
import trimwright.ingest.nmea.NmeaReader;
import trimwright.ingest.signalk.SignalKReader;
import trimwright.track.BoatTrack;

/**
 * A whole journal, given in pieces of any size: each of its sources goes through the reader of its kind. Sources that
 * tell their time are placed by it, as in any log. Those that do not are placed by the time of arrival, put right by what
 * the satellite times of the other sources say of the recorder's clock (the median difference).
 */
public final class JournalReader implements LogReader {
    private static final byte[] LINE_END = {'\n'};

    private final String defaultBoat;
    private final JournalScanner scanner = new JournalScanner(this::take);
    private final Map<Integer, Source> sources = new LinkedHashMap<>();
    private final Issues issues = new Issues();

    private interface Source {
        void accept(byte[] bytes, int from, int to, long arrivalNanos);
    }

    private record NmeaSource(NmeaReader reader, JournalSource.Framing framing) implements Source {
        @Override
        public void accept(byte[] bytes, int from, int to, long arrivalNanos) {
            reader.accept(bytes, from, to, arrivalNanos);
            if (framing == JournalSource.Framing.PACKETS && to > from && bytes[to - 1] != '\n') {
                reader.accept(LINE_END, 0, 1, arrivalNanos);
            }
        }
    }

    private record SignalKSource(SignalKReader reader, JournalSource.Framing framing) implements Source {
        @Override
        public void accept(byte[] bytes, int from, int to, long arrivalNanos) {
            reader.accept(bytes, from, to, arrivalNanos);
            if (framing == JournalSource.Framing.PACKETS && to > from && bytes[to - 1] != '\n') {
                reader.accept(LINE_END, 0, 1, arrivalNanos);
            }
        }
    }

    /** @param defaultBoat name for sources that name no boat */
    public JournalReader(String defaultBoat) {
        this.defaultBoat = defaultBoat;
    }

    @Override
    public void accept(byte[] bytes, int from, int to) {
        scanner.accept(bytes, from, to);
    }

    private void take(RecordKind kind, int number, long arrivalNanos, byte[] bytes, int from, int to) {
        if (kind == RecordKind.SOURCE) {
            JournalSource declared = JournalSource.find(bytes, from, to);
            if (declared == null) {
                issues.add(IssueKind.UNKNOWN_SOURCE, scanner.records(), bytes, from, to);
            } else {
                sources.put(number, begin(declared, arrivalNanos));
            }
        } else if (kind == RecordKind.DATA) {
            Source source = sources.get(number);
            if (source == null) {
                issues.add(IssueKind.UNKNOWN_SOURCE, scanner.records(), bytes, from, to);
            } else {
                source.accept(bytes, from, to, arrivalNanos);
            }
        }
    }

    private Source begin(JournalSource declared, long arrivalNanos) {
        String boat = declared.boat().isEmpty() ? defaultBoat : declared.boat();
        return switch (declared.protocol()) {
            // The recorder's clock stands in for a date, where a source tells the time of day only.
            case NMEA0183 ->
                new NmeaSource(
                        new NmeaReader(new NmeaOptions(boat, arrivalNanos, ChecksumRule.REQUIRED)), declared.framing());
            case SIGNALK -> new SignalKSource(new SignalKReader(boat), declared.framing());
        };
    }

    @Override
    public IngestResult finish() {
        if (scanner.unread() > 0) {
            issues.add(IssueKind.BROKEN_OFF, scanner.records() + 1, scanner.unread() + " bytes");
        }
        long ahead = clockError();
        Set<IngestNote> notes = EnumSet.of(IngestNote.JOURNAL);
        List<BoatTrack> tracks = new ArrayList<>();
        long lines = 0;
        long usable = 0;
        for (Source source : sources.values()) {
            IngestResult result = source instanceof NmeaSource nmea
                    ? nmea.reader().finish(ahead)
                    : ((SignalKSource) source).reader().finish(ahead);
            lines += result.report().lines();
            usable += result.report().usable();
            issues.addAll(result.report().issues());
            notes.addAll(result.report().notes());
            if (result instanceof IngestResult.Tracks found) {
                tracks.addAll(found.tracks());
            }
        }
        // Every source was given a start, so this note would be about nothing that the user did.
        notes.remove(IngestNote.START_NOT_USED);
        IngestReport report = new IngestReport(lines, usable, issues, notes);
        return tracks.isEmpty() ? new IngestResult.Nothing(report) : new IngestResult.Tracks(tracks, report);
    }

    /** Satellite time less time of arrival (ns), the median of the sources that tell; 0 where none does. */
    private long clockError() {
        long[] told = sources.values().stream()
                .filter(NmeaSource.class::isInstance)
                .map(source -> ((NmeaSource) source).reader().findClockError())
                .filter(error -> error != null)
                .mapToLong(error -> error)
                .toArray();
        Arrays.sort(told);
        return told.length == 0 ? 0 : told[told.length / 2];
    }
}
