package trimwright.cards;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import trimwright.air.GustShape;
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

    /**
     * One line a gust.
     *
     * @param point the target that they come upon
     */
    public static String text(GustRequest request, TargetPoint point, List<GustRun.Gust> gusts) {
        TextTable table = new TextTable(Texts.of("gust.head"));
        Target target = point.getTarget();
        for (GustRun.Gust gust : gusts) {
            GustRow row = gust.row();
            table.row(List.of(
                    change(row),
                    shift(row),
                    String.format(Locale.ROOT, "%+.0f", row.jump() / 1000),
                    String.format(Locale.ROOT, "%+.0f", 100 * row.jump() / row.before()),
                    decimal(row.sheetLoadAtOnce() / 1000, 1)
                            + (row.sheetLoadAtOnce() > request.wing().sheet().loadMax() ? Texts.of("gust.over") : ""),
                    decimal(Units.toDegrees(row.stallMarginAtOnce()), 0),
                    first(row),
                    act(request, target, row, row.acts().get(0)),
                    act(request, target, row, row.acts().get(1)),
                    act(request, target, row, row.acts().get(2)),
                    steady(gust.steady())));
        }
        return table.text();
    }

    /** The same gusts in time: nobody moving against the first act. */
    public static String inTime(List<GustRun.Gust> gusts) {
        TextTable table = new TextTable(Texts.of("gust.time_head"));
        for (GustRun.Gust gust : gusts) {
            GustRun.Swing front = gust.find(GustShape.AT_ONCE);
            GustRun.Swing growing = gust.find(GustShape.COHERENT);
            GustRun.Swing passing = gust.find(GustShape.OPERATING);
            if (front != null && growing != null && passing != null) {
                table.row(List.of(
                        change(gust.row()),
                        shift(gust.row()),
                        heels(front.nobody()),
                        decimal(Units.toKnots(front.nobody().speedGained()), 1),
                        heels(front.firstAct()),
                        decimal(growing.nobody().length(), 1),
                        range(growing.nobody()),
                        range(growing.firstAct()),
                        peak(growing.nobody()) + " / " + peak(growing.firstAct()),
                        range(passing.nobody()),
                        range(passing.firstAct())));
            }
        }
        return table.text();
    }

    private static String heels(GustSwing swing) {
        String heels = Texts.of(
                "gust.heels",
                Units.toDegrees(swing.heelAfterOne()),
                Units.toDegrees(swing.heelAfterTwo()),
                Units.toDegrees(swing.heelAfterFour()));
        return Double.isInfinite(swing.secondsToLimit())
                ? heels
                : heels + Texts.of("gust.past_limit", swing.secondsToLimit());
    }

    private static String range(GustSwing swing) {
        return Texts.of("gust.range", Units.toDegrees(swing.leastHeel()), Units.toDegrees(swing.mostHeel()));
    }

    private static String peak(GustSwing swing) {
        return String.format(Locale.ROOT, "%+.0f", 100 * (swing.mostMoment() - 1));
    }

    private static String change(GustRow row) {
        return String.format(Locale.ROOT, "%+.0f", Units.toKnots(row.change()));
    }

    private static String shift(GustRow row) {
        return row.shift() == 0 ? "-" : String.format(Locale.ROOT, "%+.0f", Units.toDegrees(row.shift()));
    }

    private static String first(GustRow row) {
        GustAct act = row.first();
        String how = act.change() == 0
                ? Texts.of("gust.nothing")
                : Texts.of("gust." + act.control().name().toLowerCase(Locale.ROOT)
                        + (act.change() > 0 ? ".more" : ".less"));
        String why = row.isStalled() ? how + Texts.of("gust.stalls") : how;
        return act.isInTime() ? why : why + Texts.of("gust.not_in_time");
    }

    private static String act(GustRequest request, Target target, GustRow row, GustAct act) {
        String marked = MarkedAct.change(request, target, row, act);
        return marked == null ? act(row, act) : marked + ", " + act(row, act);
    }

    private static String act(GustRow row, GustAct act) {
        double kept = 100 * act.drive() / row.driveBefore();
        double share = (row.atOnce() - act.heelingMoment()) / row.jump();
        if (!act.isEnough() && !(share >= 0 && share <= 1)) {
            return Texts.of("gust.act_all", Units.toDegrees(act.change()));
        }
        return act.isEnough()
                ? Texts.of("gust.act", Units.toDegrees(act.change()), act.seconds(), kept)
                : Texts.of("gust.act_short", Units.toDegrees(act.change()), 100 * share);
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
