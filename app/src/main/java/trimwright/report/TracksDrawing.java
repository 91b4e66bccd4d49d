package trimwright.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;
import trimwright.course.Course;
import trimwright.course.Gate;
import trimwright.course.Line;
import trimwright.course.LocalPlane;
import trimwright.course.Mark;
import trimwright.course.PlanePoint;
import trimwright.course.Position;
import trimwright.course.Waypoint;
import trimwright.text.Texts;

/** The course and where each boat went, north up. */
final class TracksDrawing {
    private static final int WIDTH = 900;
    private static final int MOST_HEIGHT = 760;
    private static final int EDGE = 30;

    private final Html page;
    private final List<String> boats;
    private final Map<String, double[][]> tracks;
    private final LocalPlane plane;
    private final double west;
    private final double north;
    private final double scale;
    private final int height;

    /**
     * @param tracks norths and easts (m) of each boat
     * @param course that was sailed, null where it is not known
     */
    private TracksDrawing(
            Html page, List<String> boats, Map<String, double[][]> tracks, @Nullable Course course, LocalPlane plane) {
        this.page = page;
        this.boats = boats;
        this.tracks = tracks;
        this.plane = plane;
        List<PlanePoint> still = course == null ? List.of() : places(course);
        double[] norths = all(0, still.stream().mapToDouble(PlanePoint::north));
        double[] easts = all(1, still.stream().mapToDouble(PlanePoint::east));
        west = Arrays.stream(easts).min().orElse(0);
        north = Arrays.stream(norths).max().orElse(1);
        double wide = Math.max(1, Arrays.stream(easts).max().orElse(1) - west);
        double high = Math.max(1, north - Arrays.stream(norths).min().orElse(0));
        scale = Math.min((WIDTH - 2 * EDGE) / wide, (MOST_HEIGHT - 2 * EDGE) / high);
        height = (int) Math.ceil(high * scale) + 2 * EDGE;
    }

    static void put(
            Html page, List<String> boats, Map<String, double[][]> tracks, @Nullable Course course, LocalPlane plane) {
        if (tracks.values().stream().allMatch(columns -> columns[0].length == 0)) {
            page.put("p", Texts.of("report.no_tracks"));
            return;
        }
        TracksDrawing drawing = new TracksDrawing(page, boats, tracks, course, plane);
        page.draw(WIDTH, drawing.height, Texts.of("report.tracks"), () -> {
            if (course != null) {
                drawing.course(course);
            }
            drawing.boats();
            drawing.measure();
        });
    }

    private double[] all(int column, DoubleStream still) {
        DoubleStream moved = tracks.values().stream().flatMapToDouble(columns -> Arrays.stream(columns[column]));
        return DoubleStream.concat(moved, still).toArray();
    }

    private List<PlanePoint> places(Course course) {
        List<Position> places = new ArrayList<>(course.boundary());
        for (Line line : List.of(course.start(), course.finish())) {
            places.add(line.portEnd());
            places.add(line.starboardEnd());
        }
        return places.stream().map(plane::toPlane).toList();
    }

    private void course(Course course) {
        if (!course.boundary().isEmpty()) {
            page.alone("polygon", "points", points(course.boundary()), "class", "boundary");
        }
        line(course.start(), Texts.of("report.start_line"));
        line(course.finish(), Texts.of("report.finish_line"));
        Set<Waypoint> once = new LinkedHashSet<>(course.order());
        for (Waypoint point : once) {
            if (point instanceof Gate gate) {
                dot(gate.portMark(), gate.id());
                dot(gate.starboardMark(), "");
            } else if (point instanceof Mark mark) {
                dot(mark.position(), mark.id());
            }
        }
    }

    private void line(Line line, String name) {
        page.alone("polyline", "points", points(List.of(line.portEnd(), line.starboardEnd())), "class", "line");
        name(line.starboardEnd(), name);
    }

    private void dot(Position position, String name) {
        PlanePoint point = plane.toPlane(position);
        page.alone("circle", "cx", x(point.east()), "cy", y(point.north()), "r", "5", "class", "mark");
        name(position, name);
    }

    private void name(Position position, String name) {
        PlanePoint point = plane.toPlane(position);
        page.put("text", name, "x", Html.at(8 + west(point.east())), "y", Html.at(south(point.north()) - 6));
    }

    private void boats() {
        for (int place = 0; place < boats.size(); place++) {
            String boat = boats.get(place);
            double[][] columns = tracks.getOrDefault(boat, new double[2][0]);
            StringBuilder points = new StringBuilder();
            for (int i = 0; i < columns[0].length; i++) {
                points.append(x(columns[1][i]))
                        .append(',')
                        .append(y(columns[0][i]))
                        .append(' ');
            }
            BoatInk ink = BoatInk.of(place);
            ink.line(page, points.toString().strip(), boat);
        }
    }

    /** A length of a round number of metres, and where north is. */
    private void measure() {
        double metres = StrictMath.pow(10, Math.floor(StrictMath.log10((WIDTH - 2 * EDGE) / scale / 3)));
        double y = height - 12;
        page.alone(
                "polyline",
                "points",
                Html.at(EDGE) + "," + Html.at(y) + " " + Html.at(EDGE + metres * scale) + "," + Html.at(y),
                "class",
                "line");
        page.put("text", Texts.of("report.metres", metres), "x", Html.at(EDGE), "y", Html.at(y - 6));
        page.put("text", Texts.of("report.north"), "x", Html.at(WIDTH - EDGE), "y", "16", "text-anchor", "end");
    }

    private String points(List<Position> positions) {
        StringBuilder points = new StringBuilder();
        for (Position position : positions) {
            PlanePoint point = plane.toPlane(position);
            points.append(x(point.east())).append(',').append(y(point.north())).append(' ');
        }
        return points.toString().strip();
    }

    private double west(double east) {
        return EDGE + (east - west) * scale;
    }

    private double south(double north) {
        return EDGE + (this.north - north) * scale;
    }

    private String x(double east) {
        return Html.at(west(east));
    }

    private String y(double north) {
        return Html.at(south(north));
    }
}
