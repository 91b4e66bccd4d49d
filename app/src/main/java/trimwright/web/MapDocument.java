package trimwright.web;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.course.Course;
import trimwright.course.Gate;
import trimwright.course.Line;
import trimwright.course.LocalPlane;
import trimwright.course.Mark;
import trimwright.course.PlanePoint;
import trimwright.course.Position;
import trimwright.course.Waypoint;
import trimwright.text.JsonOut;
import trimwright.units.Units;

/** {@code map/1} (docs/formats.md): the plane in which a session's tracks are drawn, and what lies still in it. */
final class MapDocument {
    private final LocalPlane plane;

    private MapDocument(LocalPlane plane) {
        this.plane = plane;
    }

    static ObjectNode of(LocalPlane plane, @Nullable Course course) {
        ObjectNode document = JsonOut.document("map/1");
        ObjectNode origin = document.putObject("origin");
        origin.put("latitude_deg", Units.toDegrees(plane.origin().latitude()));
        origin.put("longitude_deg", Units.toDegrees(plane.origin().longitude()));
        document.set("course", course == null ? null : new MapDocument(plane).node(course));
        return document;
    }

    private ObjectNode node(Course course) {
        ObjectNode node = JsonOut.mapper().createObjectNode();
        node.put("name", course.name());
        ArrayNode lines = node.putArray("lines");
        ArrayNode marks = node.putArray("marks");
        line(lines, "start", null, course.start());
        line(lines, "finish", null, course.finish());
        Map<String, Waypoint> once = new LinkedHashMap<>();
        course.order().forEach(point -> once.putIfAbsent(point.id(), point));
        for (Waypoint point : once.values()) {
            if (point instanceof Gate gate) {
                line(lines, "gate", gate.id(), new Line(gate.portMark(), gate.starboardMark()));
            } else if (point instanceof Mark mark) {
                place(mark.position(), marks.addObject().put("id", mark.id()).putArray("place_m"));
            }
        }
        ArrayNode boundary = node.putArray("boundary_m");
        course.boundary().forEach(corner -> place(corner, boundary.addArray()));
        return node;
    }

    private void line(ArrayNode lines, String kind, @Nullable String id, Line line) {
        ObjectNode node = lines.addObject().put("kind", kind).put("id", id);
        place(line.portEnd(), node.putArray("port_m"));
        place(line.starboardEnd(), node.putArray("starboard_m"));
    }

    private void place(Position position, ArrayNode pair) {
        PlanePoint point = plane.toPlane(position);
        pair.add(point.north()).add(point.east());
    }
}
