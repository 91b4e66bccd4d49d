package trimwright.cards;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import trimwright.boat.Handling;
import trimwright.card.GustAct;
import trimwright.card.GustCard;
import trimwright.card.GustRow;
import trimwright.platform.Platform;
import trimwright.target.TargetBook;
import trimwright.target.TargetPoint;
import trimwright.text.Texts;
import trimwright.units.Units;

/** A side of gusts: at each wind's target the first act against a lull and three gusts, as {@code gust} says it. */
final class GustSide {
    /** Changes of the wind (kn), one a column; of those that the command takes where nothing is said. */
    static final List<Double> CHANGES_KN = List.of(-4.0, 2.0, 4.0, 6.0);

    private final TrimCardRequest request;
    private final GustCard card;

    /** @param platform of the targets */
    GustSide(TrimCardRequest request, Handling handling, Platform platform) {
        this.request = request;
        card = new GustCard(platform, handling);
    }

    TrimCard.Side of(TargetBook book, CardSide side) {
        List<TrimCard.Row> rows = new ArrayList<>();
        CardNotes notes = new CardNotes();
        for (double wind : request.winds()) {
            TargetPoint point = TargetSide.best(book, wind, side.mode());
            if (point != null) {
                rows.add(
                        point.isSolved() ? row(point, notes) : TrimCard.unsolved(wind, String.valueOf(point.reason())));
            }
        }
        return new TrimCard.Side(
                side.key(),
                Texts.of("card.side." + side.key()),
                List.of(Texts.of("card.gust_head").split("\\|", -1)),
                rows,
                notes.lettered(),
                TrimCard.joined(Texts.of("card.gusts"), TrimCard.legend(request)));
    }

    private TrimCard.Row row(TargetPoint point, CardNotes notes) {
        List<TrimCard.Cell> cells = new ArrayList<>();
        for (double change : CHANGES_KN) {
            double metres = Units.fromKnots(change);
            GustRow row = point.trueWindSpeed() + metres > 0 ? card.rowOf(point, metres, /* shift= */ 0) : null;
            cells.add(row == null ? new TrimCard.Cell("-", "") : cell(point, row, notes));
        }
        return new TrimCard.Row(
                TrimCard.knots(point.trueWindSpeed(), 0),
                Texts.of(point.isFoiling() ? "targets.foiling" : "card.on_hulls"),
                cells,
                null);
    }

    /** By how much, large; by which control and what else is to be known, small. */
    private TrimCard.Cell cell(TargetPoint point, GustRow row, CardNotes notes) {
        GustAct act = row.first();
        List<String> said = new ArrayList<>();
        if (!act.isEnough()) {
            said.add(Texts.of("card.gust_short"));
        } else if (!act.isInTime()) {
            said.add(Texts.of("card.gust_slow"));
        }
        if (row.isStalled()) {
            said.add(Texts.of("card.gust_stalls"));
        }
        if (row.sheetLoadAtOnce() > request.wing().sheet().loadMax()) {
            said.add(Texts.of("card.gust_over"));
        }
        String letters = notes.marks(said);
        if (act.change() == 0) {
            return new TrimCard.Cell("-", TrimCard.joined(Texts.of("card.gust_nothing"), letters));
        }
        String how = Texts.of(
                "gust." + act.control().name().toLowerCase(Locale.ROOT) + (act.change() > 0 ? ".more" : ".less"));
        String degrees = Texts.of("card.gust_degrees", Units.toDegrees(act.change()));
        String read = MarkedAct.reading(request.file(), request.wing(), point.getTarget(), row, act);
        return read == null
                ? new TrimCard.Cell(degrees, TrimCard.joined(how, letters))
                : new TrimCard.Cell(read, TrimCard.joined(how, "(" + degrees + ")", letters));
    }
}
