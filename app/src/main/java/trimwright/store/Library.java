package trimwright.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;
import org.jspecify.annotations.Nullable;
import trimwright.text.Texts;
import trimwright.text.UserInputException;
import trimwright.track.BoatTrack;
import trimwright.track.ChannelGroup;
import trimwright.track.TrackMerge;

/**
 * A folder of sessions ({@code library/1}, docs/formats.md). Any number of processes may read it at once and while one
 * writes: files are written aside and renamed, and only session.json is ever replaced. Faults of the folder or of what
 * the user asked for are {@link UserInputException}s.
 */
public final class Library implements AutoCloseable {
    static final String SCHEMA = "library/1";
    private static final String MANIFEST = "library.json";

    private final Path folder;
    private final Parquet parquet = new Parquet();

    private Library(Path folder) {
        this.folder = folder;
    }

    /** Opens a library that exists. */
    public static Library open(Path folder) {
        Path manifest = folder.resolve(MANIFEST);
        if (!Files.exists(manifest)) {
            throw new UserInputException(Texts.of("store.no_library", folder));
        }
        String schema = schemaOf(manifest);
        if (!schema.equals(SCHEMA)) {
            throw new UserInputException(Texts.of("store.newer", manifest, schema, SCHEMA));
        }
        return new Library(folder);
    }

    /** Opens a library, and begins one where the folder is absent or empty. */
    public static Library openOrCreate(Path folder) {
        Path manifest = folder.resolve(MANIFEST);
        if (!Files.exists(manifest)) {
            try {
                if (Files.exists(folder) && !Files.isDirectory(folder)) {
                    throw new UserInputException(Texts.of("store.not_a_folder", folder));
                }
                Files.createDirectories(folder.resolve("sessions"));
                Durable.replace(manifest, "{\n  \"schema\" : \"" + SCHEMA + "\"\n}\n");
            } catch (IOException e) {
                throw new UserInputException(Texts.of("store.cannot_make", folder, e));
            }
        }
        return open(folder);
    }

    private static String schemaOf(Path manifest) {
        try {
            return new ObjectMapper()
                    .readTree(Files.readString(manifest))
                    .path("schema")
                    .asText();
        } catch (JsonProcessingException e) {
            throw new UserInputException(Texts.of("store.manifest_damaged", manifest, SCHEMA));
        } catch (IOException e) {
            throw new UserInputException(Texts.of("store.manifest_unreadable", manifest, e));
        }
    }

    public Path folder() {
        return folder;
    }

    /** All sessions by start, then by id. */
    public List<SessionInfo> sessions() {
        Path sessions = folder.resolve("sessions");
        if (!Files.isDirectory(sessions)) {
            return List.of();
        }
        List<SessionInfo> found = new ArrayList<>();
        try (Stream<Path> folders = Files.list(sessions)) {
            for (Path session : (Iterable<Path>) folders::iterator) {
                Path json = session.resolve("session.json");
                if (!session.getFileName().toString().startsWith(".") && Files.exists(json)) {
                    found.add(SessionJson.read(Files.readString(json), json));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + sessions + ": " + e.getMessage(), e);
        }
        found.sort(Comparator.comparing(SessionInfo::start).thenComparing(SessionInfo::id));
        return List.copyOf(found);
    }

    /**
     * The session of that id, of that unique prefix, or the newest by start for {@code latest}; null where there is
     * none. A prefix that fits several sessions is a {@link UserInputException} that names them.
     */
    public @Nullable SessionInfo findSession(String idOrPrefixOrLatest) {
        List<SessionInfo> all = sessions();
        if (idOrPrefixOrLatest.equals("latest")) {
            return all.isEmpty() ? null : all.get(all.size() - 1);
        }
        List<SessionInfo> fitting = new ArrayList<>();
        for (SessionInfo session : all) {
            if (session.id().equals(idOrPrefixOrLatest)) {
                return session;
            }
            if (session.id().startsWith(idOrPrefixOrLatest)) {
                fitting.add(session);
            }
        }
        if (fitting.size() > 1) {
            throw new UserInputException(Texts.of(
                    "store.ambiguous",
                    idOrPrefixOrLatest,
                    fitting.size(),
                    String.join(", ", fitting.stream().map(SessionInfo::id).toList())));
        }
        return fitting.isEmpty() ? null : fitting.get(0);
    }

    /** As {@link #findSession}, but absence is a {@link UserInputException}. */
    public SessionInfo getSession(String idOrPrefixOrLatest) {
        SessionInfo session = findSession(idOrPrefixOrLatest);
        if (session == null) {
            throw new UserInputException(Texts.of("store.no_session", idOrPrefixOrLatest, folder));
        }
        return session;
    }

    /** All recorded channels of all boats of the session, in order of boat. */
    public List<BoatTrack> load(SessionInfo session) {
        return session.boats().stream().map(boat -> load(session, boat)).toList();
    }

    /** All recorded channels of one boat. */
    public BoatTrack load(SessionInfo session, BoatInfo boat) {
        Path root = folderOf(session.id());
        List<ChannelGroup> groups = boat.groups().stream()
                .map(group -> parquet.read(group, root.resolve(group.file())))
                .toList();
        return TrackMerge.of(boat.boat(), groups);
    }

    /** The bytes of a source as they came. */
    public byte[] raw(SessionInfo session, SourceInfo source) {
        Path file = folderOf(session.id()).resolve("raw").resolve(source.sha256() + ".gz");
        try (InputStream in = new GZIPInputStream(Files.newInputStream(file))) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + file + ": " + e.getMessage(), e);
        }
    }

    /** Results computed from the session and kept with it. */
    public Derived derived(SessionInfo session) {
        return new Derived(folderOf(session.id()).resolve("derived"));
    }

    /** What people marked in the session. */
    public Moments moments(SessionInfo session) {
        return new Moments(folderOf(session.id()).resolve("moments.json"), session);
    }

    /** Dock checks made of the session and kept with it. */
    public DockChecks dockChecks(SessionInfo session) {
        return new DockChecks(folderOf(session.id()));
    }

    /** Calibrations accepted for the session and taken back. */
    public KeptCalibrations calibrations(SessionInfo session) {
        return new KeptCalibrations(folderOf(session.id()));
    }

    /** Begins writing; waits for another writer of the same library to end. */
    public LibraryWriter writer() {
        return LibraryWriter.begin(this);
    }

    Path folderOf(String sessionId) {
        return folder.resolve("sessions").resolve(sessionId);
    }

    Parquet parquet() {
        return parquet;
    }

    @Override
    public void close() {
        parquet.close();
    }
}
