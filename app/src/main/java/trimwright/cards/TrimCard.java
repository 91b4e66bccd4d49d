package trimwright.cards;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import trimwright.target.Band;
import trimwright.target.Target;
import trimwright.target.TargetBook;
import trimwright.target.TargetCaveat;
import trimwright.target.TargetLimit;
import trimwright.target.TargetMode;
import trimwright.target.TargetPoint;
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
     * @param mode best upwind or best downwind
     * @param rows one a wind
     * @param notes limits that bind and doubts, each begun by its letter
     */
    public record Side(TargetMode mode, List<Row> rows, List<String> notes) {
        public Side {
            rows = List.copyOf(rows);
            notes = List.copyOf(notes);
        }
    }

    /** All sides asked for, from a book that has the winds. */
    public static List<Side> sides(TrimCardRequest request, TargetBook book) {
        return request.sides().stream().map(mode -> sideOf(request, book, mode)).toList();
    }

    private static Side sideOf(TrimCardRequest request, TargetBook book, TargetMode mode) {
        List<Row> rows = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        for (double wind : request.winds()) {
            for (TargetPoint point : book.listBest()) {
                if (point.mode() == mode && point.trueWindSpeed() == wind) {
                    rows.add(point.isSolved() ? solved(point, notes) : unsolved(point));
                }
            }
        }
        List<String> lettered = new ArrayList<>();
        for (int i = 0; i < notes.size(); i++) {
            lettered.add(letter(i) + "  " + notes.get(i));
        }
        return new Side(mode, rows, lettered);
    }

    private static Row solved(TargetPoint point, List<String> notes) {
        Target target = point.getTarget();
        StringBuilder marks = new StringBuilder();
        for (String note : notesOf(target)) {
            if (!notes.contains(note)) {
                notes.add(note);
            }
            marks.append(letter(notes.indexOf(note)));
        }
        String how = Texts.of(point.isFoiling() ? "targets.foiling" : "card.on_hulls");
        return new Row(
                knots(point.trueWindSpeed(), 0),
                marks.isEmpty() ? how : how + "  " + marks,
                List.of(
                        new Cell(knots(target.boatSpeed(), 1), Texts.of("card.angle", degrees(point.trueWindAngle()))),
                        banded(target.trim().camber(), target.bands().camber()),
                        banded(target.trim().twist(), target.bands().twist()),
                        banded(target.trim().sheet(), target.bands().sheet()),
                        new Cell(
                                Texts.of("card.load", decimal(target.loads().sheetLoad() / 1000, 1)),
                                Texts.of("card.moment", decimal(target.loads().rightingMoment() / 1000, 0)))),
                null);
    }

    private static Row unsolved(TargetPoint point) {
        return new Row(knots(point.trueWindSpeed(), 0), "", List.of(), String.valueOf(point.reason()));
    }

    private static List<String> notesOf(Target target) {
        List<String> notes = new ArrayList<>();
        for (TargetLimit limit : target.limits()) {
            notes.add(Texts.of("card.limit", Texts.of("web.limit_short." + limit.key())));
        }
        for (TargetCaveat caveat : target.caveats()) {
            notes.add(caveat.sentence());
        }
        return notes;
    }

    private static String letter(int index) {
        return String.valueOf((char) ('a' + index));
    }

    private static Cell banded(double shown, Band band) {
        return new Cell(degrees(shown), Texts.of("card.band", degrees(band.low()), degrees(band.high())));
    }

    private static String degrees(double radians) {
        return decimal(Units.toDegrees(radians), 0);
    }

    private static String knots(double metresPerSecond, int decimals) {
        return decimal(Units.toKnots(metresPerSecond), decimals);
    }

    /** Rounded, without a minus before a zero. */
    private static String decimal(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
    }
}
