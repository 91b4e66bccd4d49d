package trimwright.cards;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import trimwright.card.LiftOff;
import trimwright.card.LullChoice;
import trimwright.card.TakeOffPath;
import trimwright.card.TakeOffRow;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.target.TargetPoint;
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

    /** One line a wind and way along it on which she foils or might. */
    public static String inTime(TakeOffRun.TakeOffs takeOffs) {
        TextTable table = new TextTable(Texts.of("takeoff.time_head"));
        for (int i = 0; i < takeOffs.rows().size(); i++) {
            TakeOffRow row = takeOffs.rows().get(i);
            TakeOffRun.Ways ways = takeOffs.ways().get(i);
            add(table, row, row.upwind(), ways.upwind(), "upwind");
            add(table, row, row.downwind(), ways.downwind(), "downwind");
        }
        return table.text();
    }

    private static void add(
            TextTable table, TakeOffRow row, TakeOffRow.Choice choice, TakeOffRun.Way way, String mode) {
        if (choice.onHulls() == null && choice.onFoils() == null) {
            return;
        }
        TakeOffPath path = way.path();
        LullChoice lull = way.lull();
        table.row(List.of(
                String.format(Locale.ROOT, "%.0f", Units.toKnots(row.wind())),
                Texts.of("targets.mode." + mode),
                hulls(choice.onHulls(), way),
                path == null ? "-" : degrees(path.gatherAngle()),
                path == null ? none(row, choice) : up(path),
                path == null ? "-" : String.format(Locale.ROOT, "%.0f", path.seconds()),
                path == null ? "-" : String.format(Locale.ROOT, "%.0f", path.metresSpent()),
                path == null ? "-" : pays(path),
                lull == null ? "-" : lull(lull)));
    }

    private static String hulls(@Nullable TargetPoint point, TakeOffRun.Way way) {
        if (point == null) {
            return "-";
        }
        String sails = Texts.of(
                "takeoff.on_hulls",
                Units.toDegrees(point.trueWindAngle()),
                Units.toKnots(point.getTarget().boatSpeed()),
                Units.toDegrees(point.getTarget().attitude().heel()));
        String placed = Double.isNaN(way.crewPlace()) ? sails : sails + Texts.of("takeoff.crew", way.crewPlace());
        return Double.isNaN(way.bothBoards())
                ? placed
                : placed + Texts.of("takeoff.both_boards", Units.toKnots(way.bothBoards()));
    }

    private static String none(TakeOffRow row, TakeOffRow.Choice choice) {
        if (choice.onFoils() == null) {
            return Texts.of("takeoff.no_foils");
        }
        if (choice.onHulls() == null) {
            return Texts.of("takeoff.always_up");
        }
        return Texts.of(row.byHerself().isEmpty() ? "takeoff.not_by_herself" : "takeoff.not_in_time");
    }

    private static String up(TakeOffPath path) {
        return Texts.of(
                "takeoff.up",
                Units.toKnots(path.up().speed()),
                path.up().seconds(),
                Units.toDegrees(path.up().camber()),
                Units.toDegrees(path.up().twist()),
                Units.toDegrees(path.up().sheet()));
    }

    private static String pays(TakeOffPath path) {
        return Double.isInfinite(path.paysAfter())
                ? Texts.of("takeoff.never_pays")
                : String.format(Locale.ROOT, "%.0f", path.paysAfter());
    }

    private static String lull(LullChoice lull) {
        TargetPoint up = lull.staysUp();
        if (up == null) {
            return Texts.of("takeoff.lull_down", Units.toKnots(lull.wind()));
        }
        String stay = Texts.of("takeoff.lull_stay", Units.toKnots(lull.wind()), Units.toDegrees(up.trueWindAngle()));
        if (Double.isNaN(lull.settleAfter())) {
            return stay + Texts.of("takeoff.lull_unknown");
        }
        return Double.isInfinite(lull.settleAfter())
                ? stay + Texts.of("takeoff.lull_never")
                : stay + Texts.of("takeoff.lull_settle", lull.settleAfter());
    }

    private static String degrees(double radians) {
        return String.format(Locale.ROOT, "%.0f", Units.toDegrees(radians));
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
