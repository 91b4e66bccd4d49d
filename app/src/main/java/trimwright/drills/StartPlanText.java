package trimwright.drills;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import trimwright.crew.ComputedHand;
import trimwright.start.Held;
import trimwright.start.Spread;
import trimwright.start.StartPlan;
import trimwright.start.StartSetup;
import trimwright.start.StartTrial;
import trimwright.text.TextTable;
import trimwright.text.Texts;
import trimwright.units.Units;

/** The plan of a start for people. */
public final class StartPlanText {
    /** More boats than this that went over make a way one to be left alone (-): chosen. */
    private static final double NOT_SO = 0.02;

    /** No hand holds a move for less (s): chosen. */
    private static final double SHORT = 0.5;

    private StartPlanText() {}

    public static String of(StartPlan plan, int boats) {
        StartSetup setup = plan.setup();
        StringBuilder text = new StringBuilder();
        line(
                text,
                "startplan.title",
                setup.boat().title(),
                setup.wing().id(),
                Units.toKnots(setup.wind()),
                100 * setup.intensity(),
                Units.toDegrees(setup.angle()),
                Units.toKnots(setup.target()));
        line(text, "startplan.runs", boats);
        text.append('\n').append(Texts.of("startplan.slowest")).append('\n');
        text.append(held("startplan.on_foils", plan.onFoils())).append('\n');
        text.append(held("startplan.off_foils", plan.offFoils())).append('\n');
        text.append('\n').append(Texts.of("startplan.seconds")).append('\n');
        text.append(seconds(plan.gathering()))
                .append(Texts.of("startplan.spare"))
                .append('\n');
        text.append('\n').append(Texts.of("startplan.last")).append('\n');
        text.append(full(plan.gathering()));
        text.append('\n').append(Texts.of("startplan.other")).append('\n');
        text.append(full(plan.otherTack()));
        text.append('\n').append(Texts.of("startplan.lose")).append('\n');
        text.append(losing(plan.losing()));
        return text.append('\n')
                .append(Texts.of("startplan.caution"))
                .append('\n')
                .toString();
    }

    private static void line(StringBuilder text, String key, Object... args) {
        text.append(Texts.of(key, args)).append('\n');
    }

    private static String held(String key, @Nullable Held held) {
        return held == null
                ? Texts.of(key + "_none")
                : Texts.of(
                        key,
                        Units.toKnots(held.speed()),
                        Units.toKnots(held.least()),
                        Units.toDegrees(ComputedHand.easeFor(held.power())));
    }

    private static String seconds(List<StartPlan.Gathering> gathering) {
        StringBuilder head = new StringBuilder(Texts.of("startplan.distance"));
        gathering.forEach(one -> head.append('|').append(from(one.from())));
        TextTable table = new TextTable(head.toString());
        for (int i = 0; i < StartTrial.DISTANCES.size(); i++) {
            List<String> row = new ArrayList<>();
            row.add(String.valueOf(StartTrial.DISTANCES.get(i)));
            for (StartPlan.Gathering one : gathering) {
                row.add(span("%.0f", one.reached().get(i)));
            }
            table.row(row);
        }
        return table.text();
    }

    private static String full(List<StartPlan.Gathering> gathering) {
        TextTable table = new TextTable(Texts.of("startplan.last_head"));
        for (StartPlan.Gathering one : gathering) {
            table.row(List.of(
                    from(one.from()),
                    span("%.0f", one.seconds()),
                    span("%.0f", one.metres()),
                    span("%.0f", one.across()),
                    number("%.0f", 100 * one.touched()),
                    capsized(one.capsized())));
        }
        return table.text();
    }

    private static String losing(List<StartPlan.Losing> ways) {
        TextTable table = new TextTable(Texts.of("startplan.lose_head"));
        for (StartPlan.Losing way : ways) {
            table.row(List.of(
                    Texts.of("startplan.delay." + way.delay().name().toLowerCase(Locale.ROOT)),
                    number("%.0f", way.wanted()),
                    way.hold() < SHORT ? Texts.of("startplan.short", SHORT) : number("%.1f", way.hold()),
                    number("%.1f", way.lost().low()) + "-"
                            + number("%.1f", way.lost().high()),
                    number("%.0f", way.regained().middle()),
                    number("%.0f", Units.toKnots(way.least().middle())),
                    number("%.0f", way.across().middle()),
                    number("%.0f", 100 * way.touched()),
                    capsized(way.capsized())));
        }
        return table.text();
    }

    private static String from(Held held) {
        return Texts.of(
                held.isOffFoils() ? "startplan.from_off" : held.isOnFoils() ? "startplan.from_on" : "startplan.from",
                Units.toKnots(held.speed()));
    }

    private static String capsized(double share) {
        return number("%.0f", 100 * share) + (share > NOT_SO ? " " + Texts.of("startplan.not_so") : "");
    }

    private static String span(String format, Spread spread) {
        if (Double.isNaN(spread.middle())) {
            return "-";
        }
        String high = Double.isNaN(spread.high()) ? "..." : number(format, spread.high());
        return number(format, spread.middle()) + " (" + number(format, spread.low()) + "-" + high + ")";
    }

    private static String number(String format, double value) {
        return Double.isNaN(value) ? "-" : String.format(Locale.ROOT, format, value);
    }
}
