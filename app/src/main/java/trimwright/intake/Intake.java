package trimwright.intake;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import trimwright.store.Library;
import trimwright.store.LibraryWriter;
import trimwright.store.SessionInfo;
import trimwright.store.SourceInfo;
import trimwright.text.Progress;
import trimwright.track.BoatTrack;

/**
 * Imports files into a library. All files are read before anything is written: where one of them cannot be used the
 * library stays as it was.
 */
public final class Intake {
    /** Chosen: boats of one race overlap; a morning and an afternoon lie further apart. */
    private static final long APART = 3 * 3_600_000_000_000L;

    private final Path library;
    private final IntakeOptions options;

    public Intake(Path library, IntakeOptions options) {
        this.library = library;
        this.options = options;
    }

    /** Bytes of all files, for the total of the progress; a file that is not there is named. */
    public static long length(List<Path> files) {
        return files.stream().mapToLong(file -> new SourceBytes(file).length()).sum();
    }

    /** Opens the library, and begins one where there is none; a fault of its folder is said. */
    public void begin() {
        Library.openOrCreate(library).close();
    }

    /**
     * Imports the files.
     *
     * @param progress told the bytes read from disk
     * @throws trimwright.text.UserInputException where a file, an option or the library is at fault
     */
    public IntakeReport run(List<Path> files, Progress progress) {
        CourseSource course = options.course() == null ? null : CourseSource.read(options.course());
        Map<String, SourceBytes> bySha = new LinkedHashMap<>();
        Map<Path, String> shaOf = new HashMap<>();
        for (Path file : files) {
            SourceBytes source = new SourceBytes(file);
            String sha = source.sha256();
            bySha.putIfAbsent(sha, source);
            shaOf.put(file, sha);
        }
        List<ReadFile> read = new ArrayList<>();
        Map<String, String> known = known(bySha);
        for (Map.Entry<String, SourceBytes> entry : bySha.entrySet()) {
            if (!known.containsKey(entry.getKey())) {
                read.add(FileReader.read(entry.getValue(), entry.getKey(), options, progress));
            }
        }
        List<SessionInfo> sessions = read.isEmpty() && course == null ? List.of() : write(read, known, course);
        return report(files, shaOf, read, known, sessions);
    }

    /** Sessions of the bytes that the library has already. */
    private Map<String, String> known(Map<String, SourceBytes> bySha) {
        Map<String, String> known = new TreeMap<>();
        if (!Files.exists(library.resolve("library.json"))) {
            return known;
        }
        try (Library open = Library.open(library)) {
            note(open.sessions(), known);
            if (options.session() != null) {
                open.getSession(options.session());
            }
        }
        known.keySet().retainAll(bySha.keySet());
        return known;
    }

    private static void note(List<SessionInfo> sessions, Map<String, String> known) {
        for (SessionInfo session : sessions) {
            session.sources().forEach(source -> known.putIfAbsent(source.sha256(), session.id()));
        }
    }

    private List<SessionInfo> write(List<ReadFile> read, Map<String, String> known, @Nullable CourseSource course) {
        List<SessionInfo> written = new ArrayList<>();
        try (Library open = Library.openOrCreate(library);
                LibraryWriter writer = open.writer()) {
            // Another import may have brought the same bytes while these were read.
            note(open.sessions(), known);
            List<ReadFile> fresh = read.stream()
                    .filter(file -> !known.containsKey(file.sha256()))
                    .toList();
            if (options.session() != null && !fresh.isEmpty()) {
                SessionInfo session = open.getSession(options.session());
                written.add(writer.extend(session, tracks(fresh), sources(fresh, course)));
            } else {
                for (List<ReadFile> together : apart(fresh)) {
                    written.add(writer.add(slug(together), tracks(together), sources(together, course)));
                }
            }
            if (course != null && fresh.isEmpty()) {
                for (SessionInfo session : open.sessions()) {
                    if (known.containsValue(session.id()) && !course.isLastOf(session)) {
                        written.add(writer.extend(session, List.of(), List.of(course.source())));
                    }
                }
            }
        }
        return written;
    }

