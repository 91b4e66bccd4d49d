package trimwright.ingest.nmea;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import trimwright.ingest.ClockMarks;
import trimwright.ingest.IngestNote;
import trimwright.ingest.IngestResult;
import trimwright.ingest.Issues;
import trimwright.ingest.LogReader;
import trimwright.ingest.TimeText;

/**
 * A whole log of NMEA 0183, given in pieces of any size. Memory grows with the values in it, not with its bytes. The
 * same bytes give the same result however they are cut.
 */
public final class NmeaReader implements LogReader, NmeaScanner.Sink {
    private final NmeaOptions options;
    private final Issues issues = new Issues();
    private final NmeaScanner scanner;
    private final NmeaDecoder decoder = new NmeaDecoder(issues);
    private final NmeaReading reading = new NmeaReading();
    private final List<SourceRows> sources = new ArrayList<>();
    private final ClockMarks valid = new ClockMarks();
    private final ClockMarks voided = new ClockMarks();
    private final ClockMarks stamps = new ClockMarks();
    private final ClockMarks arrivals = new ClockMarks();
    private long arrivalNanos = TimeText.NONE;
    private long lastPosition = -1;
    private long lastLine;
    private long sentences;
    private long usable;

    public NmeaReader(NmeaOptions options) {
        this.options = options;
        scanner = new NmeaScanner(issues, options.checksums(), this);
    }

    /** Reads a log that is at hand as a whole. */
    public static IngestResult read(byte[] log, NmeaOptions options) {
        NmeaReader reader = new NmeaReader(options);
        reader.accept(log, 0, log.length);
        return reader.finish();
    }

    @Override
    public void accept(byte[] bytes, int from, int to) {
        scanner.accept(bytes, from, to);
    }

    /** Reads on with bytes that arrived at a known time (ns since 1970 UTC by the recorder's clock). */
    public void accept(byte[] bytes, int from, int to, long arrivedNanos) {
        if (arrivedNanos != arrivalNanos) {
            markArrival();
            arrivalNanos = arrivedNanos;
        }
        scanner.accept(bytes, from, to);
    }

    /** What arrived at once was sent before, up to its last sentence. */
    private void markArrival() {
        if (lastPosition >= 0 && arrivalNanos != TimeText.NONE) {
            arrivals.add(lastPosition, lastLine, arrivalNanos);
            lastPosition = -1;
        }
    }

    @Override
    public void take(NmeaSentence sentence, long line, long position, long stampNanos) {
        sentences++;
        if (stampNanos != TimeText.NONE) {
            stamps.add(position, line, stampNanos);
        }
        lastPosition = position;
        lastLine = line;
        if (!decoder.decode(sentence, line, reading)) {
            return;
        }
        long mark = -1;
        if (reading.clockTrust() != NmeaReading.ClockTrust.NONE) {
            ClockMarks marks = reading.clockTrust() == NmeaReading.ClockTrust.VALID ? valid : voided;
            long date = reading.year() < 0
                    ? ClockMarks.NO_DATE
                    : ClockMarks.date(reading.year(), reading.month(), reading.day());
            mark = marks.add(position, line, reading.timeOfDayNanos(), date);
        }
        if (reading.hasValue()) {
            usable++;
            rowsOf(reading.talker(), reading.layout()).add(position, line, mark, reading);
        }
    }

    private SourceRows rowsOf(int talker, NmeaLayout layout) {
        for (int i = 0; i < sources.size(); i++) {
            if (sources.get(i).isOf(talker, layout)) {
                return sources.get(i);
            }
        }
        SourceRows rows = new SourceRows(talker, layout);
        sources.add(rows);
        return rows;
    }

    @Override
    public IngestResult finish() {
        return finish(0);
    }

    /** Satellite time less time of arrival (ns), the median; null where one of them is not known. */
    public @Nullable Long findClockError() {
        markArrival();
        return LogTimes.findClockError(valid, arrivals);
    }

    /**
     * The log is at its end: what it holds.
     *
     * @param clockError added to times of arrival where the log tells no time itself (ns)
     */
    public IngestResult finish(long clockError) {
        scanner.end();
        markArrival();
        arrivals.shift(clockError);
        Set<IngestNote> notes = EnumSet.noneOf(IngestNote.class);
        LogTimes times = LogTimes.of(this, notes);
        return new NmeaTracks(options.boat(), sources, issues, notes).build(times, scanner.lines(), usable);
    }

    Issues issues() {
        return issues;
    }

    @Nullable
    Long start() {
        return options.startNanos();
    }

    ClockMarks valid() {
        return valid;
    }

    ClockMarks voided() {
        return voided;
    }

    ClockMarks arrivals() {
        return arrivals;
    }

    ClockMarks stamps() {
        return stamps;
    }

    /** Chosen: a log is stamped if half of its sentences are. */
    boolean isStamped() {
        return stamps.size() > 0 && 2L * stamps.size() >= sentences;
    }

    boolean sawUnzonedStamp() {
        return scanner.sawUnzonedStamp();
    }
}
