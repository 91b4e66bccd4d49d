package trimwright.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import org.jspecify.annotations.Nullable;
import trimwright.text.JsonOut;
import trimwright.text.Texts;
import trimwright.text.UserInputException;
import trimwright.track.BoatTrack;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;
import trimwright.track.Paths;

/**
 * The one writer of a library, holding its lock from {@link Library#writer()} to {@link #close()}. A new session is
 * built in a hidden folder and appears by one renaming, so a writer that dies leaves the library as it was; what it left
 * behind is cleared by the next writer.
 */
public final class LibraryWriter implements AutoCloseable {
    private static final String ASIDE = ".new-";

    private final Library library;
    private final FileChannel channel;
    private final FileLock lock;

    private LibraryWriter(Library library, FileChannel channel, FileLock lock) {
        this.library = library;
        this.channel = channel;
        this.lock = lock;
    }

    static LibraryWriter begin(Library library) {
        Path file = library.folder().resolve("library.lock");
        try {
            FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            try {
                LibraryWriter writer = new LibraryWriter(library, channel, channel.lock());
                writer.clearLeftovers();
                return writer;
            } catch (OverlappingFileLockException e) {
                channel.close();
                throw new UserInputException(Texts.of("store.busy", library.folder()));
            }
        } catch (IOException e) {
            throw new UserInputException(Texts.of("store.cannot_write", library.folder(), e));
        }
    }

    /** The session that holds bytes of that SHA-256 (lower-case hex), or null. */
    public @Nullable SessionInfo findSessionOfSource(String sha256) {
        for (SessionInfo session : library.sessions()) {
            for (SourceInfo source : session.sources()) {
                if (source.sha256().equals(sha256)) {
                    return session;
                }
            }
        }
        return null;
    }

    /**
     * One file to keep: what is said of it, and its bytes as they came.
     *
     * @param bytes opened once, when the copy is made
     * @param zone in which its times are written, or null where it does not say
     */
    public record RawSource(
            SourceInfo info, Opener bytes, @Nullable ZoneId zone) {}

    /** Opens the bytes of a source. */
    public interface Opener {
        InputStream open() throws IOException;
    }

    /** A track read from a source. */
    public record SourcedTrack(BoatTrack track, String sha256) {}

    /**
     * Adds a session.
     *
     * @param slug lower-case ASCII word for the id
     * @param tracks at least one, each with samples
     */
    public SessionInfo add(String slug, List<SourcedTrack> tracks, List<RawSource> sources) {
        long start =
                tracks.stream().mapToLong(t -> t.track().startNanos()).min().orElseThrow();
        String id = freeId(Instant.ofEpochSecond(0, start).toString().substring(0, 10) + "-" + Slug.of(slug));
        Path aside = library.folder().resolve("sessions").resolve(ASIDE + UUID.randomUUID());
        try {
            Files.createDirectories(aside);
            SessionInfo empty = new SessionInfo(id, Instant.EPOCH, Instant.EPOCH, UtcOffset.NONE, List.of(), List.of());
            SessionInfo session = writeFiles(aside, empty, tracks, sources);
            Durable.replace(aside.resolve("session.json"), JsonOut.text(SessionJson.document(session)));
            Files.move(aside, library.folderOf(id), StandardCopyOption.ATOMIC_MOVE);
            Durable.forceFolderOf(library.folderOf(id));
            return session;
        } catch (IOException e) {
            throw new UncheckedIOException("cannot write session " + id + ": " + e.getMessage(), e);
        }
    }

    /** Adds tracks to a session: new files first, then its session.json is replaced. */
    public SessionInfo extend(SessionInfo session, List<SourcedTrack> tracks, List<RawSource> sources) {
        Path folder = library.folderOf(session.id());
        try {
            SessionInfo grown = writeFiles(folder, session, tracks, sources);
            Durable.replace(folder.resolve("session.json"), JsonOut.text(SessionJson.document(grown)));
            return grown;
        } catch (IOException e) {
            throw new UncheckedIOException("cannot write session " + session.id() + ": " + e.getMessage(), e);
        }
    }

