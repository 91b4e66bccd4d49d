package trimwright.boatfile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import trimwright.boat.BoatMarks;
import trimwright.boat.ControlMarks;
import trimwright.boat.MarkScale;
import trimwright.boat.MarkedControl;
import trimwright.keyfile.Fault;
import trimwright.keyfile.Values;
import trimwright.text.Texts;

/** What the crew reads, as a boat file has it: checked, then loaded. */
final class MarkLoader {
    private static final String STARBOARD = "starboard_tack";
    private static final String PORT = "port_tack";

    private MarkLoader() {}

    static BoatMarks load(Values file) {
        return new BoatMarks(file.list("mark").stream().map(MarkLoader::mark).toList());
    }

    private static BoatMarks.OfWing mark(Values row) {
        MarkedControl control = find(row.getText("control"));
        if (control == null) {
            throw new IllegalStateException("read before the check: mark");
        }
        MarkScale starboard = scale(row.list(STARBOARD));
        List<Values> port = row.list(PORT);
        return new BoatMarks.OfWing(
                row.findText("wing"),
                new ControlMarks(
                        control,
                        row.getText("unit").strip(),
                        row.number("finest_reading"),
                        starboard,
                        port.isEmpty() ? starboard : scale(port)));
    }

    private static MarkScale scale(List<Values> points) {
        return new MarkScale(points.stream()
                .map(point -> new MarkScale.Point(point.number("angle_deg"), point.number("reading")))
                .toList());
    }

    private static @Nullable MarkedControl find(@Nullable String name) {
        for (MarkedControl control : MarkedControl.values()) {
            if (name(control).equals(name)) {
                return control;
            }
        }
        return null;
    }

    private static String name(MarkedControl control) {
        return control.name().toLowerCase(Locale.ROOT);
    }

    /** Faults that no single value shows. */
    static List<Fault> check(Values file) {
        List<Fault> faults = new ArrayList<>();
        List<String> wings = file.list("wing").stream()
                .map(wing -> String.valueOf(wing.findText("id")))
                .toList();
        Set<String> seen = new HashSet<>();
        for (Values row : file.list("mark")) {
            String control = row.findText("control");
            String wing = row.findText("wing");
            if (control == null) {
                continue;
            }
            if (find(control) == null) {
                String known = Arrays.stream(MarkedControl.values())
                        .map(MarkLoader::name)
                        .collect(Collectors.joining(", "));
                faults.add(row.fault("control", Texts.of("boatfile.mark_control", control, known)));
            } else if (!seen.add(control + " " + wing)) {
                faults.add(row.fault("control", Texts.of("boatfile.mark_twice", control)));
            }
            if (wing != null && !wings.contains(wing)) {
                faults.add(row.fault("wing", Texts.of("boatfile.mark_wing", wing, String.join(", ", wings))));
            }
            points(row, STARBOARD, control, faults);
            if (!row.list(PORT).isEmpty()) {
                points(row, PORT, control, faults);
            }
        }
        return faults;
    }

    private static void points(Values row, String tack, String control, List<Fault> faults) {
        List<Values> points = row.list(tack);
        if (points.size() < 2) {
            faults.add(row.fault("control", Texts.of("boatfile.mark_two", control)));
            return;
        }
        double way = points.get(1).number("reading") - points.get(0).number("reading");
        for (int i = 1; i < points.size(); i++) {
            double before = points.get(i - 1).number("angle_deg");
            double angle = points.get(i).number("angle_deg");
            double last = points.get(i - 1).number("reading");
            double reading = points.get(i).number("reading");
            if (angle <= before) {
                faults.add(points.get(i)
                        .fault("angle_deg", Texts.of("boatfile.mark_angle", degrees(angle), degrees(before))));
            }
            if ((reading - last) * way <= 0) {
                // What follows is wrong with it, or right without it.
                faults.add(points.get(i).fault("reading", Texts.of("boatfile.mark_reading", reading, last)));
                return;
            }
        }
    }

    private static String degrees(double radians) {
        return String.format(Locale.ROOT, "%.1f", Math.toDegrees(radians));
    }
}
