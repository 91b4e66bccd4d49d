package trimwright.recording;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import trimwright.ingest.IngestResult;
import trimwright.ingest.journal.JournalReader;
import trimwright.ingest.journal.JournalScanner;
import trimwright.ingest.journal.RecordKind;
import trimwright.ingest.nmea.ChecksumRule;
import trimwright.intake.Intake;
import trimwright.intake.IntakeOptions;
import trimwright.store.SessionInfo;
import trimwright.text.Progress;
import trimwright.text.Texts;
import trimwright.text.UserInputException;
import trimwright.track.BoatTrack;
import trimwright.track.ChannelGroup;
import trimwright.track.TrackMerge;

/**
 * The journals beside a library's sessions. One that is closed goes through the same import as a log and is then deleted:
 * its bytes are in the session's {@code raw/}. One that a crash left is closed at the next start. One in which nothing can
 * be read is set aside and never deleted.
 */
public final class Journals {
    private static final String ENDING = ".journal";

    private static final int PIECE = 1 << 16;

    private final Intake intake;
    private final Path folder;

    /** @param library folder of the library */
    public Journals(Path library) {
        this(library, null);
    }

    /**
     * The same.
     *
     * @param course file of the races that are recorded, kept with each session; null where none is known
     */
    public Journals(Path library, @Nullable Path course) {
        intake = new Intake(library, new IntakeOptions(null, null, null, null, null, course, ChecksumRule.REQUIRED));
        folder = library.resolve("journals");
    }

    /** Opens the library, and begins one where there is none: its faults are said before anything is recorded. */
    public void begin() {
        intake.begin();
    }

    /** What became of a journal. */
    public record Closed(
            Path journal,
            @Nullable SessionInfo session,
            @Nullable String fault) {}

    /** A name for a journal that begins now. */
    Path fresh(Instant now) {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new UserInputException(Texts.of("live.cannot_record", folder, String.valueOf(e.getMessage())), e);
        }
        String name = now.truncatedTo(ChronoUnit.SECONDS).toString().replace(':', '-');
        Path file = folder.resolve(name + ENDING);
        for (int n = 2; Files.exists(file); n++) {
            file = folder.resolve(name + "-" + n + ENDING);
        }
        return file;
    }

    /**
     * What the newest journal holds so far, while it is being written; its last bytes may be half a record and are left out.
     *
     * @throws UserInputException where none is being written
     */
    public List<BoatTrack> readOpen() {
        try (Stream<Path> entries = Files.isDirectory(folder) ? Files.list(folder) : Stream.empty()) {
            Path newest = entries.filter(file -> file.toString().endsWith(ENDING))
                    .max(Comparator.naturalOrder())
                    .orElseThrow(() -> new UserInputException(Texts.of("live.no_journal", folder)));
            JournalReader reader = new JournalReader("");
            pieces(newest, (bytes, length) -> reader.accept(bytes, 0, length), () -> false);
            if (reader.finish() instanceof IngestResult.Tracks found) {
                return merged(found.tracks());
            }
            throw new UserInputException(Texts.of("live.empty_journal", newest));
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + folder + ": " + e.getMessage(), e);
        }
    }

    /** One track a boat, as a library would give it. */
    private static List<BoatTrack> merged(List<BoatTrack> tracks) {
        Map<String, List<ChannelGroup>> groups = new TreeMap<>();
        for (BoatTrack track : tracks) {
            groups.computeIfAbsent(track.boat(), boat -> new ArrayList<>()).addAll(track.groups());
        }
        return groups.entrySet().stream()
                .map(boat -> TrackMerge.of(boat.getKey(), boat.getValue()))
                .toList();
    }

    /** Closes every journal that nobody writes; those of a crash, and those whose closing broke off. */
    public List<Closed> closeLeftovers() {
        List<Closed> closed = new ArrayList<>();
        if (!Files.isDirectory(folder)) {
            return closed;
        }
        List<Path> files;
        try (Stream<Path> entries = Files.list(folder)) {
            files = entries.filter(file -> file.toString().endsWith(ENDING))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + folder + ": " + e.getMessage(), e);
        }
        for (Path file : files) {
            Closed one = close(file);
            if (one != null) {
                closed.add(one);
            }
        }
        return closed;
    }

    /** Closes one journal into the library; null where there was nothing in it, or another program writes it. */
    public @Nullable Closed close(Path file) {
        try (Disk lock = Disk.lock(file)) {
            if (lock == null) {
                return null;
            }
            if (!hasData(file)) {
                Files.delete(file);
                return null;
            }
            return bring(file);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot close " + file + ": " + e.getMessage(), e);
        }
    }

    private Closed bring(Path file) throws IOException {
        try {
            List<SessionInfo> sessions =
                    intake.run(List.of(file), Progress.NONE).sessions();
            Files.delete(file);
            return new Closed(file, sessions.isEmpty() ? null : sessions.get(0), null);
        } catch (UserInputException e) {
            if (isReadable(file)) {
                // The library is at fault, not the journal: it is tried again at the next start.
                return new Closed(file, null, e.getMessage());
            }
            Path aside = file.resolveSibling(file.getFileName() + ".unread");
            Files.move(file, aside);
            return new Closed(aside, null, e.getMessage());
        }
    }

    private static boolean hasData(Path file) throws IOException {
        boolean[] data = new boolean[1];
        JournalScanner scanner = new JournalScanner(
                (kind, source, nanos, bytes, from, to) -> data[0] |= kind == RecordKind.DATA && to > from);
        pieces(file, (bytes, length) -> scanner.accept(bytes, 0, length), () -> data[0]);
        return data[0];
    }

    private static boolean isReadable(Path file) throws IOException {
        JournalReader reader = new JournalReader("");
        pieces(file, (bytes, length) -> reader.accept(bytes, 0, length), () -> false);
        return reader.finish() instanceof IngestResult.Tracks;
    }

    private interface Taker {
        void take(byte[] bytes, int length);
    }

    private static void pieces(Path file, Taker taker, BooleanSupplier enough) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] buffer = new byte[PIECE];
            for (int n = in.read(buffer); n >= 0 && !enough.getAsBoolean(); n = in.read(buffer)) {
                taker.take(buffer, n);
            }
        }
    }
}
