package trimwright.ingest.signalk;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import trimwright.ingest.IngestNote;
import trimwright.ingest.IngestReport;
import trimwright.ingest.IngestResult;
import trimwright.ingest.Issues;
import trimwright.ingest.SourceTrack;
import trimwright.ingest.TimeText;
import trimwright.track.BoatTrack;

/**
 * A whole recording of Signal K deltas of one or several boats, given in pieces of any size with the time at which each
 * arrived. Each source and path is a group. Time is what the update states, else that of arrival.
 */
public final class SignalKReader {
    private static final long STATED = 0;
    private static final long ARRIVED = -1;

    private final String boat;
    private final Issues issues = new Issues();
    private final DeltaScanner scanner = new DeltaScanner(issues, this::take);
    private final Map<String, DeltaGroups> boats = new TreeMap<>();
    private long arrivalNanos;
    private long usable;
    private boolean arrived;

    /** @param boat name of the server's own boat; others are named by their context */
    public SignalKReader(String boat) {
        this.boat = boat;
    }

    /** The boat that a context speaks of: the given one for none and for the server's own. */
    public static String boatOf(String context, String otherwise) {
        return context.isEmpty() || context.equals(DeltaScanner.SELF)
                ? otherwise
                : context.startsWith("vessels.") ? context.substring("vessels.".length()) : context;
    }

    /** Reads on with bytes that arrived at that time (ns since 1970 UTC by the recorder's clock). */
    public void accept(byte[] bytes, int from, int to, long arrivedNanos) {
        arrivalNanos = arrivedNanos;
        scanner.accept(bytes, from, to);
    }

    private void take(String context, String source, long line, long timeNanos, List<String> paths, double[] values) {
        if (paths.isEmpty()) {
            return;
        }
        usable++;
        boolean stated = timeNanos != TimeText.NONE;
        arrived |= !stated;
        boats.computeIfAbsent(boatOf(context, boat), name -> new DeltaGroups())
                .add(source, stated ? timeNanos : arrivalNanos, line, stated ? STATED : ARRIVED, paths, values);
    }

    /**
     * The recording is at its end: what it holds.
     *
     * @param clockError added to times of arrival (ns)
     */
    public IngestResult finish(long clockError) {
        scanner.end();
        Set<IngestNote> notes = EnumSet.noneOf(IngestNote.class);
        if (arrived) {
            notes.add(IngestNote.TIME_FROM_ARRIVAL);
        }
        IngestReport report = new IngestReport(scanner.lines(), usable, issues, notes);
        DeltaRows.Placing placing = (nanos, mark) -> mark == STATED ? nanos : nanos + clockError;
        List<BoatTrack> tracks = new ArrayList<>();
        for (Map.Entry<String, DeltaGroups> entry : boats.entrySet()) {
            IngestResult one = SourceTrack.of(entry.getKey(), entry.getValue().placed(placing), notes, report);
            if (one instanceof IngestResult.Tracks found) {
                tracks.addAll(found.tracks());
            }
        }
        IngestReport whole = new IngestReport(scanner.lines(), usable, issues, notes);
        return tracks.isEmpty() ? new IngestResult.Nothing(whole) : new IngestResult.Tracks(tracks, whole);
    }
}
