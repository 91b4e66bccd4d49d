package trimwright.cards;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import trimwright.card.GustAct;
import trimwright.card.GustRow;
import trimwright.card.GustSwing;
import trimwright.target.Target;
import trimwright.target.TargetMode;
import trimwright.target.TargetPoint;
import trimwright.text.TextTable;
import trimwright.text.Texts;
import trimwright.units.Units;

/** The gust card as tables for a terminal. */
public final class GustTable {
    private GustTable() {}

    /** What the target is, one line. */
    public static String title(TargetPoint point) {
        Target target = point.getTarget();
        return Texts.of(
                "gust.point",
                Units.toKnots(point.trueWindSpeed()),
                point.mode() == TargetMode.ANGLE
                        ? Texts.of("gust.at_angle", Units.toDegrees(point.trueWindAngle()))
                        : Texts.of("targets.mode." + point.mode().key()),
                Units.toKnots(target.boatSpeed()),
                Units.toDegrees(target.trim().camber()),
                Units.toDegrees(target.trim().twist()),
                Units.toDegrees(target.trim().sheet()),
                Units.toDegrees(target.attitude().heel()));
    }

    /** One line a gust. */
    public static String text(GustRequest request, List<GustRun.Gust> gusts) {
        TextTable table = new TextTable(Texts.of("gust.head"));
        for (GustRun.Gust gust : gusts) {
            GustRow row = gust.row();
            table.row(List.of(
                    String.format(Locale.ROOT, "%+.0f", Units.toKnots(row.change())),
                    String.format(Locale.ROOT, "%+.0f", row.jump() / 1000),
                    String.format(Locale.ROOT, "%+.0f", 100 * row.jump() / row.before()),
                    decimal(row.sheetLoadAtOnce() / 1000, 1)
                            + (row.sheetLoadAtOnce() > request.wing().sheet().loadMax() ? Texts.of("gust.over") : ""),
                    first(row.first()),
                    act(row, row.acts().get(0)),
                    act(row, row.acts().get(1)),
                    act(row, row.acts().get(2)),
                    swing(gust.swing()),
                    steady(gust.steady())));
        }
        return table.text();
    }

    private static String first(GustAct act) {
        String how = act.change() == 0
                ? Texts.of("gust.nothing")
                : Texts.of("gust." + act.control().name().toLowerCase(Locale.ROOT)
                        + (act.change() > 0 ? ".more" : ".less"));
        return act.isInTime() ? how : how + Texts.of("gust.not_in_time");
    }

    private static String act(GustRow row, GustAct act) {
        double kept = 100 * act.drive() / row.driveBefore();
        return act.isEnough()
                ? Texts.of("gust.act", Units.toDegrees(act.change()), act.seconds(), kept)
                : Texts.of(
                        "gust.act_short",
                        Units.toDegrees(act.change()),
                        100 * (row.atOnce() - act.heelingMoment()) / row.jump());
    }

    private static String swing(@Nullable GustSwing swing) {
        if (swing == null) {
            return "-";
        }
        return Double.isInfinite(swing.secondsToLimit())
                ? Texts.of("gust.swing", Units.toDegrees(swing.heelAfterSecond()))
                : Texts.of("gust.swing_limit", Units.toDegrees(swing.heelAfterSecond()), swing.secondsToLimit());
    }

    private static String steady(@Nullable TargetPoint point) {
        if (point == null) {
            return Texts.of("gust.no_steady");
        }
        Target target = point.getTarget();
        return Texts.of(
                "gust.steady",
                Units.toKnots(target.boatSpeed()),
                Units.toDegrees(point.trueWindAngle()),
                Units.toDegrees(target.trim().camber()),
                Units.toDegrees(target.trim().twist()),
                Units.toDegrees(target.trim().sheet()));
    }

    private static String decimal(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
