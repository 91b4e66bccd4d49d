package trimwright.web;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.course.Course;
import trimwright.course.LocalPlane;
import trimwright.course.Position;
import trimwright.debrief.KeptDebriefs;
import trimwright.debrief.SessionCourse;
import trimwright.store.BoatInfo;
import trimwright.store.DockChecks;
import trimwright.store.KeptCalibrations;
import trimwright.store.Library;
import trimwright.store.Moments;
import trimwright.store.SessionInfo;
import trimwright.store.SessionsDocument;
import trimwright.text.Texts;
import trimwright.track.BoatTrack;

/** The library's sessions, with the tracks that were looked at last kept in memory. */
final class SessionShelf {
    /** Chosen: the boats of one race; a long day of one boat takes some 50 MB. */
    private static final int TRACKS_KEPT = 8;

    private final Library library;
    private final Map<Key, ChartTrack> tracks = new LinkedHashMap<>(16, 0.75f, true);

    /** The files are part of the key: a session that grew by another import is read anew. */
    private record Key(String session, BoatInfo boat) {}

    SessionShelf(Library library) {
        this.library = library;
    }

    /** The list, as {@code trimwright sessions --json} writes it. */
    ObjectNode list() {
        return SessionsDocument.of(library.folder(), library.sessions());
    }

    /** Dock checks kept with a session. */
    DockChecks dockChecks(SessionInfo session) {
        return library.dockChecks(session);
    }

    /** Calibrations accepted for a session. */
    KeptCalibrations calibrations(SessionInfo session) {
        return library.calibrations(session);
    }

    /** Where the library is. */
    Path folder() {
        return library.folder();
    }

    SessionInfo get(String id) {
        SessionInfo session = library.findSession(id);
        if (session == null) {
            throw Refusal.notFound(Texts.of("web.refuse.session", id));
        }
        return session;
    }

    /** All recorded channels of all boats, for work on them; not kept. */
    List<BoatTrack> load(SessionInfo session) {
        return library.load(session);
    }

    /** Its debriefs that were made before, by a command or by a page. */
    KeptDebriefs debriefs(SessionInfo session) {
        return new KeptDebriefs(library.derived(session));
    }

    /** What people marked in it. */
    Moments moments(SessionInfo session) {
        return library.moments(session);
    }

    /** The course that was imported with the session, or null. */
    @Nullable
    Course findCourse(SessionInfo session) {
        return SessionCourse.find(library, session);
    }

    /** The plane in which all its boats are drawn: that of the course, else with its origin where the first boat began. */
    LocalPlane plane(SessionInfo session) {
        Course course = findCourse(session);
        if (course != null) {
            return course.plane();
        }
        for (BoatInfo boat : session.boats()) {
            Position first = track(session, boat).line().first();
            if (first != null) {
                return new LocalPlane(first);
            }
        }
        return new LocalPlane(new Position(0, 0));
    }

    ChartTrack track(SessionInfo session, String boat) {
        BoatInfo info = session.findBoat(boat);
        if (info == null) {
            throw Refusal.notFound(Texts.of("web.refuse.boat_of_session", session.id(), boat));
        }
        return track(session, info);
    }

    private synchronized ChartTrack track(SessionInfo session, BoatInfo boat) {
        Key key = new Key(session.id(), boat);
        ChartTrack known = tracks.get(key);
        if (known == null) {
            known = new ChartTrack(library.load(session, boat));
            tracks.put(key, known);
            if (tracks.size() > TRACKS_KEPT) {
                tracks.remove(tracks.keySet().iterator().next());
            }
        }
        return known;
    }
}
