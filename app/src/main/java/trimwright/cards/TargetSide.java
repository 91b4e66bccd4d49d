package trimwright.cards;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import trimwright.aim.Aim;
import trimwright.aim.AimFinder;
import trimwright.aim.Gustiness;
import trimwright.boat.ControlMarks;
import trimwright.boat.MarkedControl;
import trimwright.platform.Platform;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.target.Band;
import trimwright.target.Target;
import trimwright.target.TargetBook;
import trimwright.target.TargetCaveat;
import trimwright.target.TargetLimit;
import trimwright.target.TargetMode;
import trimwright.target.TargetPoint;
import trimwright.text.MarkText;
import trimwright.text.Texts;

/**
 * A side of targets, upwind, downwind or the fastest reach: large what is sailed in the day's gusts, small the band, and the
 * target's speed and moment at its limits where they lie above. A target without an aim stands as it is and says so.
 */
final class TargetSide {
    private final TrimCardRequest request;
    private final Gustiness day;
    private final AimFinder aims;

    /** @param platform of the targets */
    TargetSide(TrimCardRequest request, Platform platform) {
        this.request = request;
        day = Gustiness.of(request.turbulence(), request.file().boat().limits());
        aims = new AimFinder(platform, day);
    }

    TrimCard.Side of(TargetBook book, CardSide side) {
        List<TrimCard.Row> rows = new ArrayList<>();
        CardNotes notes = new CardNotes();
        for (double wind : request.winds()) {
            TargetPoint point = side == CardSide.REACH ? fastest(book, wind) : best(book, wind, side.mode());
            if (point != null) {
                rows.add(
                        point.isSolved()
                                ? solved(point, notes)
                                : TrimCard.unsolved(wind, String.valueOf(point.reason())));
            } else if (side == CardSide.REACH) {
                rows.add(TrimCard.unsolved(wind, Texts.of("card.no_reach")));
            }
        }
        return new TrimCard.Side(
                side.key(), Texts.of("card.side." + side.key()), head(), rows, notes.lettered(), remark());
    }

    /** The target of a wind (m/s) that is best for a mode, as the book has it; null where it has none. */
    static @Nullable TargetPoint best(TargetBook book, double wind, TargetMode mode) {
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

    /** Names of the columns; a control that bears marks with their unit. */
    private List<String> head() {
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

    private String remark() {
        String gusts = Texts.of("card.aims", 100 * day.turbulence(), 100 * day.chancePerMinute());
        return TrimCard.joined(gusts, Texts.of("card.bands"), TrimCard.legend(request));
    }

    private TrimCard.Row solved(TargetPoint point, CardNotes notes) {
        Target target = point.getTarget();
        Aim aim = aims.aimAt(point);
        SailingState state = aim == null ? point.state() : aim.state();
        List<String> said = notesOf(target);
        if (aim == null) {
            said.add(Texts.of("targets.no_aim"));
        }
        String marks = notes.marks(said);
        String how = Texts.of(point.isFoiling() ? "targets.foiling" : "card.on_hulls");
        return new TrimCard.Row(
                TrimCard.knots(point.trueWindSpeed(), 0),
                marks.isEmpty() ? how : how + "  " + marks,
                List.of(
                        speed(point, aim, state),
                        banded(
                                MarkedControl.CAMBER,
                                state.get(Variable.CAMBER),
                                target.bands().camber()),
                        banded(
                                MarkedControl.TWIST,
                                state.get(Variable.TWIST),
                                target.bands().twist()),
                        banded(
                                MarkedControl.SHEET,
                                state.get(Variable.SHEET),
                                target.bands().sheet()),
                        load(target, aim)),
                null);
    }

    private static TrimCard.Cell speed(TargetPoint point, @Nullable Aim aim, SailingState state) {
        String speed = TrimCard.knots(state.get(Variable.BOAT_SPEED), 1);
        String most = TrimCard.knots(point.getTarget().boatSpeed(), 1);
        String angle = TrimCard.degrees(state.get(Variable.TRUE_WIND_ANGLE));
        return new TrimCard.Cell(
                speed,
                aim == null || speed.equals(most)
                        ? Texts.of("card.angle", angle)
                        : Texts.of("card.angle_most", angle, most));
    }

    private static TrimCard.Cell load(Target target, @Nullable Aim aim) {
        double load = aim == null ? target.loads().sheetLoad() : aim.levels().loadAim();
        double carried =
                aim == null ? target.loads().rightingMoment() : aim.levels().momentAim();
        String moment = TrimCard.decimal(carried / 1000, 0);
        String most = TrimCard.decimal(target.loads().rightingMoment() / 1000, 0);
        return new TrimCard.Cell(
                Texts.of("card.load", TrimCard.decimal(load / 1000, 1)),
                moment.equals(most)
                        ? Texts.of("card.moment", moment)
                        : Texts.of("card.moment", Texts.of("card.most", moment, most)));
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

    private TrimCard.Cell banded(MarkedControl control, double shown, Band band) {
        ControlMarks marks = request.file().marks().find(request.wing().id(), control);
        String reading = marks == null ? null : MarkText.of(marks, shown);
        String degrees = TrimCard.degrees(shown);
        String ends = Texts.of("card.band", TrimCard.degrees(band.low()), TrimCard.degrees(band.high()));
        if (marks != null && reading != null) {
            String low = MarkText.of(marks, band.low());
            String high = MarkText.of(marks, band.high());
            String read = low == null || high == null ? "" : Texts.of("card.band", low, high);
            return new TrimCard.Cell(
                    reading, Texts.of("card.marked_band", read, degrees).strip());
        }
        // Beyond the marks with the sign of degrees, so that nobody takes these for marks.
        return new TrimCard.Cell(marks == null ? degrees : Texts.of("card.degrees", degrees), ends);
    }
}
