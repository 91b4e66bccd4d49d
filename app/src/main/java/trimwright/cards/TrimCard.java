package trimwright.cards;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import trimwright.boat.ControlMarks;
import trimwright.boat.MarkedControl;
import trimwright.target.Band;
import trimwright.target.Target;
import trimwright.target.TargetBook;
import trimwright.target.TargetCaveat;
import trimwright.target.TargetLimit;
import trimwright.target.TargetMode;
import trimwright.target.TargetPoint;
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

    /** A side of targets: upwind, downwind or the fastest reach. */
    static Side targets(TrimCardRequest request, TargetBook book, CardSide side) {
        List<Row> rows = new ArrayList<>();
        CardNotes notes = new CardNotes();
        for (double wind : request.winds()) {
            TargetPoint point = side == CardSide.REACH ? fastest(book, wind) : best(book, wind, side.mode());
            if (point != null) {
                rows.add(
                        point.isSolved()
                                ? solved(request, point, notes)
                                : unsolved(wind, String.valueOf(point.reason())));
            } else if (side == CardSide.REACH) {
                rows.add(unsolved(wind, Texts.of("card.no_reach")));
            }
        }
        return new Side(
                side.key(),
                Texts.of("card.side." + side.key()),
                head(request),
                rows,
                notes.lettered(),
                remark(request));
    }

    /** Names of the columns; a control that bears marks with their unit. */
    private static List<String> head(TrimCardRequest request) {
        List<String> head = new ArrayList<>(List.of(Texts.of("card.head").split("\\|", -1)));
        for (MarkedControl control : MarkedControl.values()) {
            ControlMarks marks = request.file().marks().find(request.wing().id(), control);
            int column = head.indexOf(control.name().toLowerCase(Locale.ROOT));
            if (marks != null && column >= 0) {
                head.set(column, Texts.of("card.marked_head", head.get(column), marks.unit()));
            }
        }
        return head;
    }

    private static String remark(TrimCardRequest request) {
        String legend = MarkText.legend(request.file().marks(), request.wing().id());
        return legend.isEmpty()
                ? Texts.of("card.bands")
                : Texts.of("card.bands") + " " + Texts.of("card.marks", legend);
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

    private static Row solved(TrimCardRequest request, TargetPoint point, CardNotes notes) {
        Target target = point.getTarget();
        String marks = notes.marks(notesOf(target));
        String how = Texts.of(point.isFoiling() ? "targets.foiling" : "card.on_hulls");
        return new Row(
                knots(point.trueWindSpeed(), 0),
                marks.isEmpty() ? how : how + "  " + marks,
                List.of(
                        new Cell(knots(target.boatSpeed(), 1), Texts.of("card.angle", degrees(point.trueWindAngle()))),
                        banded(
                                request,
                                MarkedControl.CAMBER,
                                target.trim().camber(),
                                target.bands().camber()),
                        banded(
                                request,
                                MarkedControl.TWIST,
                                target.trim().twist(),
                                target.bands().twist()),
                        banded(
                                request,
                                MarkedControl.SHEET,
                                target.trim().sheet(),
                                target.bands().sheet()),
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

    private static Cell banded(TrimCardRequest request, MarkedControl control, double shown, Band band) {
        ControlMarks marks = request.file().marks().find(request.wing().id(), control);
        String reading = marks == null ? null : MarkText.of(marks, shown);
        if (marks != null && reading != null) {
            String low = MarkText.of(marks, band.low());
            String high = MarkText.of(marks, band.high());
            String ends = low == null || high == null ? "" : Texts.of("card.band", low, high);
            return new Cell(
                    reading, Texts.of("card.marked_band", ends, degrees(shown)).strip());
        }
        if (marks != null) {
            // Beyond the marks: so that nobody takes degrees for marks.
            return new Cell(
                    Texts.of("card.degrees", degrees(shown)),
                    Texts.of("card.band", degrees(band.low()), degrees(band.high())));
        }
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
