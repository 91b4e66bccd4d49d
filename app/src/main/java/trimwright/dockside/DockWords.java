package trimwright.dockside;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import trimwright.dock.DockAnswer;
import trimwright.dock.DockFinding;
import trimwright.dock.DockItem;
import trimwright.dock.DockLine;
import trimwright.text.Texts;
import trimwright.units.Units;

/** A line of a check in words and in the units that people read. */
final class DockWords {
    private static final String NONE = "-";

    private DockWords() {}

    static String key(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }

    static String what(DockItem item) {
        return Texts.of("dock.item." + key(item));
    }

    static String verdict(DockFinding.Verdict verdict) {
        return Texts.of("dock.verdict." + key(verdict));
    }

    /** What is the matter, and what to do about it; of a line that passes nothing. */
    static String says(DockLine line) {
        if (line.finding() == DockFinding.NONE) {
            return "";
        }
        if (line.finding() == DockFinding.SWAPPED) {
            return Texts.of("dock.finding.swapped", Texts.of("dock.channel." + word(String.valueOf(line.other()))));
        }
        String own = "dock.finding." + key(line.finding()) + "." + key(line.item());
        return Texts.contains(own) ? Texts.of(own) : Texts.of("dock.finding." + key(line.finding()));
    }

    /** The last word of a path. */
    private static String word(String path) {
        return path.substring(path.lastIndexOf('.') + 1);
    }

    /** A number of that item with its unit. */
    static String number(DockItem item, double value) {
        return Double.isNaN(value) ? NONE : plain(item, value) + unit(item);
    }

    /** What was read, with half its interval where it has one. */
    static String read(DockLine line) {
        if (Double.isNaN(line.read())) {
            return NONE;
        }
        String error = plain(line.item(), line.error());
        // What rounds to nothing is left out.
        String half = error.matches("0(\\.0*)?") ? "" : Texts.of("dock.half", error);
        return plain(line.item(), line.read()) + half + unit(line.item());
    }

    /** A value in the unit of {@link #suffix}. */
    static double inUnit(DockItem item, double value) {
        return switch (item.unit()) {
            case ANGLE, RATE -> Units.toDegrees(value);
            case SPEED -> Units.toKnots(value);
            case FORCE, LENGTH, TIME, RATIO -> value;
        };
    }

    /** The unit at the end of a key. */
    static String suffix(DockItem item) {
        return switch (item.unit()) {
            case ANGLE -> "_deg";
            case RATE -> "_deg_per_s";
            case FORCE -> "_n";
            case SPEED -> "_kn";
            case LENGTH -> "_m";
            case TIME -> "_s";
            case RATIO -> "_ratio";
        };
    }

    private static String unit(DockItem item) {
        return switch (item.unit()) {
            case ANGLE -> " deg";
            case RATE -> " deg/s";
            case FORCE -> " N";
            case SPEED -> " kn";
            case LENGTH -> " m";
            case TIME -> " s";
            case RATIO -> "";
        };
    }

    private static String plain(DockItem item, double value) {
        String form = switch (item.unit()) {
            case ANGLE, RATE, SPEED, TIME -> "%.1f";
            case FORCE -> "%.0f";
            case LENGTH, RATIO -> "%.2f";
        };
        String text = String.format(Locale.ROOT, form, inUnit(item, value));
        return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
    }

    /** Why nothing can be checked: one line. */
    static String refusal(String boat, long startNanos, DockAnswer.Refused refused) {
        String when = Instant.ofEpochSecond(0, startNanos + Math.round(refused.seconds() * 1e9))
                .truncatedTo(ChronoUnit.SECONDS)
                .toString();
        return switch (refused.reason()) {
            case MOVING -> Texts.of("dock.moving", boat, when, Units.toKnots(refused.value()));
            case TURNING -> Texts.of("dock.turning", boat, when, Units.toDegrees(refused.value()));
            case NOT_KNOWN -> Texts.of("dock.rest_not_known", boat);
            case TOO_SHORT -> Texts.of("dock.too_short", boat, Math.max(0, refused.value()));
        };
    }
}
