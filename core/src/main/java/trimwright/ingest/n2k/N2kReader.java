package trimwright.ingest.n2k;

import java.util.ArrayList;
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
import trimwright.ingest.LineCutter;
import trimwright.ingest.LogReader;
import trimwright.ingest.Sampled;
import trimwright.ingest.SourceChoice;
import trimwright.ingest.SourceTrack;
import trimwright.ingest.TimeText;
import trimwright.ingest.Timeline;

/**
 * A whole log of NMEA 2000 in text, given in pieces of any size. Time is the logger's own where half of the frames have
 * it with a date; else that of messages that state date and time; else times of day from the given start; else the
 * frames are spaced by the nominal intervals of the messages.
 */
public final class N2kReader implements LogReader, LineCutter.Sink {
    /** Bytes of the longest line: 223 bytes of three characters each, and what stands before them. Chosen, with room. */
    private static final int LONGEST = 1024;

    private final String boat;
    private final @Nullable Long start;
    private final Issues issues = new Issues();
    private final LineCutter lines = new LineCutter(LONGEST, issues, this);
    private final FrameText text = new FrameText();
    private final Frame frame = new Frame();
    private final FastPackets packets = new FastPackets(issues);
    private final N2kDecoder decoder = new N2kDecoder();
    private final List<DeviceRows> devices = new ArrayList<>();
    private final ClockMarks full = new ClockMarks();
    private final ClockMarks ofDay = new ClockMarks();
    private final ClockMarks stated = new ClockMarks();
    private long frames;
    private long usable;

    /** @param startNanos ns since 1970 UTC, for logs without a date, or null */
    public N2kReader(String boat, @Nullable Long startNanos) {
        this.boat = boat;
        start = startNanos;
    }

    /** Reads a log that is at hand as a whole. */
    public static IngestResult read(byte[] log, String boat, @Nullable Long startNanos) {
        N2kReader reader = new N2kReader(boat, startNanos);
        reader.accept(log, 0, log.length);
        return reader.finish();
    }

    /** Whether at least half of the lines that hold anything but a remark are frames. */
    public static boolean isLikely(byte[] head, int length) {
        FrameText text = new FrameText();
        Frame frame = new Frame();
        long[] seen = new long[2];
        LineCutter cutter = new LineCutter(LONGEST, new Issues(), (bytes, from, to, line) -> {
            if (!isRemark(bytes, from, to)) {
                seen[text.read(bytes, from, to, frame) ? 1 : 0]++;
            }
        });
        cutter.accept(head, 0, length);
        return seen[1] > 0 && seen[1] >= seen[0];
    }

    @Override
    public void accept(byte[] bytes, int from, int to) {
        lines.accept(bytes, from, to);
    }

    @Override
    public void take(byte[] bytes, int from, int to, long line) {
        if (isRemark(bytes, from, to)) {
            return;
        }
        if (!text.read(bytes, from, to, frame)) {
            issues.add(IssueKind.NOT_A_FRAME, line, bytes, from, to);
            return;
        }
        long position = frames++;
        long mark = switch (frame.stamp) {
            case FULL -> full.add(position, line, frame.nanos);
            case TIME_OF_DAY -> ofDay.add(position, line, frame.nanos, ClockMarks.NO_DATE);
            case NONE -> -1;
        };
        boolean inPieces = frame.pgn == N2kDecoder.GNSS_FIX && frame.length <= 8;
        if ((inPieces && !packets.complete(frame, line)) || !decoder.decode(frame)) {
            return;
        }
        if (decoder.clock() != TimeText.NONE) {
            stated.add(position, line, decoder.clock());
        }
        if (decoder.hasValue()) {
            usable++;
            rowsOf(frame.source, decoder.layout()).add(position, line, mark, decoder);
        }
    }

    private DeviceRows rowsOf(int device, N2kLayout layout) {
        for (DeviceRows rows : devices) {
            if (rows.isOf(device, layout)) {
                return rows;
            }
        }
        DeviceRows rows = new DeviceRows(device, layout);
        devices.add(rows);
        return rows;
    }

    private static boolean isRemark(byte[] bytes, int from, int to) {
        int at = from;
        while (at < to && bytes[at] <= ' ') {
            at++;
        }
        return at == to || bytes[at] == '#';
    }

    @Override
    public IngestResult finish() {
        lines.end();
        Set<IngestNote> notes = EnumSet.noneOf(IngestNote.class);
        IngestReport report = new IngestReport(lines.lines(), usable, issues, notes);
        if (usable == 0) {
            return new IngestResult.Nothing(report);
        }
        boolean stamped = 2L * full.size() >= frames;
        ClockMarks marks = stamped ? full : stated.size() > 0 ? stated : ofDay;
        Clock clock = Clock.of(marks, start, pace(), issues, notes);
        if (notes.remove(IngestNote.SPACING_ASSUMED)) {
            notes.add(IngestNote.SPACING_OF_MESSAGES);
        }
        if (clock == null) {
            return new IngestResult.NoDate(new IngestReport(lines.lines(), usable, issues, notes));
        }
        if (marks.size() > 0) {
            notes.add(marks.equals(stated) ? IngestNote.TIME_FROM_SENTENCES : IngestNote.TIME_FROM_STAMPS);
        }
        List<SourceChoice.Source> sources = new ArrayList<>();
        for (DeviceRows rows : devices) {
            sources.add(new SourceChoice.Source(
                    rows.name(),
                    rows.layout().ordinal(),
                    SourceChoice.Origin.DEVICE,
                    placed(rows, clock, !marks.equals(stated), notes)));
            if (rows.layout() == N2kLayout.ATTITUDE || rows.layout() == N2kLayout.RUDDER) {
                notes.add(IngestNote.INSTRUMENT_SIGNS);
            }
        }
        return SourceTrack.of(boat, sources, notes, report);
    }

    private static Sampled placed(DeviceRows rows, Clock clock, boolean byMarks, Set<IngestNote> notes) {
        Sampled samples = new Sampled(rows.layout().paths());
        for (int i = 0; i < rows.size(); i++) {
            boolean own = byMarks && rows.mark(i) >= 0;
            long time = own ? clock.ofMark(rows.mark(i), rows.position(i)) : clock.at(rows.position(i));
            if (time == Timeline.NONE) {
                continue;
            }
            boolean far = !own && clock.isFarOutside(rows.position(i));
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

    /** ns for a frame of a log without times: as long as the device that spoke most would have needed for it. */
    private double pace() {
        double longest = 0;
        for (DeviceRows rows : devices) {
            double seconds = rows.size() * rows.layout().interval();
            longest = seconds > longest ? seconds : longest;
        }
        return 1e9 * (longest > 0 ? longest : 1) / frames;
    }
}
