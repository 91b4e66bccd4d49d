package trimwright.coursefile;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.course.Course;
import trimwright.course.Gate;
import trimwright.course.Line;
import trimwright.course.LocalPlane;
import trimwright.course.Mark;
import trimwright.course.PlaneLine;
import trimwright.course.PlanePoint;
import trimwright.course.Position;
import trimwright.course.Rounding;
import trimwright.course.Waypoint;
import trimwright.keyfile.Fault;
import trimwright.keyfile.NearName;
import trimwright.keyfile.Values;
import trimwright.text.Texts;

/** From the keys of a course file to the course, with the faults that only several keys together show. */
final class CourseLoader {
    /** Further from the start line than this (m) the plane of a course does not hold, and nobody races round a buoy there. */
    private static final double FURTHEST = 20_000;

    /** Two ends nearer than this (m) make no line (chosen). */
    private static final double SHORTEST = 1;

    private final Values file;
    private final List<Fault> faults = new ArrayList<>();

    CourseLoader(Values file) {
        this.file = file;
    }

    List<Fault> faults() {
        return faults;
    }

    /** Null where there are faults. */
    @Nullable
    Course load() {
        long gun = gun();
        Line start = line(file, "start.");
        Line finish = line(file, "finish.");
        Map<String, Waypoint> points = new LinkedHashMap<>();
        for (Values row : file.list("mark")) {
            add(points, row, new Mark(row.getText("id"), position(row, ""), rounding(row)));
        }
        for (Values row : file.list("gate")) {
            Line line = line(row, "");
            add(points, row, new Gate(row.getText("id"), line.portEnd(), line.starboardEnd()));
        }
        List<Position> boundary =
                file.list("boundary").stream().map(row -> position(row, "")).toList();
        if (boundary.size() == 1 || boundary.size() == 2) {
            faults.add(new Fault(0, "boundary", Texts.of("course.boundary", boundary.size())));
        }
        List<Waypoint> order = order(points);
        if (!faults.isEmpty()) {
            return null;
        }
        Course course = new Course(file.getText("name"), gun, start, order, finish, boundary);
        checkSides(course);
        return faults.isEmpty() ? course : null;
    }

    private long gun() {
        String text = file.getText("gun_utc");
        try {
            Instant gun = OffsetDateTime.parse(text).toInstant();
            return Math.addExact(Math.multiplyExact(gun.getEpochSecond(), 1_000_000_000L), gun.getNano());
        } catch (DateTimeException | ArithmeticException e) {
            faults.add(file.fault("gun_utc", Texts.of("course.gun", text)));
            return 0;
        }
    }

    private static Position position(Values row, String prefix) {
        return new Position(row.number(prefix + "lat_deg"), row.number(prefix + "lon_deg"));
    }

    private Line line(Values row, String prefix) {
        Line line = new Line(position(row, prefix + "port_"), position(row, prefix + "starboard_"));
        LocalPlane plane = new LocalPlane(line.portEnd());
        if (plane.toPlane(line.portEnd()).distanceTo(plane.toPlane(line.starboardEnd())) < SHORTEST) {
            faults.add(row.fault(prefix + "port_lat_deg", Texts.of("course.same_place")));
        }
        return line;
    }

    private Rounding rounding(Values row) {
        String text = row.getText("leave");
        return switch (text) {
            case "port" -> Rounding.PORT;
            case "starboard" -> Rounding.STARBOARD;
            default -> {
                faults.add(row.fault("leave", Texts.of("course.rounding", text)));
                yield Rounding.PORT;
            }
        };
    }

    private void add(Map<String, Waypoint> points, Values row, Waypoint point) {
        if (points.putIfAbsent(point.id(), point) != null) {
            faults.add(row.fault("id", Texts.of("course.twice", point.id())));
        }
    }

    private List<Waypoint> order(Map<String, Waypoint> points) {
        List<Waypoint> order = new ArrayList<>();
        List<String> names = List.copyOf(points.keySet());
        for (String part : file.getText("order").split(",", -1)) {
            String id = part.strip();
            Waypoint point = points.get(id);
            String near = point == null ? NearName.find(id, names) : null;
            if (point != null) {
                order.add(point);
            } else {
                faults.add(file.fault(
                        "order",
                        near == null
                                ? Texts.of("course.no_mark", id, String.join(", ", names))
                                : Texts.of("course.no_mark_near", id, near)));
            }
        }
        return order;
    }

    /** A line whose ends are exchanged can never be crossed as it should: what comes before must lie before it. */
    private void checkSides(Course course) {
        LocalPlane plane = course.plane();
        PlaneLine start = line(plane, course.start());
        PlanePoint before = start.middle();
        for (int i = 0; i < course.order().size(); i++) {
            PlanePoint at = middle(plane, course.order().get(i));
            if (!(at.distanceTo(start.middle()) < FURTHEST)) {
                faults.add(file.fault(
                        "order", Texts.of("course.far", course.order().get(i).id(), FURTHEST / 1000)));
            } else if (course.order().get(i) instanceof Gate gate
                    && line(plane, new Line(gate.portMark(), gate.starboardMark()))
                                    .ahead(before)
                            > 0) {
                faults.add(file.fault("order", Texts.of("course.exchanged_gate", gate.id())));
            }
            before = at;
        }
        if (start.ahead(middle(plane, course.order().get(0))) < 0) {
            faults.add(file.fault("start.port_lat_deg", Texts.of("course.exchanged")));
        }
        if (line(plane, course.finish()).ahead(before) > 0) {
            faults.add(file.fault("finish.port_lat_deg", Texts.of("course.exchanged")));
        }
    }

    private static PlaneLine line(LocalPlane plane, Line line) {
        return new PlaneLine(plane.toPlane(line.portEnd()), plane.toPlane(line.starboardEnd()));
    }

    private static PlanePoint middle(LocalPlane plane, Waypoint point) {
        return point instanceof Gate gate
                ? line(plane, new Line(gate.portMark(), gate.starboardMark())).middle()
                : plane.toPlane(((Mark) point).position());
    }
}
