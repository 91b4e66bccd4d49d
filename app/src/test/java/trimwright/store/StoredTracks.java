package trimwright.store;

import java.nio.file.Path;
import java.util.List;
import trimwright.track.BoatTrack;

/** Tracks as a library gives them back. */
public final class StoredTracks {
    private StoredTracks() {}

    /** All boats of a session. */
    public static List<BoatTrack> of(Path folder, SessionInfo session) {
        try (Library library = Library.open(folder)) {
            return library.load(session);
        }
    }
}
