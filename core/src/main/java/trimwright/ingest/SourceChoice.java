package trimwright.ingest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import trimwright.track.Paths;

/**
 * Which of several sources of a quantity bears its plain path; the others get their group's name behind an {@code @}.
 * Nothing is ever averaged or mixed over sources.
 *
 * <p>A source that another program computed never bears a plain path. Of the rest, the one with most samples; those with
 * at least {@value #AS_MANY} of that count as equal, and of them the first by preference of sentence, then by name.
 * Quantities that belong together (angle and speed of a wind, both halves of a position) go by the first of them, also
 * where a device sends them in groups of their own.
 */
public final class SourceChoice {
    /** Chosen: two sentences of one instrument differ by a few lost lines. */
    private static final double AS_MANY = 0.8;

    private static final Map<String, String> LEAD = Map.of(
            Paths.AWS, Paths.AWA,
            Paths.TWS, Paths.TWA_WATER,
            Paths.LONGITUDE, Paths.LATITUDE,
            Paths.COG, Paths.SOG);

    private SourceChoice() {}

    /**
     * One source on its way to a group.
     *
     * @param name of the group
     * @param device that sends it, where one device fills several groups; else the name of the group
     * @param preference of its kind of sentence, lower is better
     * @param origin whether a device measured it
     */
    public record Source(String name, String device, int preference, Origin origin, Sampled samples) {
        /** A group that is a device of its own. */
        public Source(String name, int preference, Origin origin, Sampled samples) {
            this(name, name, preference, origin, samples);
        }

        int present(String path) {
            int at = samples.paths().indexOf(path);
            return at < 0 ? 0 : samples.present(at);
        }
    }

    /** Where values come from. */
    public enum Origin {
        DEVICE,
        OTHER_PROGRAM
    }

    /** The names of each source's channels, in the order of its paths. */
    public static List<List<String>> name(List<Source> sources, Set<IngestNote> notes) {
        Map<String, Source> winners = new HashMap<>();
        for (Source source : sources) {
            for (String path : source.samples().paths()) {
                winners.computeIfAbsent(path, p -> choose(p, sources));
            }
        }
        List<List<String>> all = new ArrayList<>();
        for (Source source : sources) {
            List<String> names = new ArrayList<>();
            for (String path : source.samples().paths()) {
                boolean plain = source.equals(winners.get(path)) && source.origin() == Origin.DEVICE;
                names.add(plain ? path : path + "@" + source.name());
                if (!plain && source.present(path) > 0) {
                    notes.add(
                            source.origin() == Origin.OTHER_PROGRAM
                                    ? IngestNote.COMPUTED_VALUES_APART
                                    : IngestNote.SEVERAL_SOURCES);
                }
            }
            all.add(names);
        }
        return all;
    }

    private static Source choose(String path, List<Source> sources) {
        String lead = LEAD.getOrDefault(path, path);
        List<Source> giving =
                sources.stream().filter(source -> source.present(path) > 0).toList();
        List<Source> devices = giving.stream()
                .filter(source -> source.origin() == Origin.DEVICE)
                .toList();
        List<Source> candidates = devices.isEmpty() ? giving : devices;
        String by = candidates.stream().anyMatch(source -> presentOf(source.device(), lead, sources) > 0) ? lead : path;
        int most = candidates.stream()
                .mapToInt(source -> presentOf(source.device(), by, sources))
                .max()
                .orElse(0);
        return candidates.stream()
                .filter(source -> presentOf(source.device(), by, sources) >= AS_MANY * most)
                .min(Comparator.comparingInt(Source::preference)
                        .thenComparing(Source::device)
                        .thenComparing(Source::name))
                .orElse(sources.get(0));
    }

    /** The most values of a path that one group of a device has. */
    private static int presentOf(String device, String path, List<Source> sources) {
        return sources.stream()
                .filter(source -> source.device().equals(device))
                .mapToInt(source -> source.present(path))
                .max()
                .orElse(0);
    }
}
