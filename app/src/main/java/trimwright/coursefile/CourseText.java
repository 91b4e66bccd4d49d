package trimwright.coursefile;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import trimwright.course.Course;
import trimwright.course.Gate;
import trimwright.course.Line;
import trimwright.course.Mark;
import trimwright.course.Position;
import trimwright.course.Rounding;
import trimwright.course.Waypoint;

/** A course as the text of a file. Places have eight decimals of a degree: a millimetre. */
public final class CourseText {
    private CourseText() {}

    public static String of(Course course) {
        StringBuilder text = new StringBuilder();
        text.append("schema = \"").append(CourseKeys.SCHEMA).append("\"\n");
        text.append("name = \"").append(escaped(course.name())).append("\"\n");
        long nanos = course.gunNanos();
        Instant gun = Instant.ofEpochSecond(Math.floorDiv(nanos, 1_000_000_000L), Math.floorMod(nanos, 1_000_000_000L));
        text.append("gun_utc = \"").append(gun).append("\"\n");
        text.append("order = \"")
                .append(course.order().stream().map(Waypoint::id).collect(Collectors.joining(", ")))
                .append("\"\n");
        line("start", course.start(), text);
        line("finish", course.finish(), text);
        Map<String, Waypoint> once = new LinkedHashMap<>();
        course.order().forEach(waypoint -> once.putIfAbsent(waypoint.id(), waypoint));
        once.values().stream().filter(Mark.class::isInstance).forEach(mark -> mark((Mark) mark, text));
        once.values().stream().filter(Gate.class::isInstance).forEach(gate -> gate((Gate) gate, text));
        for (Position corner : course.boundary()) {
            text.append("\n[[boundary]]\n");
            place("", corner, text);
        }
        return text.toString();
    }

    private static void line(String name, Line line, StringBuilder text) {
        text.append("\n[").append(name).append("]\n");
        place("port_", line.portEnd(), text);
        place("starboard_", line.starboardEnd(), text);
    }

    private static void mark(Mark mark, StringBuilder text) {
        text.append("\n[[mark]]\nid = \"").append(escaped(mark.id())).append("\"\n");
        place("", mark.position(), text);
        text.append("leave = \"")
                .append(mark.rounding() == Rounding.PORT ? "port" : "starboard")
                .append("\"\n");
    }

    private static void gate(Gate gate, StringBuilder text) {
        text.append("\n[[gate]]\nid = \"").append(escaped(gate.id())).append("\"\n");
        place("port_", gate.portMark(), text);
        place("starboard_", gate.starboardMark(), text);
    }

    private static void place(String end, Position position, StringBuilder text) {
        text.append(String.format(
                Locale.ROOT,
                "%slat_deg = %.8f\n%slon_deg = %.8f\n",
                end,
                Math.toDegrees(position.latitude()),
                end,
                Math.toDegrees(position.longitude())));
    }

    private static String escaped(String text) {
        return text.replace("\\", "\\\\").replace("\"", "\\\"");
    }
}
