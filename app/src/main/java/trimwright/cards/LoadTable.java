package trimwright.cards;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import trimwright.boat.SheetTackle;
import trimwright.card.CamberLoad;
import trimwright.card.LoadRow;
import trimwright.power.HaulSpeed;
import trimwright.power.PowerAccount;
import trimwright.text.TextTable;
import trimwright.text.Texts;
import trimwright.units.Units;

/** The load card as tables for a terminal. */
public final class LoadTable {
    private LoadTable() {}

    /** One line a target: the sheet at its trim and five degrees of it. */
    public static String sheets(LoadRequest request, List<LoadRun.WindLoads> winds) {
        TextTable table = new TextTable(Texts.of("loads.head"));
        for (LoadRun.WindLoads wind : winds) {
            for (LoadRow row : wind.rows()) {
                CamberLoad saving = row.cheapestSaving();
                table.row(List.of(
                        knots(wind.wind(), 0),
                        Texts.of("targets.mode." + row.point().mode().key()),
                        knots(row.point().getTarget().boatSpeed(), 1),
                        degrees(row.point().getTarget().trim().camber()),
                        decimal(row.sheet().load() / 1000, 1),
                        decimal(row.sheet().load() / request.wing().sheet().loadMax() * 100, 0),
                        decimal(row.sheet().load() / request.wing().sheet().purchase(), 0),
                        decimal(row.sheet().secondsEasing(), 1),
                        decimal(row.sheet().secondsKept(), 1),
                        decimal(row.sheet().secondsAllOut(), 1),
                        saving == null
                                ? Texts.of("loads.no_saving")
                                : Texts.of(
                                        "loads.saving",
                                        Units.toDegrees(saving.camber()),
                                        100 * row.spared(saving),
                                        Units.toKnots(saving.speedLost()))));
            }
        }
        return table.text();
    }

    /** Sheet load and speed lost over camber, one line a target, one column a camber. */
    public static String cambers(List<LoadRun.WindLoads> winds) {
        List<Double> columns = winds.stream()
                .flatMap(wind -> wind.rows().stream())
                .flatMap(row -> row.cambers().stream())
                .map(CamberLoad::camber)
                .distinct()
                .sorted()
                .toList();
        String head = columns.stream().map(LoadTable::degrees).collect(Collectors.joining("|"));
        TextTable table = new TextTable(Texts.of("loads.camber_head") + (head.isEmpty() ? "" : "|" + head));
        for (LoadRun.WindLoads wind : winds) {
            for (LoadRow row : wind.rows()) {
                List<String> cells = new ArrayList<>(List.of(
                        knots(wind.wind(), 0),
                        Texts.of("targets.mode." + row.point().mode().key())));
                for (double camber : columns) {
                    cells.add(row.cambers().stream()
                            .filter(load -> load.camber() == camber)
                            .map(load ->
                                    decimal(load.sheet().load() / 1000, 1) + " (-" + knots(load.speedLost(), 1) + ")")
                            .findFirst()
                            .orElse("-"));
                }
                table.row(cells);
            }
        }
        return table.text();
    }

    /** One line a wind and fitness: where the grinders' power goes, and how many turns a lap it pays. */
    public static String accounts(LoadRequest request, List<LoadRun.WindLoads> winds) {
        TextTable table = new TextTable(Texts.of("loads.account_head"));
        for (LoadRun.WindLoads wind : winds) {
            for (PowerAccount account : wind.accounts()) {
                table.row(List.of(
                        knots(wind.wind(), 0),
                        decimal(100 * account.fitness(), 0),
                        decimal(account.supply(), 0),
                        decimal(account.oil(), 0),
                        decimal(account.sheet(), 0),
                        decimal(Units.toDegrees(wind.haulRate(request, account)), 1),
                        decimal(account.turnWork() / 1000, 1),
                        String.valueOf(account.turns()),
                        account.steps().stream()
                                .map(step -> name(step.name()) + " " + decimal(step.done(), 1))
                                .collect(Collectors.joining(", ")),
                        saving(account.cheapestSaving()),
                        Double.isInfinite(account.rested()) ? "-" : decimal(account.rested(), 0),
                        account.isShort() ? Texts.of("loads.short") : ""));
            }
        }
        return table.text();
    }

    /** Degrees a second over the load, one line a fitness; the oil of straights is the same in each wind. */
    public static String hauls(LoadRequest request, List<LoadRun.WindLoads> winds) {
        List<PowerAccount> accounts = winds.stream()
                .filter(wind -> !wind.accounts().isEmpty())
                .findFirst()
                .map(LoadRun.WindLoads::accounts)
                .orElse(List.of());
        SheetTackle tackle = request.wing().sheet();
        String head = accounts.isEmpty()
                ? ""
                : HaulSpeed.listOf(request.handling(), tackle, accounts.get(0)).stream()
                        .map(speed -> "|" + decimal(speed.load() / 1000, 0) + " kN")
                        .collect(Collectors.joining());
        TextTable table = new TextTable(Texts.of("loads.haul_head") + head);
        for (PowerAccount account : accounts) {
            List<String> cells = new ArrayList<>(List.of(decimal(100 * account.fitness(), 0)));
            for (HaulSpeed speed : HaulSpeed.listOf(request.handling(), tackle, account)) {
                cells.add(decimal(Units.toDegrees(speed.keptUp()), 1) + " / "
                        + decimal(Units.toDegrees(speed.burst()), 1));
            }
            table.row(cells);
        }
        return table.text();
    }

    private static String saving(PowerAccount.@Nullable Saving saving) {
        return saving == null ? "-" : Texts.of("loads.account_saving", name(saving.name()), saving.turns());
    }

    private static String name(String name) {
        return name.equals(PowerAccount.SHEET) ? Texts.of("loads.sheet") : name;
    }

    private static String knots(double metresPerSecond, int decimals) {
        return decimal(Units.toKnots(metresPerSecond), decimals);
    }

    private static String degrees(double radians) {
        return decimal(Units.toDegrees(radians), 0);
    }

    private static String decimal(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
