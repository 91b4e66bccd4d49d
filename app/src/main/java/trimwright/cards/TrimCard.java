package trimwright.cards;

import java.util.ArrayList;
import java.util.Comparator;
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

    /** A side of targets: upwind, downwind or the fastest reach. */
    static Side targets(TrimCardRequest request, TargetBook book, CardSide side) {
        List<Row> rows = new ArrayList<>();
        CardNotes notes = new CardNotes();
        for (double wind : request.winds()) {
            TargetPoint point = side == CardSide.REACH ? fastest(book, wind) : best(book, wind, side.mode());
            if (point != null) {
                rows.add(point.isSolved() ? solved(point, notes) : unsolved(wind, String.valueOf(point.reason())));
            } else if (side == CardSide.REACH) {
                rows.add(unsolved(wind, Texts.of("card.no_reach")));
            }
        }
        return new Side(
                side.key(),
                Texts.of("card.side." + side.key()),
                List.of(Texts.of("card.head").split("\\|", -1)),
                rows,
                notes.lettered(),
                Texts.of("card.bands"));
    }

    private static @Nullable TargetPoint best(TargetBook book, double wind, TargetMode mode) {
        return book.listBest().stream()
                .filter(point -> point.mode() == mode && point.trueWindSpeed() == wind)
                .findFirst()
                .orElse(null);
    }

    /** The fastest of the book's angles on the foils; null where none holds there. */
    private static @Nullable TargetPoint fastest(TargetBook book, double wind) {
        return book.points().stream()
                .filter(point -> point.mode() == TargetMode.ANGLE && point.trueWindSpeed() == wind)
                .filter(point -> point.isFoiling() && point.isSolved())
                .max(Comparator.comparingDouble(point -> point.getTarget().boatSpeed()))
                .orElse(null);
    }

    private static Row solved(TargetPoint point, CardNotes notes) {
        Target target = point.getTarget();
        String marks = notes.marks(notesOf(target));
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

    /** A wind without a target. */
    static Row unsolved(double wind, String reason) {
        return new Row(knots(wind, 0), "", List.of(), reason);
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

    private static Cell banded(double shown, Band band) {
        return new Cell(degrees(shown), Texts.of("card.band", degrees(band.low()), degrees(band.high())));
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
