package trimwright.prepare;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import trimwright.target.ControlCost;
import trimwright.target.TargetBook;
import trimwright.target.TargetLimit;
import trimwright.target.TargetMode;
import trimwright.target.TargetPoint;
import trimwright.target.TrimCosts;
import trimwright.text.TextTable;
import trimwright.text.Texts;
import trimwright.units.Units;

/** What it costs to be off at the targets of a book, and what easing a limit would gain: a table for people. */
public final class CostTable {
    private CostTable() {}

    /** The better branch at each node that is solved, one line a point. */
    public static String text(TargetBook book) {
        TextTable table = new TextTable(Texts.of("targets.costs_head"));
        for (TargetPoint point : book.listBest()) {
            if (point.isSolved()) {
                table.row(row(point, point.getTarget().bands().costs()));
            }
        }
        return table.text();
    }

    private static List<String> row(TargetPoint point, TrimCosts costs) {
        List<String> cells = new ArrayList<>(List.of(
                number("%.0f", Units.toKnots(point.trueWindSpeed())),
                Texts.of("targets.mode." + point.mode().key()),
                number(point.mode() == TargetMode.ANGLE ? "%.0f" : "%.1f", Units.toDegrees(point.trueWindAngle()))));
        for (ControlCost cost : List.of(costs.camber(), costs.twist(), costs.sheet())) {
            boolean told = cost.offByOne() > 0;
            cells.add(told ? number("%.2f", Units.toKnots(cost.offByOne())) : "-");
            cells.add(told ? number("%+.1f", Units.toDegrees(cost.aloneTenth())) : "-");
            cells.add(number("%+.1f", Units.toDegrees(cost.tenth().low()))
                    + " "
                    + number("%+.1f", Units.toDegrees(cost.tenth().high())));
            cells.add(number("%+.1f", Units.toDegrees(cost.threeTenths().low()))
                    + " "
                    + number("%+.1f", Units.toDegrees(cost.threeTenths().high())));
        }
        cells.add(together(costs));
        cells.add(gains(costs.easing()));
        return cells;
    }

    private static String together(TrimCosts costs) {
        return costs.isCamberTheDearer()
                ? Texts.of(
                        "targets.costs_camber_sheet",
                        number("%+.1f", costs.camber().together()))
                : Texts.of(
                        "targets.costs_twist_sheet",
                        number("%+.1f", costs.twist().together()));
    }

    private static String gains(Map<TargetLimit, Double> easing) {
        List<String> gains = new ArrayList<>();
        easing.forEach((limit, gain) ->
                gains.add(Texts.of("web.limit_short." + limit.key()) + " " + number("%.3f", Units.toKnots(gain))));
        return String.join(", ", gains);
    }

    /** Rounded, a zero without a sign. */
    private static String number(String format, double value) {
        String text = String.format(Locale.ROOT, format, value);
        return text.matches("[-+]0(\\.0*)?") ? text.substring(1) : text;
    }
}
