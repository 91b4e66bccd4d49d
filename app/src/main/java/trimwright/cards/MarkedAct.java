package trimwright.cards;

import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;
import trimwright.boat.ControlMarks;
import trimwright.boat.MarkedControl;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.card.GustAct;
import trimwright.card.GustRow;
import trimwright.target.Target;
import trimwright.text.MarkText;

/** An act against a gust as the crew reads it: so many marks from where the control stands at the target. */
final class MarkedAct {
    private MarkedAct() {}

    /** By how many marks, with their unit: {@code +1.5 steps}; null where the control bears none or its marks end before. */
    static @Nullable String change(GustRequest request, Target target, GustRow row, GustAct act) {
        ControlMarks marks = marksOf(request.file(), request.wing(), act);
        String reading = reading(request.file(), request.wing(), target, row, act);
        return marks == null || reading == null ? null : reading + " " + marks.unit();
    }

    /** The same without the unit. */
    static @Nullable String reading(BoatFile file, WingSpec wing, Target target, GustRow row, GustAct act) {
        ControlMarks marks = marksOf(file, wing, act);
        double from = from(target, act);
        // Against a gust no less than is needed, in a lull no more.
        RoundingMode rounding = row.jump() > 0 ? RoundingMode.UP : RoundingMode.DOWN;
        return marks == null || act.change() == 0 ? null : MarkText.change(marks, from, from + act.change(), rounding);
    }

    private static @Nullable ControlMarks marksOf(BoatFile file, WingSpec wing, GustAct act) {
        return file.marks().find(wing.id(), MarkedControl.valueOf(act.control().name()));
    }

    /** Where the control stands at the target (rad). */
    private static double from(Target target, GustAct act) {
        return switch (act.control()) {
            case SHEET -> target.trim().sheet();
            case CAMBER -> target.trim().camber();
            case TWIST -> target.trim().twist();
            default -> throw new IllegalArgumentException("no act against a gust: " + act.control());
        };
    }
}
