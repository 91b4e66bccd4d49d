package trimwright.ingest.signalk;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import trimwright.ingest.IngestNote;
import trimwright.ingest.IngestReport;
import trimwright.ingest.IngestResult;
import trimwright.ingest.Issues;
import trimwright.ingest.LongList;
import trimwright.ingest.Sampled;
import trimwright.ingest.SourceChoice;
import trimwright.ingest.TimeText;
import trimwright.track.BoatTrack;
import trimwright.track.ChannelGroup;
import trimwright.track.QualityCheck;

/**
 * A whole recording of Signal K deltas, given in pieces of any size with the time at which each arrived. Paths that come
 * in one update make a group. Time is what the update states, else that of arrival.
 */
public final class SignalKReader {
    private final String boat;
    private final Issues issues = new Issues();
    private final DeltaScanner scanner = new DeltaScanner(issues, this::take);
    private final Map<String, Map<List<String>, Group>> boats = new TreeMap<>();
    private long arrivalNanos;
    private long usable;
    private boolean arrived;

    private static final class Group {
        private final Sampled samples;
        private final LongList stated = new LongList();

        Group(List<String> paths) {
            samples = new Sampled(paths);
        }
    }

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

    private void take(String context, long line, long timeNanos, List<String> paths, double[] values) {
        usable++;
        Group group = boats.computeIfAbsent(boatOf(context, boat), name -> new LinkedHashMap<>())
                .computeIfAbsent(paths, Group::new);
        boolean stated = timeNanos != TimeText.NONE;
        arrived |= !stated;
        group.stated.add(stated ? 1 : 0);
        group.samples.begin(stated ? timeNanos : arrivalNanos, line, Sampled.TimeOrigin.LOG);
        for (int i = 0; i < values.length; i++) {
            group.samples.put(i, values[i]);
        }
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
        List<BoatTrack> tracks = new ArrayList<>();
        for (Map.Entry<String, Map<List<String>, Group>> entry : boats.entrySet()) {
            List<ChannelGroup> groups = groups(List.copyOf(entry.getValue().values()), clockError, notes);
            if (!groups.isEmpty()) {
                tracks.add(new BoatTrack(entry.getKey(), groups));
            }
        }
        IngestReport report = new IngestReport(scanner.lines(), usable, issues, notes);
        return tracks.isEmpty() ? new IngestResult.Nothing(report) : new IngestResult.Tracks(tracks, report);
    }

    private List<ChannelGroup> groups(List<Group> found, long clockError, Set<IngestNote> notes) {
        List<SourceChoice.Source> sources = new ArrayList<>();
        for (int g = 0; g < found.size(); g++) {
            sources.add(new SourceChoice.Source(
                    "signalk-" + (g + 1), g, SourceChoice.Origin.DEVICE, shifted(found.get(g), clockError)));
        }
        List<List<String>> names = SourceChoice.name(sources, notes);
        List<ChannelGroup> groups = new ArrayList<>();
        for (int g = 0; g < sources.size(); g++) {
            ChannelGroup group = sources.get(g).samples().toGroup(sources.get(g).name(), names.get(g), issues);
            if (group != null) {
                groups.add(QualityCheck.mark(group));
            }
        }
        return groups;
    }

    private static Sampled shifted(Group group, long clockError) {
        Sampled shifted = new Sampled(group.samples.paths());
        for (int i = 0; i < group.samples.size(); i++) {
            long by = group.stated.get(i) == 1 ? 0 : clockError;
            shifted.begin(group.samples.time(i) + by, group.samples.line(i), Sampled.TimeOrigin.LOG);
            for (int path = 0; path < shifted.paths().size(); path++) {
                shifted.put(path, group.samples.value(path, i));
            }
        }
        return shifted;
    }
}
