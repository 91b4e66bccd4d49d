package trimwright.debrief;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.compare.LegLedger;
import trimwright.course.Course;
import trimwright.course.CourseLeg;
import trimwright.course.Gate;
import trimwright.course.Line;
import trimwright.course.Mark;
import trimwright.course.PlanePoint;
import trimwright.course.Position;
import trimwright.course.Waypoint;
import trimwright.segment.OnCourse;
import trimwright.segment.SailedCourse;
import trimwright.text.JsonOut;
import trimwright.units.Units;
import trimwright.wind.SessionClock;
import trimwright.wind.WindTrack;

/** The parts of {@code debrief/1} that only a course gives. */
final class CourseJson {
    /** Time between two points of a leg's strip (s), chosen. */
    private static final double STRIP = 2;

    private CourseJson() {}

    static ObjectNode of(Course course, SessionClock clock) {
        ObjectNode node = JsonOut.mapper().createObjectNode();
        node.put("name", course.name());
        node.put("gun_s", (course.gunNanos() - clock.startNanos()) / 1e9);
        line(course.start(), node.putObject("start"));
        line(course.finish(), node.putObject("finish"));
        Map<String, Waypoint> once = new LinkedHashMap<>();
        course.order().forEach(point -> once.putIfAbsent(point.id(), point));
        ArrayNode marks = node.putArray("marks");
        ArrayNode gates = node.putArray("gates");
        once.values().forEach(point -> {
            if (point instanceof Mark mark) {
                place("", mark.position(), marks.addObject().put("id", mark.id()));
            } else if (point instanceof Gate gate) {
                line(
                        new Line(gate.portMark(), gate.starboardMark()),
                        gates.addObject().put("id", gate.id()));
            }
        });
        ArrayNode boundary = node.putArray("boundary");
        course.boundary().forEach(corner -> place("", corner, boundary.addObject()));
        return node;
    }

    private static void line(Line line, ObjectNode node) {
        place("port_", line.portEnd(), node);
        place("starboard_", line.starboardEnd(), node);
    }

    private static void place(String end, Position position, ObjectNode node) {
        node.put(end + "latitude_deg", Units.toDegrees(position.latitude()));
        node.put(end + "longitude_deg", Units.toDegrees(position.longitude()));
    }

    /** @param share speed at the gun over the target's, null where there is none */
    static ObjectNode start(SailedCourse.Start start, WindTrack wind, @Nullable Double share) {
        ObjectNode node = JsonOut.mapper().createObjectNode();
        node.put("crossed_s", start.crossed());
        node.put("early", start.isEarly());
        number(node, "distance_m", start.distance());
        number(node, "speed_kn", Units.toKnots(start.speed()));
        node.put("gun_s", wind.clock().seconds(start.gun()));
        node.put("target_ratio", share);
        node.put("line_ratio", start.share());
        return node;
    }

    /** Adds what the course says of a leg: its ends, and its strip of way made good and seconds lost. */
    static void leg(OnCourse on, LegLedger ledger, WindTrack wind, ObjectNode node) {
        CourseLeg leg = ledger.leg().on();
        if (leg == null) {
            return;
        }
        node.put("from", leg.from());
        node.put("to", leg.to());
        SailedCourse.SailedLeg sailed = on.sailed().legs().get(leg.number() - 1);
        node.put("ended", sailed.isEnded());
        ObjectNode strip = node.putObject("strip");
        int every = wind.clock().steps(STRIP);
        strip.put("step_s", every * wind.clock().step());
        ArrayNode made = strip.putArray("made_m");
        ArrayNode lost = strip.putArray("lost_s");
        double sum = 0;
        for (int k = 0; k < ledger.losses().size(); k++) {
            if (k % every == 0) {
                PlanePoint bow = on.bow().at(ledger.leg().span().from() + k);
                if (bow == null) {
                    made.addNull();
                } else {
                    made.add(leg.along(bow));
                }
                lost.add(sum);
            }
            sum += ledger.losses().at(k);
        }
    }

    private static void number(ObjectNode node, String key, double value) {
        node.put(key, Double.isNaN(value) ? null : (Double) value);
    }
}
