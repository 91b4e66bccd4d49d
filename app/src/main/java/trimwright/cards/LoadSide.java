package trimwright.cards;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import trimwright.boat.Handling;
import trimwright.card.LoadRow;
import trimwright.platform.Platform;
import trimwright.power.PowerAccount;
import trimwright.target.TargetBook;
import trimwright.target.TargetMode;
import trimwright.text.Texts;

/** The side of loads: what the sheet pulls, the seconds that grinders need, and the turns that a lap leaves them, as {@code loads} says it. */
final class LoadSide {
    private final TrimCardRequest request;
    private final LoadRequest loads;
    private final Platform platform;

    /** @param platform of the targets */
    LoadSide(TrimCardRequest request, Handling handling, Platform platform) {
        this.request = request;
        this.platform = platform;
        loads = new LoadRequest(
                request.file(),
                request.wing(),
                handling,
                request.winds(),
                LoadRequest.USUAL_LAP,
                LoadRequest.USUAL_FITNESS);
    }

    TrimCard.Side of(TargetBook book, CardSide side) {
        List<TrimCard.Row> rows = new ArrayList<>();
        for (double wind : request.winds()) {
            LoadRun.WindLoads found = LoadRun.ofSheet(loads, book, platform, wind);
            rows.add(found.rows().isEmpty() ? TrimCard.unsolved(wind, Texts.of("card.no_loads")) : row(found));
        }
        return new TrimCard.Side(
                side.key(),
                Texts.of("card.side." + side.key()),
                List.of(Texts.of("card.load_head").split("\\|", -1)),
                rows,
                List.of(),
                Texts.of("card.loads", fitness(), loads.lap() / 60));
    }

    private String fitness() {
        return loads.fitness().stream()
                .map(share -> TrimCard.decimal(100 * share, 0))
                .collect(Collectors.joining(", "));
    }

    private TrimCard.Row row(LoadRun.WindLoads found) {
        List<TrimCard.Cell> cells = new ArrayList<>();
        for (TargetMode mode : List.of(TargetMode.UPWIND, TargetMode.DOWNWIND)) {
            LoadRow row = found.rows().stream()
                    .filter(one -> one.point().mode() == mode)
                    .findFirst()
                    .orElse(null);
            if (row == null) {
                cells.addAll(List.of(new TrimCard.Cell("-", ""), new TrimCard.Cell("-", "")));
                continue;
            }
            double load = row.sheet().load();
            cells.add(new TrimCard.Cell(
                    TrimCard.decimal(load / 1000, 1),
                    Texts.of(
                            "card.load_share",
                            TrimCard.decimal(100 * load / request.wing().sheet().loadMax(), 0))));
            cells.add(new TrimCard.Cell(
                    Texts.of("card.seconds", TrimCard.decimal(row.sheet().secondsKept(), 1)),
                    Texts.of("card.all_out", TrimCard.decimal(row.sheet().secondsAllOut(), 1))));
        }
        PowerAccount full = found.accounts().get(found.accounts().size() - 1);
        cells.add(new TrimCard.Cell(
                String.valueOf(full.turns()),
                found.accounts().stream()
                        .map(account -> String.valueOf(account.turns()))
                        .collect(Collectors.joining(", "))));
        return new TrimCard.Row(TrimCard.knots(found.wind(), 0), "", cells, null);
    }
}
