package trimwright.dockside;

import java.util.ArrayList;
import java.util.List;
import trimwright.dock.DockAnswer;
import trimwright.dock.DockFinding;
import trimwright.dock.DockItem;
import trimwright.dock.DockLine;
import trimwright.text.Texts;
import trimwright.units.Units;

/** What the boat file says otherwise than was measured, as lines to paste; nothing is written by itself. */
final class FileLines {
    private FileLines() {}

    /** The lines, each with its key, a comment behind it. */
    static List<String> of(DockAnswer.Checked checked) {
        List<String> lines = new ArrayList<>();
        rate(checked, "camber", DockItem.CAMBER_RATE_STARBOARD, DockItem.CAMBER_RATE_PORT, lines);
        rate(checked, "twist", DockItem.TWIST_RATE_STARBOARD, DockItem.TWIST_RATE_PORT, lines);
        DockFinding turns = checked.get(DockItem.WIND_TURNS).finding();
        if (turns == DockFinding.TURNS || turns == DockFinding.DOES_NOT_TURN) {
            lines.add(Texts.of("dock.line.turns", turns == DockFinding.TURNS ? "true" : "false"));
        }
        tape(checked.get(DockItem.ANTENNA_AFT), "aft_of_bow_m", lines);
        tape(checked.get(DockItem.ANTENNA_STARBOARD), "starboard_m", lines);
        return lines;
    }

    /** The slower way's rate: what the model may count on. */
    private static void rate(
            DockAnswer.Checked checked, String control, DockItem one, DockItem other, List<String> lines) {
        DockLine first = checked.get(one);
        DockLine second = checked.get(other);
        if (isMeasured(first) && isMeasured(second) && (isOther(first) || isOther(second))) {
            lines.add(Texts.of(
                    "dock.line.rate",
                    control,
                    Units.toDegrees(Math.min(first.read(), second.read())),
                    Units.toDegrees(first.read()),
                    Units.toDegrees(second.read())));
        }
    }

    private static boolean isMeasured(DockLine line) {
        return !Double.isNaN(line.read());
    }

    private static boolean isOther(DockLine line) {
        return line.finding() != DockFinding.NONE || Double.isNaN(line.expected());
    }

    private static void tape(DockLine line, String key, List<String> lines) {
        if (line.finding() == DockFinding.OFF) {
            lines.add(Texts.of("dock.line.tape", key, line.read()));
        }
    }
}
