package trimwright.ingest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import trimwright.track.BoatTrack;
import trimwright.track.ChannelGroup;
import trimwright.track.QualityCheck;

/** The last step of every log of several sources: sources to one boat's track, a group for each of them. */
public final class SourceTrack {
    private SourceTrack() {}

    /** A track of all that has values, its samples marked for quality; nothing where no source has any. */
    public static IngestResult of(
            String boat, List<SourceChoice.Source> sources, Set<IngestNote> notes, IngestReport report) {
        List<SourceChoice.Source> sorted = new ArrayList<>(sources);
        sorted.sort(Comparator.comparing(SourceChoice.Source::name));
        List<List<String>> names = SourceChoice.name(sorted, notes);
        List<ChannelGroup> groups = new ArrayList<>();
        for (int i = 0; i < sorted.size(); i++) {
            SourceChoice.Source source = sorted.get(i);
            ChannelGroup group = source.samples().toGroup(source.name(), names.get(i), report.issues());
            if (group != null) {
                groups.add(QualityCheck.mark(group));
            }
        }
        IngestReport whole = new IngestReport(report.lines(), report.usable(), report.issues(), notes);
        return groups.isEmpty()
                ? new IngestResult.Nothing(whole)
                : new IngestResult.Tracks(List.of(new BoatTrack(boat, groups)), whole);
    }
}
