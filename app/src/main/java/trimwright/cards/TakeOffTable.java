package trimwright.cards;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import trimwright.card.LiftOff;
import trimwright.card.TakeOffRow;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.text.TextTable;
import trimwright.text.Texts;
import trimwright.units.Units;

/** The take-off card as a table for a terminal. */
public final class TakeOffTable {
    private TakeOffTable() {}

    /** One line a wind. */
    public static String text(List<TakeOffRow> rows) {
        TextTable table = new TextTable(Texts.of("takeoff.head"));
        for (TakeOffRow row : rows) {
            table.row(List.of(
                    String.format(Locale.ROOT, "%.0f", Units.toKnots(row.wind())),
                    span(row.foiling()),
                    span(row.byHerself())
                            + (row.doubtful().isEmpty() ? "" : Texts.of("takeoff.doubtful", span(row.doubtful()))),
                    lift(row.fromBeat()),
                    lift(row.fromRun()),
                    lift(row.bothBoards()),
                    choice(row.upwind()),
                    choice(row.downwind())));
        }
        return table.text();
    }

    /** The last state in a dying wind, one line. */
    public static String last(double wind, SailingState state) {
        return Texts.of(
                "takeoff.last",
                Units.toKnots(wind),
                Units.toDegrees(state.get(Variable.TRUE_WIND_ANGLE)),
                Units.toKnots(state.get(Variable.BOAT_SPEED)));
    }

    private static String span(List<Double> angles) {
        return angles.isEmpty()
                ? "-"
                : Texts.of(
                        "takeoff.span", Units.toDegrees(angles.get(0)), Units.toDegrees(angles.get(angles.size() - 1)));
    }

    private static String lift(@Nullable LiftOff lift) {
        if (lift == null) {
            return "-";
        }
        SailingState state = lift.state();
        return Texts.of(
                lift.isUp() ? "takeoff.lift" : "takeoff.stays",
                Units.toDegrees(state.get(Variable.TRUE_WIND_ANGLE)),
                Units.toKnots(state.get(Variable.BOAT_SPEED)),
                Units.toDegrees(state.get(Variable.CAMBER)),
                Units.toDegrees(state.get(Variable.TWIST)),
                Units.toDegrees(state.get(Variable.SHEET)));
    }

    private static String choice(TakeOffRow.Choice choice) {
        if (choice.onFoils() == null) {
            return choice.onHulls() == null ? "-" : Texts.of("takeoff.hulls_only");
        }
        return Double.isNaN(choice.gain())
                ? Texts.of("takeoff.foils_only")
                : Texts.of("takeoff.gain", Units.toKnots(choice.gain()));
    }
}
