package trimwright.cards;

import java.util.ArrayList;
import java.util.List;
import trimwright.card.LoadCard;
import trimwright.card.LoadRow;
import trimwright.platform.Platform;
import trimwright.power.Hauling;
import trimwright.power.PowerAccount;
import trimwright.prepare.InParallel;
import trimwright.prepare.Sections;
import trimwright.prepare.TargetRun;
import trimwright.target.TargetBook;
import trimwright.target.TargetMode;
import trimwright.target.TargetPoint;
import trimwright.text.Progress;
import trimwright.units.Units;

/** Computes load cards, one wind a task. */
public final class LoadRun {
    /** Cambers that every card compares, degrees. */
    private static final List<Integer> CAMBERS = List.of(10, 15, 20, 25, 30, 35, 40, 45, 50);

    private LoadRun() {}

    /**
     * What a card says of one wind.
     *
     * @param wind true wind speed at 10 m (m/s)
     * @param rows best upwind and best downwind, those that are solved
     * @param accounts one a fitness asked; none where no row is
     * @param meanLoad of the sheet at the wing while it is hauled, over the rows (N); 0 where no row is
     */
    public record WindLoads(double wind, List<LoadRow> rows, List<PowerAccount> accounts, double meanLoad) {
        public WindLoads {
            rows = List.copyOf(rows);
            accounts = List.copyOf(accounts);
        }

        /** How fast the wing comes in against the mean load with what oil leaves to the sheet (rad/s). */
        double haulRate(LoadRequest request, PowerAccount account) {
            return Hauling.of(request.wing().sheet(), request.handling()).rate(meanLoad, account.leftForSheet());
        }
    }

    /** Steps that {@link Progress} is told about: one a wind. */
    public static long steps(LoadRequest request) {
        return request.winds().size();
    }

    /** Loads of each wind asked, from a book that has them. */
    public static List<WindLoads> of(LoadRequest request, Sections sections, TargetBook book, Progress progress)
            throws InterruptedException {
        Platform platform = TargetRun.platformOf(request.file().boat(), request.wing(), sections);
        return InParallel.map("loads", request.winds(), wind -> {
            WindLoads loads = windLoads(request, book, platform, wind, cambers());
            progress.done(1);
            return loads;
        });
    }

    /** Loads of one wind without those of other cambers. */
    static WindLoads ofSheet(LoadRequest request, TargetBook book, Platform platform, double wind) {
        return windLoads(request, book, platform, wind, List.of());
    }

    private static List<Double> cambers() {
        return CAMBERS.stream().map(degrees -> Units.fromDegrees(degrees)).toList();
    }

    private static WindLoads windLoads(
            LoadRequest request, TargetBook book, Platform platform, double wind, List<Double> cambers) {
        LoadCard card = new LoadCard(platform, request.handling());
        List<LoadRow> rows = new ArrayList<>();
        for (TargetPoint point : book.listBest()) {
            if (point.trueWindSpeed() == wind && point.mode() != TargetMode.ANGLE && point.isSolved()) {
                LoadRow row = card.rowOf(point, cambers);
                if (row != null) {
                    rows.add(row);
                }
            }
        }
        List<PowerAccount> accounts = rows.isEmpty()
                ? List.of()
                : request.fitness().stream()
                        .map(fitness -> card.account(rows, request.lap(), fitness))
                        .toList();
        double meanMoment = rows.stream()
                .mapToDouble(row -> row.sheet().meanMoment())
                .average()
                .orElse(0);
        return new WindLoads(
                wind, rows, accounts, meanMoment / request.wing().sheet().lever());
    }
}
