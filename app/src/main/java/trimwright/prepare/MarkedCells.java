package trimwright.prepare;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import trimwright.boat.BoatMarks;
import trimwright.boat.ControlMarks;
import trimwright.boat.MarkedControl;
import trimwright.target.Band;
import trimwright.text.MarkText;
import trimwright.units.Units;

/** A control and its band in a table of text: in marks with the degrees in brackets where the boat has marks, else in degrees. */
record MarkedCells(BoatMarks marks, String wing) {
    private static final String NONE = "-";

    String banded(MarkedControl control, double shown, Band band) {
        ControlMarks read = marks.find(wing, control);
        if (read == null) {
            return String.format(Locale.ROOT, "%s (%s..%s)", degrees(shown), degrees(band.low()), degrees(band.high()));
        }
        return String.format(
                "%s (%s..%s) [%s]",
                orNone(MarkText.of(read, shown)),
                orNone(MarkText.of(read, band.low())),
                orNone(MarkText.of(read, band.high())),
                degrees(shown));
    }

    private static String orNone(@Nullable String reading) {
        return reading == null ? NONE : reading;
    }

    private static String degrees(double radians) {
        return String.format(Locale.ROOT, "%.0f", Units.toDegrees(radians));
    }
}
