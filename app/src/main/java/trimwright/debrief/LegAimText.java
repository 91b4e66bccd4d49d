package trimwright.debrief;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import trimwright.aim.Aim;
import trimwright.aim.AimLevels;
import trimwright.platform.Variable;
import trimwright.target.Loads;
import trimwright.text.TextTable;
import trimwright.text.Texts;
import trimwright.units.Units;

/** The aims of a boat's legs beside the targets, for people and files. */
final class LegAimText {
    private LegAimText() {}

    /** One line a leg. */
    static TextTable table(List<LegAim> aims) {
        TextTable table = new TextTable(Texts.of("debrief.aims.head"));
        for (LegAim one : aims) {
            Aim aim = one.aim();
            Loads loads = aim.point().getTarget().loads();
            AimLevels levels = aim.levels();
            table.row(List.of(
                    Integer.toString(one.leg() + 1),
                    decimal(100 * one.turbulence(), 1),
                    pair(loads.rightingMoment() / 1000, levels.momentAim() / 1000, 0),
                    pair(loads.sheetLoad() / 1000, levels.loadAim() / 1000, 1),
                    pair(aim, Variable.CAMBER),
                    pair(aim, Variable.TWIST),
                    pair(aim, Variable.SHEET),
                    decimal(Units.toKnots(aim.lost()), 1),
                    decimal(one.seconds(), 1)));
        }
        return table;
    }

    /** Adds it to its leg of {@code debrief/1}. */
    static void write(LegAim one, ObjectNode leg) {
        Aim aim = one.aim();
        leg.putObject("aim")
                .put("turbulence_ratio", one.turbulence())
                .put(
                        "target_righting_moment_nm",
                        aim.point().getTarget().loads().rightingMoment())
                .put("righting_moment_nm", aim.levels().momentAim())
                .put("target_sheet_load_n", aim.point().getTarget().loads().sheetLoad())
                .put("sheet_load_n", aim.levels().loadAim())
                .put("boat_speed_kn", Units.toKnots(aim.boatSpeed()))
                .put("camber_deg", degrees(aim, Variable.CAMBER))
                .put("twist_deg", degrees(aim, Variable.TWIST))
                .put("sheet_deg", degrees(aim, Variable.SHEET))
                .put("heel_deg", degrees(aim, Variable.HEEL))
                .put("ride_height_m", aim.state().get(Variable.RIDE_HEIGHT))
                .put("lost_kn", Units.toKnots(aim.lost()))
                .put("lost_s", one.seconds());
    }

    private static String pair(Aim aim, Variable variable) {
        return pair(Units.toDegrees(aim.point().state().get(variable)), degrees(aim, variable), 0);
    }

    private static String pair(double target, double aim, int decimals) {
        return Texts.of("debrief.aims.pair", decimal(target, decimals), decimal(aim, decimals));
    }

    private static double degrees(Aim aim, Variable variable) {
        return Units.toDegrees(aim.state().get(variable));
    }

    private static String decimal(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