    private SessionInfo writeFiles(Path folder, SessionInfo before, List<SourcedTrack> tracks, List<RawSource> sources)
            throws IOException {
        Files.createDirectories(folder.resolve("raw"));
        for (RawSource source : sources) {
            copy(source, folder.resolve("raw").resolve(source.info().sha256() + ".gz"));
        }
        List<BoatInfo> boats = new ArrayList<>(before.boats());
        Set<String> taken = new HashSet<>();
        before.boats().forEach(boat -> boat.groups().forEach(group -> taken.add(group.file())));
        for (SourcedTrack sourced : tracks) {
            String boat = sourced.track().boat();
            String place = "boats/" + Slug.of(boat);
            Files.createDirectories(folder.resolve(place));
            List<GroupInfo> groups = new ArrayList<>();
            for (ChannelGroup group : sourced.track().groups()) {
                if (group.size() > 0) {
                    String file = place + "/" + Slug.of(group.name()) + "-"
                            + sourced.sha256().substring(0, 12);
                    groups.add(writeGroup(folder, free(file, taken), group));
                }
            }
            include(boats, new BoatInfo(boat, groups));
        }
        boats.sort(Comparator.comparing(BoatInfo::boat));
        List<SourceInfo> infos = new ArrayList<>(before.sources());
        sources.forEach(source -> infos.add(source.info()));
        long start = boats.stream()
                .flatMap(boat -> boat.groups().stream())
                .mapToLong(GroupInfo::startNanos)
                .min()
                .orElseThrow();
        long end = boats.stream()
                .flatMap(boat -> boat.groups().stream())
                .mapToLong(GroupInfo::endNanos)
                .max()
                .orElseThrow();
        Instant begin = Instant.ofEpochSecond(0, start);
        UtcOffset offset =
                before.offset().from() == UtcOffset.From.NONE ? offset(begin, tracks, sources) : before.offset();
        return new SessionInfo(before.id(), begin, Instant.ofEpochSecond(0, end), offset, boats, infos);
    }

    /** What a file states, else by the first position. */
    private static UtcOffset offset(Instant begin, List<SourcedTrack> tracks, List<RawSource> sources) {
        for (RawSource source : sources) {
            UtcOffset stated = source.zone() == null ? UtcOffset.NONE : UtcOffset.of(source.zone(), begin);
            if (stated.from() != UtcOffset.From.NONE) {
                return stated;
            }
        }
        for (SourcedTrack sourced : tracks) {
            Channel longitude = sourced.track().find(Paths.LONGITUDE);
            for (int i = 0; longitude != null && i < longitude.size(); i++) {
                if (longitude.isGood(i)) {
                    return UtcOffset.atLongitude(longitude.get(i));
                }
            }
        }
        return UtcOffset.NONE;
    }

    /** Two names may make the same slug; the second file gets a number. */
    private static String free(String wanted, Set<String> taken) {
        String file = wanted + ".parquet";
        for (int n = 2; !taken.add(file); n++) {
            file = wanted + "-" + n + ".parquet";
        }
        return file;
    }

    private static void include(List<BoatInfo> boats, BoatInfo added) {
        for (int i = 0; i < boats.size(); i++) {
            if (boats.get(i).boat().equals(added.boat())) {
                List<GroupInfo> groups = new ArrayList<>(boats.get(i).groups());
                groups.addAll(added.groups());
                boats.set(i, new BoatInfo(added.boat(), groups));
                return;
            }
        }
        boats.add(added);
    }

    private GroupInfo writeGroup(Path folder, String file, ChannelGroup group) throws IOException {
        Path target = folder.resolve(file);
        Path aside = target.resolveSibling("." + target.getFileName() + ".new");
        Files.deleteIfExists(aside);
        library.parquet().write(group, aside);
        Files.move(aside, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        return new GroupInfo(
                group.name(),
                file,
                group.size(),
                group.timeNanos(0),
                group.timeNanos(group.size() - 1),
                group.channels().stream().map(c -> c.path()).toList());
    }

    private static void copy(RawSource source, Path target) throws IOException {
        Path aside = target.resolveSibling("." + target.getFileName() + ".new");
        MessageDigest digest = sha256();
        try (InputStream in = new DigestInputStream(source.bytes().open(), digest);
                OutputStream out = new GZIPOutputStream(Files.newOutputStream(aside), 1 << 16)) {
            in.transferTo(out);
        }
        if (!HexFormat.of().formatHex(digest.digest()).equals(source.info().sha256())) {
            Files.delete(aside);
            throw new UserInputException(
                    Texts.of("store.source_changed", source.info().name()));
        }
        Durable.force(aside);
        Files.move(aside, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private String freeId(String wanted) {
        String id = wanted;
        for (int n = 2; Files.exists(library.folderOf(id)); n++) {
            id = wanted + "-" + n;
        }
        return id;
    }

    private void clearLeftovers() throws IOException {
        Path sessions = library.folder().resolve("sessions");
        Files.createDirectories(sessions);
        List<Path> leftovers;
        try (Stream<Path> entries = Files.list(sessions)) {
            leftovers = entries.filter(entry -> entry.getFileName().toString().startsWith(ASIDE))
                    .toList();
        }
        for (Path leftover : leftovers) {
            try (Stream<Path> inside = Files.walk(leftover)) {
                for (Path path : inside.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            }
        }
    }

    @Override
    public void close() {
        try {
            lock.release();
            channel.close();
        } catch (IOException e) {
            throw new UncheckedIOException("cannot unlock " + library.folder() + ": " + e.getMessage(), e);
        }
    }
}
