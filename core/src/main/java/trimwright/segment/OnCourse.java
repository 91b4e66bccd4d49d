package trimwright.segment;

import java.util.List;
import trimwright.course.CourseGeometry;
import trimwright.wind.WindTrack;

/**
 * One boat on its course among the others.
 *
 * @param bow where its bow was
 * @param sailed how it went round
 * @param others the other boats of the session, on the same clock
 */
public record OnCourse(CourseGeometry course, BowTrack bow, SailedCourse sailed, List<Neighbour> others) {
    public OnCourse {
        others = List.copyOf(others);
    }

    /** Another boat: its track, and where its bow was. */
    public record Neighbour(WindTrack track, BowTrack bow) {}
}
