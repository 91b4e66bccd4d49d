package trimwright.cards;

import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import trimwright.card.LullChoice;
import trimwright.card.TakeOffCard;
import trimwright.card.TakeOffPath;
import trimwright.card.TakeOffPaths;
import trimwright.card.TakeOffRow;
import trimwright.platform.Platform;
import trimwright.prepare.InParallel;
import trimwright.prepare.Sections;
import trimwright.prepare.TargetRun;
import trimwright.target.TargetBook;
import trimwright.target.TargetPoint;
import trimwright.text.Progress;
import trimwright.units.Units;

/** Computes take-off cards, one wind a task. */
public final class TakeOffRun {
    /** Steps of a dying wind (m/s): a quarter of a knot, finer than anybody tells winds apart; chosen. */
    private static final double STEP = Units.fromKnots(0.25);

    /** Drop of the wind that a lull is (m/s): two knots, as the gust card's; chosen. */
    private static final double LULL = Units.fromKnots(2);

    /** Rounding of winds (m/s). */
    private static final double ROUNDING = 1e-9;

    private TakeOffRun() {}

    /**
     * What a card says.
     *
     * @param rows one a wind
     * @param ways in time, one a row
     * @param last in which nothing holds the boat up below it, from the lowest foiling wind of the rows; null where none foils
     */
    public record TakeOffs(List<TakeOffRow> rows, List<Ways> ways, TakeOffCard.@Nullable LastUp last) {
        public TakeOffs {
            rows = List.copyOf(rows);
            ways = List.copyOf(ways);
        }
    }

    /**
     * Both ways along the wind.
     *
     * @param upwind from a beat on the hulls to one on the foils
     * @param downwind the same of a run
     */
    public record Ways(Way upwind, Way downwind) {}

    /**
     * One way along the wind, in time.
     *
     * @param crewPlace of the target on the hulls (m to windward); NaN where there is none
     * @param bothBoards gain of that target's speed with both main foils down (m/s); NaN where not known
     * @param path the take-off; null where none is known
     * @param lull what to do when the wind drops; null where she does not foil, or the rows have no such wind
     */
    public record Way(
            double crewPlace,
            double bothBoards,
            @Nullable TakeOffPath path,
            @Nullable LullChoice lull) {}

    /** Steps that {@link Progress} is told about: one a wind. */
    public static long steps(TakeOffRequest request) {
        return request.winds().size();
    }

    /** Take-off in each wind asked, from a book that has exactly these. */
    public static TakeOffs of(TakeOffRequest request, Sections sections, TargetBook book, Progress progress)
            throws InterruptedException {
        Platform platform = TargetRun.platformOf(request.file().boat(), request.wing(), sections);
        List<TakeOffRow> rows = InParallel.map("take-off", request.winds(), wind -> {
            TakeOffRow row = new TakeOffCard(platform).rowOf(book, wind);
            progress.done(1);
            return row;
        });
        TakeOffPaths paths = new TakeOffPaths(platform, TargetRun.AIR, TargetRun.water());
        TakeOffCard card = new TakeOffCard(platform);
        List<Ways> ways = InParallel.map(
                "take-off in time",
                rows,
                row -> new Ways(
                        way(book, rows, row, card, paths, TakeOffRow::upwind),
                        way(book, rows, row, card, paths, TakeOffRow::downwind)));
        return new TakeOffs(rows, ways, card.lastUp(book, STEP));
    }

    private static Way way(
            TargetBook book,
            List<TakeOffRow> rows,
            TakeOffRow row,
            TakeOffCard card,
            TakeOffPaths paths,
            Function<TakeOffRow, TakeOffRow.Choice> side) {
        TakeOffPath path = paths.bestOf(book, row, side.apply(row));
        double less = row.wind() - LULL;
        LullChoice lull = side.apply(row).onFoils() == null
                ? null
                : rows.stream()
                        .filter(other -> Math.abs(other.wind() - less) < ROUNDING)
                        .findFirst()
                        .map(other -> LullChoice.of(other.wind(), side.apply(other), path))
                        .orElse(null);
        TargetPoint hulls = side.apply(row).onHulls();
        return new Way(
                hulls == null ? Double.NaN : paths.crewPlace(hulls),
                hulls == null ? Double.NaN : card.gainOfBothBoards(hulls),
                path,
                lull);
    }
}
