package trimwright.prepare;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import trimwright.boat.BoatMarks;
import trimwright.boat.ControlMarks;
import trimwright.boat.MarkedControl;
import trimwright.boat.Side;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.target.Band;
import trimwright.target.Target;
import trimwright.text.MarkText;

/** What the crew reads at a target, as flat keys beside the degrees; a reading beyond the marks is null. */
final class MarkedKeys {
    private MarkedKeys() {}

    /** Names of the marks, {@code camber_marks}. */
    static void writeUnits(BoatMarks marks, String wing, ObjectNode document) {
        for (MarkedControl control : MarkedControl.values()) {
            ControlMarks found = marks.find(wing, control);
            if (found != null) {
                document.put(name(control) + "_marks", found.unit());
            }
        }
    }

    /** {@code camber_starboard_mark}, {@code camber_low_starboard_mark}, ... and the same of port tack. */
    static void write(BoatMarks marks, String wing, Target target, ObjectNode node) {
        write(
                marks.find(wing, MarkedControl.CAMBER),
                target.trim().camber(),
                target.bands().camber(),
                node);
        write(
                marks.find(wing, MarkedControl.TWIST),
                target.trim().twist(),
                target.bands().twist(),
                node);
        write(
                marks.find(wing, MarkedControl.SHEET),
                target.trim().sheet(),
                target.bands().sheet(),
                node);
        ControlMarks rake = marks.find(wing, MarkedControl.RAKE);
        if (rake != null) {
            write(rake, "main_rake", target.attitude().mainRake(), node);
        }
    }

    /** {@code aim_camber_starboard_mark} and so on. */
    static void writeAim(BoatMarks marks, String wing, SailingState state, ObjectNode node) {
        writeAim(marks.find(wing, MarkedControl.CAMBER), state.get(Variable.CAMBER), node);
        writeAim(marks.find(wing, MarkedControl.TWIST), state.get(Variable.TWIST), node);
        writeAim(marks.find(wing, MarkedControl.SHEET), state.get(Variable.SHEET), node);
    }

    private static void writeAim(@Nullable ControlMarks marks, double angle, ObjectNode node) {
        if (marks != null) {
            write(marks, "aim_" + name(marks.control()), angle, node);
        }
    }

    private static void write(@Nullable ControlMarks marks, double shown, Band band, ObjectNode node) {
        if (marks != null) {
            String name = name(marks.control());
            write(marks, name, shown, node);
            write(marks, name + "_low", band.low(), node);
            write(marks, name + "_high", band.high(), node);
        }
    }

    private static void write(ControlMarks marks, String name, double angle, ObjectNode node) {
        node.put(name + "_starboard_mark", MarkText.rounded(marks, Side.STARBOARD, angle));
        node.put(name + "_port_mark", MarkText.rounded(marks, Side.PORT, angle));
    }

    private static String name(MarkedControl control) {
        return control.name().toLowerCase(Locale.ROOT);
    }
}
