package trimwright.debrief;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.course.PlaneLine;
import trimwright.course.PlanePoint;
import trimwright.segment.OnCourse;
import trimwright.segment.SailedCourse;
import trimwright.text.JsonOut;
import trimwright.units.Units;
import trimwright.wind.Quantity;
import trimwright.wind.WindTrack;

/**
 * The last minute and a half before the start, of all boats ({@code starts/1}): how far the bow was from the line, where along it, how fast,
 * and how long the rest would take at the speed at which it came nearer.
 */
public final class StartOverlay {
    static final double BEFORE = 90;
    static final double AFTER = 20;

    /** Time between two values (s), chosen. */
    private static final double STEP = 0.5;

    /** A rest of more than this (s), or one that grows, is not told: chosen. */
    private static final double LONGEST = 120;

    private static final List<String> ROWS =
            List.of("line_m", "to_line_s", "boat_speed_kn", "along_ratio", "ride_height_m", "sheet_deg");

    private final WindTrack track;
    private final OnCourse on;
    private final PlaneLine line;

    private StartOverlay(WindTrack track, OnCourse on) {
        this.track = track;
        this.on = on;
        line = on.course().start();
    }

    /** Boats that started, in the order of the session. */
    public static ObjectNode of(DebriefReport report) {
        ObjectNode document = JsonOut.document("starts/1");
        document.put("before_s", BEFORE).put("step_s", STEP);
        ArrayNode rows = document.putArray("rows");
        ROWS.forEach(rows::add);
        ArrayNode boats = document.putArray("starts");
        for (BoatDebrief boat : report.boats()) {
            OnCourse on = boat.on();
            SailedCourse.Start start = on == null ? null : on.sailed().start();
            if (on != null && start != null) {
                ObjectNode node = boats.addObject().put("boat", boat.boat());
                node.put("at_s", start.gun() * boat.wind().clock().step());
                node.put("crossed_s", start.crossed()).put("early", start.isEarly());
                node.put("speed_kn", Units.toKnots(start.speed()));
                node.put("target_ratio", boat.startShare());
                new StartOverlay(boat.wind(), on).put(node.putObject("values"), start.gun());
            }
        }
        return document;
    }

    private void put(ObjectNode values, int gun) {
        for (String row : ROWS) {
            ArrayNode array = values.putArray(row);
            for (double t = -BEFORE; t <= AFTER + 1e-9; t += STEP) {
                int at = gun + (int) Math.round(t / track.clock().step());
                Double value = at < 0 || at >= track.size() ? null : value(row, at);
                if (value == null || value.isNaN()) {
                    array.addNull();
                } else {
                    array.add(Math.rint(1000 * value) / 1000);
                }
            }
        }
    }

    private @Nullable Double value(String row, int at) {
        int steps = track.clock().steps(STEP);
        int to = Math.min(track.size(), at + steps);
        return switch (row) {
            case "line_m" -> distance(at);
            case "to_line_s" -> rest(at);
            case "along_ratio" -> along(at);
            case "boat_speed_kn" -> Units.toKnots(track.mean(Quantity.SPEED, at, to));
            case "ride_height_m" -> track.has(Quantity.RIDE_HEIGHT) ? track.mean(Quantity.RIDE_HEIGHT, at, to) : null;
            case "sheet_deg" ->
                track.has(Quantity.SHEET) ? Units.toDegrees(Math.abs(track.mean(Quantity.SHEET, at, to))) : null;
            default -> throw new IllegalArgumentException(row);
        };
    }

    /** To the endless line (m), negative beyond it. */
    private @Nullable Double distance(int at) {
        PlanePoint bow = on.bow().at(at);
        return bow == null ? null : -line.ahead(bow);
    }

    /** Until the bow is on the line at the speed of the last second and the next (s). */
    private @Nullable Double rest(int at) {
        int second = track.clock().steps(1);
        Double now = distance(at);
        Double before = at < second ? null : distance(at - second);
        Double after = at + second >= track.size() ? null : distance(at + second);
        if (now == null || before == null || after == null || now < 0) {
            return null;
        }
        double nearing = (before - after) / (2 * second * track.clock().step());
        double rest = now / nearing;
        return nearing > 0 && rest < LONGEST ? rest : null;
    }

    /** Along the line from its port end (0) to its starboard end (1), beyond them less or more. */
    private @Nullable Double along(int at) {
        PlanePoint bow = on.bow().at(at);
        if (bow == null) {
            return null;
        }
        PlanePoint port = line.portEnd();
        PlanePoint starboard = line.starboardEnd();
        double north = starboard.north() - port.north();
        double east = starboard.east() - port.east();
        return ((bow.north() - port.north()) * north + (bow.east() - port.east()) * east)
                / (line.length() * line.length());
    }
}