    /** Files that overlap or nearly do make one session; in it they keep the order given, which settles who comes first. */
    private static List<List<ReadFile>> apart(List<ReadFile> files) {
        List<ReadFile> sorted = new ArrayList<>(files);
        sorted.sort(Comparator.comparingLong(ReadFile::startNanos));
        List<List<ReadFile>> all = new ArrayList<>();
        long end = Long.MIN_VALUE;
        for (ReadFile file : sorted) {
            if (all.isEmpty() || file.startNanos() - end > APART) {
                all.add(new ArrayList<>());
                end = file.endNanos();
            }
            all.get(all.size() - 1).add(file);
            end = Math.max(end, file.endNanos());
        }
        all.forEach(together -> together.sort(Comparator.comparingInt(files::indexOf)));
        return all;
    }

    private String slug(List<ReadFile> files) {
        if (options.name() != null) {
            return options.name();
        }
        List<String> boats = boats(files);
        return boats.size() == 1 ? boats.get(0) : "fleet";
    }

    private static List<String> boats(List<ReadFile> files) {
        TreeSet<String> names = new TreeSet<>();
        files.forEach(file -> file.tracks().forEach(track -> names.add(track.boat())));
        return List.copyOf(names);
    }

    private static List<LibraryWriter.SourcedTrack> tracks(List<ReadFile> files) {
        List<LibraryWriter.SourcedTrack> tracks = new ArrayList<>();
        for (ReadFile file : files) {
            for (BoatTrack track : file.tracks()) {
                tracks.add(new LibraryWriter.SourcedTrack(track, file.sha256()));
            }
        }
        return tracks;
    }

    /** Times of tables are in the zone that the mapping states. */
    private @Nullable ZoneId zoneOf(ReadFile file) {
        MappingFile map = options.mapping();
        return map == null || !file.kind().equals("csv") ? null : map.mapping().zone();
    }

    private List<LibraryWriter.RawSource> sources(List<ReadFile> files, @Nullable CourseSource course) {
        List<LibraryWriter.RawSource> sources = new ArrayList<>();
        for (ReadFile file : files) {
            Map<String, Long> issues = new TreeMap<>();
            file.report().issues().counts().forEach((kind, count) -> issues.put(IssueTexts.key(kind), count));
            SourceInfo info = new SourceInfo(
                    file.sha256(),
                    file.source().name(),
                    file.kind(),
                    file.source().length(),
                    file.report().lines(),
                    issues,
                    file.report().notes().stream().map(IssueTexts::note).toList());
            sources.add(new LibraryWriter.RawSource(info, file.source()::openRaw, zoneOf(file)));
        }
        if (course != null) {
            sources.add(course.source());
        }
        return sources;
    }

    private static IntakeReport report(
            List<Path> files,
            Map<Path, String> shaOf,
            List<ReadFile> read,
            Map<String, String> known,
            List<SessionInfo> sessions) {
        Map<String, String> sessionOf = new TreeMap<>(known);
        note(sessions, sessionOf);
        List<IntakeReport.FileReport> reports = new ArrayList<>();
        for (Path file : files) {
            String sha = shaOf.getOrDefault(file, "");
            ReadFile found = known.containsKey(sha) ? null : find(read, sha);
            String session = sessionOf.getOrDefault(sha, "");
            reports.add(
                    found == null
                            ? new IntakeReport.FileReport(
                                    file.toString(),
                                    sha,
                                    session,
                                    IntakeReport.Outcome.ALREADY_THERE,
                                    null,
                                    List.of(),
                                    null)
                            : new IntakeReport.FileReport(
                                    file.toString(),
                                    sha,
                                    session,
                                    IntakeReport.Outcome.IMPORTED,
                                    found.kind(),
                                    boats(List.of(found)),
                                    found.report()));
        }
        return new IntakeReport(reports, sessions);
    }

    private static @Nullable ReadFile find(List<ReadFile> read, String sha) {
        return read.stream()
                .filter(file -> file.sha256().equals(sha))
                .findFirst()
                .orElse(null);
    }
}
