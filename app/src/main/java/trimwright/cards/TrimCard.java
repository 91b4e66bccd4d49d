package trimwright.cards;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import trimwright.text.MarkText;
import trimwright.text.Texts;
import trimwright.units.Units;

/** What stands on a trim card: figures of the book rounded to what a crew can sail, in rows of winds. */
public final class TrimCard {
    private TrimCard() {}

    /**
     * One figure of a row.
     *
     * @param main read first
     * @param below read next: the band, or a second figure
     */
    public record Cell(String main, String below) {}

    /**
     * One wind.
     *
     * @param wind knots
     * @param how foiling or on the hulls, with the letters of its notes; empty where there is no target
     * @param cells one a column; empty where there is no target
     * @param reason why there is none
     */
    public record Row(
            String wind,
            String how,
            List<Cell> cells,
            @Nullable String reason) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    /**
     * One side of the card.
     *
     * @param key which it is, the same for the same content
     * @param name what it is about, in its headline
     * @param head names of the columns, the wind's first
     * @param rows one a wind
     * @param notes limits that bind and doubts, each begun by its letter
     * @param remark how its figures are meant
     */
    public record Side(String key, String name, List<String> head, List<Row> rows, List<String> notes, String remark) {
        public Side {
            head = List.copyOf(head);
            rows = List.copyOf(rows);
            notes = List.copyOf(notes);
        }
    }

    /** A wind without a target. */
    static Row unsolved(double wind, String reason) {
        return new Row(knots(wind, 0), "", List.of(), reason);
    }

    /** Which control is read in which marks, a sentence; empty where a wing has no marks. */
    static String legend(TrimCardRequest request) {
        String legend = MarkText.legend(request.file().marks(), request.wing().id());
        return legend.isEmpty() ? "" : Texts.of("card.marks", legend);
    }

    /** Those that say something, with a space between. */
    static String joined(String... parts) {
        return Stream.of(parts).filter(part -> !part.isEmpty()).collect(Collectors.joining(" "));
    }

    static String degrees(double radians) {
        return decimal(Units.toDegrees(radians), 0);
    }

    static String knots(double metresPerSecond, int decimals) {
        return decimal(Units.toKnots(metresPerSecond), decimals);
    }

    /** Rounded, without a minus before a zero. */
    static String decimal(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
    }
}
