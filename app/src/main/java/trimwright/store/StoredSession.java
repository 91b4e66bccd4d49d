package trimwright.store;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import trimwright.track.BoatTrack;
import trimwright.track.ChannelGroup;

/** One session of a library with what it was read from. */
public final class StoredSession implements AutoCloseable {
    private static final int HASH_IN_NAMES = 12;

    private final Library shelf;
    private final SessionInfo info;

    private StoredSession(Library library, SessionInfo info) {
        shelf = library;
        this.info = info;
    }

    /**
     * Opens the session of that id, of that unique prefix, or the newest for {@code latest}.
     *
     * @throws trimwright.text.UserInputException where there is no such library or session
     */
    public static StoredSession open(Path folder, String idOrPrefixOrLatest) {
        Library library = Library.open(folder);
        try {
            return new StoredSession(library, library.getSession(idOrPrefixOrLatest));
        } catch (RuntimeException e) {
            library.close();
            throw e;
        }
    }

    public SessionInfo info() {
        return info;
    }

    /** The bytes of a source as they came. */
    public byte[] raw(SourceInfo source) {
        return shelf.raw(info, source);
    }

    /** What was read from a source: a track for each of its boats. */
    public List<BoatTrack> tracksOf(SourceInfo source) {
        String mark = "-" + source.sha256().substring(0, HASH_IN_NAMES);
        List<BoatTrack> tracks = new ArrayList<>();
        for (BoatInfo boat : info.boats()) {
            List<GroupInfo> own = boat.groups().stream()
                    .filter(group -> group.file().contains(mark))
                    .toList();
            if (!own.isEmpty()) {
                List<ChannelGroup> groups =
                        shelf.load(info, new BoatInfo(boat.boat(), own)).groups();
                tracks.add(new BoatTrack(boat.boat(), groups));
            }
        }
        return tracks;
    }

    @Override
    public void close() {
        shelf.close();
    }
}
