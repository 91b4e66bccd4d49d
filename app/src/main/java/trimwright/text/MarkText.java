package trimwright.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import trimwright.boat.BoatMarks;
import trimwright.boat.ControlMarks;
import trimwright.boat.MarkScale;
import trimwright.boat.MarkedControl;
import trimwright.boat.Side;

/**
 * Angles as the crew reads them: rounded to the finest part of a mark that is told, never past the last mark. Where the tacks read
 * differently both are given, starboard tack first.
 */
public final class MarkText {
    private static final String BETWEEN_TACKS = "/";

    private MarkText() {}

    /** The reading on both tacks, without its unit: {@code 7.5}, or {@code 7.5/8}; null beyond the marks. */
    public static @Nullable String of(ControlMarks marks, double angle) {
        return both(of(marks, Side.STARBOARD, angle), of(marks, Side.PORT, angle));
    }

    /** The reading on the tack with the wind from that side, without its unit; null beyond the marks. */
    public static @Nullable String of(ControlMarks marks, Side windFrom, double angle) {
        double rounded = rounded(marks, windFrom, angle);
        return Double.isNaN(rounded) ? null : plain(rounded, marks.finest());
    }

    /**
     * By how much the reading changes on both tacks, with its sign: {@code +1.5}; null where an end lies beyond the marks.
     *
     * @param rounding up: at least so much, as far as there are marks; down: at most so much
     */
    public static @Nullable String change(ControlMarks marks, double from, double to, RoundingMode rounding) {
        return both(change(marks, Side.STARBOARD, from, to, rounding), change(marks, Side.PORT, from, to, rounding));
    }

    /** The reading as a number, rounded as it is told; NaN beyond the marks. */
    public static double rounded(ControlMarks marks, Side windFrom, double angle) {
        MarkScale scale = marks.on(windFrom);
        double reading = scale.reading(angle);
        double finest = marks.finest();
        double nearest = Math.rint(reading / finest) * finest;
        if (Double.isNaN(reading) || !Double.isNaN(scale.angle(nearest))) {
            return nearest;
        }
        // Past the last mark: the last part of a mark before it.
        return nearest > reading ? Math.floor(reading / finest) * finest : Math.ceil(reading / finest) * finest;
    }

    /** Which control is read in what, {@code camber in steps, sheet in tape marks}; empty where a wing has no marks. */
    public static String legend(BoatMarks marks, String wing) {
        List<String> parts = new ArrayList<>();
        for (MarkedControl control : MarkedControl.values()) {
            ControlMarks found = marks.find(wing, control);
            if (found != null) {
                parts.add(Texts.of("marks.in", control.name().toLowerCase(Locale.ROOT), found.unit()));
            }
        }
        return String.join(", ", parts);
    }

    /** The same on the tack with the wind from that side. */
    public static @Nullable String change(
            ControlMarks marks, Side windFrom, double from, double to, RoundingMode rounding) {
        MarkScale scale = marks.on(windFrom);
        double begin = scale.reading(from);
        double change = scale.reading(to) - begin;
        if (Double.isNaN(change)) {
            return null;
        }
        double rounded = rounded(change / marks.finest(), rounding) * marks.finest();
        if (Double.isNaN(scale.angle(begin + rounded))) {
            rounded = rounded(change / marks.finest(), RoundingMode.DOWN) * marks.finest();
        }
        String text = plain(rounded, marks.finest());
        return text.equals("0") || text.startsWith("-") ? text : "+" + text;
    }

    private static double rounded(double parts, RoundingMode rounding) {
        // A part that only rounding of the scale has made is none.
        return BigDecimal.valueOf(parts)
                .setScale(9, RoundingMode.HALF_EVEN)
                .setScale(0, rounding)
                .doubleValue();
    }

    private static @Nullable String both(@Nullable String starboard, @Nullable String port) {
        if (starboard == null || port == null) {
            return null;
        }
        return starboard.equals(port) ? starboard : starboard + BETWEEN_TACKS + port;
    }

    /** With no more decimals than the finest part has, none that are zero. */
    private static String plain(double value, double finest) {
        int decimals =
                Math.max(0, BigDecimal.valueOf(finest).stripTrailingZeros().scale());
        BigDecimal text = BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
        return text.signum() == 0 ? "0" : text.toPlainString();
    }
}
