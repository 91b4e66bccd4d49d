package trimwright.debrief;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.course.Course;
import trimwright.coursefile.CourseFiles;
import trimwright.store.Library;
import trimwright.store.SessionInfo;
import trimwright.store.SourceInfo;

/** The course that was imported with a session. */
public final class SessionCourse {
    private SessionCourse() {}

    /** The one imported last, or null where there is none. */
    public static @Nullable Course find(Library library, SessionInfo session) {
        List<SourceInfo> courses = session.sources().stream()
                .filter(source -> source.kind().equals(SourceInfo.COURSE))
                .toList();
        if (courses.isEmpty()) {
            return null;
        }
        SourceInfo last = courses.get(courses.size() - 1);
        return CourseFiles.parse(library.raw(session, last), last.name());
    }
}
