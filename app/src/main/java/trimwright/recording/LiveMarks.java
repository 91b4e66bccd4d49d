package trimwright.recording;

import java.math.RoundingMode;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.boat.BoatMarks;
import trimwright.boat.ControlMarks;
import trimwright.boat.MarkedControl;
import trimwright.boat.Side;
import trimwright.call.Call;
import trimwright.live.Gauge;
import trimwright.live.LiveFigures;
import trimwright.segment.Tack;
import trimwright.text.MarkText;
import trimwright.units.Units;

/**
 * What the trimmer's crew reads, for calls and bars.
 *
 * @param marks of the boat file
 * @param wing that she carries
 */
public record LiveMarks(BoatMarks marks, String wing) {
    /** A boat without marks. */
    public static final LiveMarks NONE = new LiveMarks(BoatMarks.NONE, "");

    /** By how many marks a call asks to move, never more than its degrees: {@code 1.5 steps}; null where it is told in degrees. */
    @Nullable
    String amount(Call call, @Nullable Tack tack) {
        MarkedControl control = controlOf(call);
        ControlMarks found = control == null ? null : marks.find(wing, control);
        if (found == null || tack == null) {
            return null;
        }
        double way = call.aim() > call.value() ? 1 : -1;
        double to = call.value() + way * Units.fromDegrees(call.degrees());
        String change = MarkText.change(found, side(tack), call.value(), to, RoundingMode.DOWN);
        return change == null || change.equals("0") ? null : change.substring(1) + " " + found.unit();
    }

    private static @Nullable MarkedControl controlOf(Call call) {
        return switch (call.kind()) {
            case CAMBER_MORE, CAMBER_LESS -> MarkedControl.CAMBER;
            case TWIST_MORE, TWIST_LESS -> MarkedControl.TWIST;
            case POWER_UP, EASE -> null;
        };
    }

    /** Adds what is read now and what would be read at the aim. */
    void put(String boat, LiveFigures figures, Map<String, Object> into) {
        Tack tack = figures.wind().tack();
        put(boat, MarkedControl.CAMBER, tack, figures.trim().camber(), into);
        put(boat, MarkedControl.TWIST, tack, figures.trim().twist(), into);
        put(boat, MarkedControl.SHEET, tack, figures.trim().sheet(), into);
    }

    private void put(String boat, MarkedControl control, @Nullable Tack tack, Gauge gauge, Map<String, Object> into) {
        ControlMarks found = marks.find(wing, control);
        if (found == null || tack == null) {
            return;
        }
        String name = "boat." + boat + "." + control.name().toLowerCase(Locale.ROOT);
        into.put(name + "_marks", found.unit());
        into.put(name + "_mark", text(found, tack, gauge.value()));
        into.put(name + "_aim_mark", text(found, tack, gauge.aim()));
    }

    /** The reading; empty where it is not known or beyond the marks. */
    private static String text(ControlMarks marks, Tack tack, double angle) {
        String text = MarkText.of(marks, side(tack), angle);
        return text == null ? "" : text;
    }

    private static Side side(Tack tack) {
        return tack == Tack.STARBOARD ? Side.STARBOARD : Side.PORT;
    }
}
