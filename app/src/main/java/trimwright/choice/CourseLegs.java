package trimwright.choice;

import java.util.ArrayList;
import java.util.List;
import trimwright.course.Course;
import trimwright.course.CourseGeometry;
import trimwright.course.CourseLeg;
import trimwright.setup.RaceLeg;

/** Legs to be sailed. */
public final class CourseLegs {
    private CourseLegs() {}

    /** From the middle of each line, gate or mark to the next. */
    public static List<RaceLeg> of(Course course) {
        CourseGeometry geometry = new CourseGeometry(course);
        List<RaceLeg> legs = new ArrayList<>();
        for (int i = 0; i < geometry.legCount(); i++) {
            CourseLeg leg = geometry.leg(i);
            if (leg.length() > 0) {
                legs.add(new RaceLeg(leg.bearing(), leg.length()));
            }
        }
        return legs;
    }

    /**
     * Up and down the wind.
     *
     * @param from where the wind comes from (rad)
     * @param length of each leg (m)
     * @param laps a beat and a run each
     */
    public static List<RaceLeg> upAndDown(double from, double length, int laps) {
        List<RaceLeg> legs = new ArrayList<>();
        for (int i = 0; i < laps; i++) {
            legs.add(new RaceLeg(from, length));
            legs.add(new RaceLeg(from + Math.PI, length));
        }
        return legs;
    }
}
