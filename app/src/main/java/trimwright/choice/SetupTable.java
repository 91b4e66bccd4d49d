package trimwright.choice;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import trimwright.setup.GustLimit;
import trimwright.setup.RaceOutlook;
import trimwright.setup.SetupChoice;
import trimwright.text.TextTable;
import trimwright.text.Texts;
import trimwright.units.Units;

/** The choice as tables for a terminal. */
public final class SetupTable {
    private SetupTable() {}

    /** One line a setup. */
    public static String setups(SetupRequest request, SetupChoice choice) {
        TextTable table = new TextTable(Texts.of("choose.head"));
        for (SetupChoice.Setup setup : choice.setups()) {
            RaceOutlook outlook = setup.asForecast();
            table.row(List.of(
                    setup.wing(),
                    setup.foils(),
                    decimal(setup.crewMass(), 0),
                    clock(outlook.time()),
                    Texts.of(
                            "choose.span",
                            clock(outlook.timeBelow(RaceOutlook.LOW)),
                            clock(outlook.timeBelow(RaceOutlook.HIGH))),
                    percent(outlook.foilingShare()),
                    percent(choice.fastestShare(setup)),
                    chance(outlook, GustLimit.SHEET_LOAD),
                    chance(outlook, GustLimit.HEEL),
                    SetupWords.verdict(request, choice, setup)));
        }
        return table.text();
    }

    /** What each setup costs against the fastest, as forecast and in less and more wind. */
    public static String regrets(SetupChoice choice) {
        double other = Units.toKnots(SetupChoice.OTHER_WIND);
        TextTable table = new TextTable(Texts.of("choose.regret_head", other, other));
        for (SetupChoice.Setup setup : choice.setups()) {
            table.row(List.of(
                    setup.wing(),
                    setup.foils(),
                    decimal(setup.crewMass(), 0),
                    regret(choice, setup, SetupChoice.Setup::lessWind),
                    regret(choice, setup, SetupChoice.Setup::asForecast),
                    regret(choice, setup, SetupChoice.Setup::moreWind)));
        }
        return table.text();
    }

    private static String regret(
            SetupChoice choice, SetupChoice.Setup setup, Function<SetupChoice.Setup, RaceOutlook> which) {
        double lost = choice.regret(setup, which);
        if (Double.isNaN(lost)) {
            return "-";
        }
        RaceOutlook outlook = which.apply(setup);
        double worst = Math.max(
                outlook.overLimit().getOrDefault(GustLimit.SHEET_LOAD, Double.NaN),
                outlook.overLimit().getOrDefault(GustLimit.HEEL, Double.NaN));
        String cost = String.format(Locale.ROOT, "%+.0f s", Math.max(0, lost));
        if (Double.isNaN(worst)) {
            return Texts.of("choose.regret_unknown", cost);
        }
        return worst <= choice.chanceMax() ? cost : Texts.of("choose.regret_over", cost, 100 * worst);
    }

    private static String chance(RaceOutlook outlook, GustLimit limit) {
        return percent(outlook.overLimit().getOrDefault(limit, Double.NaN));
    }

    private static String percent(double share) {
        return Double.isNaN(share) ? "-" : decimal(100 * share, 0);
    }

    private static String clock(double seconds) {
        if (Double.isNaN(seconds)) {
            return "-";
        }
        long whole = Math.round(seconds);
        return String.format(Locale.ROOT, "%d:%02d", whole / 60, whole % 60);
    }

    private static String decimal(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
