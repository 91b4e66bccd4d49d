package trimwright.debrief;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.boat.Antenna;
import trimwright.course.Course;
import trimwright.course.CourseGeometry;
import trimwright.segment.BowTrack;
import trimwright.segment.CourseFollower;
import trimwright.segment.OnCourse;
import trimwright.segment.SailedCourse;
import trimwright.wind.WindTrack;

/** Sets each boat of a session on the course among the others. */
final class FleetOnCourse {
    private FleetOnCourse() {}

    /** In the order of the boats; all null without a course. */
    static List<@Nullable OnCourse> of(List<WindTrack> winds, DebriefOptions options) {
        Course course = options.course();
        if (course == null) {
            return new ArrayList<>(Collections.nCopies(winds.size(), null));
        }
        CourseGeometry geometry = new CourseGeometry(course);
        Antenna antenna = options.boat() == null ? null : options.boat().antenna();
        List<BowTrack> bows = winds.stream()
                .map(wind -> BowTrack.of(wind, geometry.plane(), antenna))
                .toList();
        List<@Nullable OnCourse> all = new ArrayList<>();
        for (int i = 0; i < winds.size(); i++) {
            List<OnCourse.Neighbour> others = new ArrayList<>();
            for (int k = 0; k < winds.size(); k++) {
                if (k != i) {
                    others.add(new OnCourse.Neighbour(winds.get(k), bows.get(k)));
                }
            }
            SailedCourse sailed = CourseFollower.of(winds.get(i), bows.get(i), geometry, course.gunNanos());
            all.add(new OnCourse(geometry, bows.get(i), sailed, others));
        }
        return all;
    }
}
