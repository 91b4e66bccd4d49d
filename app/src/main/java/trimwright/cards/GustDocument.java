package trimwright.cards;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import trimwright.air.GustShape;
import trimwright.card.GustAct;
import trimwright.card.GustRow;
import trimwright.card.GustSwing;
import trimwright.target.Target;
import trimwright.target.TargetCaveat;
import trimwright.target.TargetLimit;
import trimwright.target.TargetPoint;
import trimwright.text.JsonOut;
import trimwright.text.Texts;
import trimwright.units.Units;

/** {@code gust/1}: what the gust card says. */
public final class GustDocument {
    private GustDocument() {}

    /** The document of a request's gusts. */
    public static ObjectNode of(GustRequest request, List<GustRun.PointGusts> points) {
        ObjectNode document = JsonOut.document("gust/1", request.file().hash())
                .put("boat", request.file().boat().name())
                .put("wing", request.wing().id())
                .put("foils", request.file().boat().foils().id())
                .put("crew_mass_kg", request.file().boat().crew().mass());
        ArrayNode list = document.putArray("points");
        for (GustRun.PointGusts point : points) {
            write(request, point, list.addObject());
        }
        document.put("caution", Texts.of("gust.caution"));
        return document;
    }

    private static void write(GustRequest request, GustRun.PointGusts gusts, ObjectNode node) {
        writeTarget(gusts.point(), node);
        ArrayNode list = node.putArray("gusts");
        for (GustRun.Gust gust : gusts.gusts()) {
            write(request, gusts.point().getTarget(), gust, list.addObject());
        }
    }

    private static void writeTarget(TargetPoint point, ObjectNode node) {
        Target target = point.getTarget();
        node.put("mode", point.mode().key())
                .put("tws_kn", Units.toKnots(point.trueWindSpeed()))
                .put("twa_deg", Units.toDegrees(point.trueWindAngle()))
                .put("foiling", point.isFoiling())
                .put("boat_speed_kn", Units.toKnots(target.boatSpeed()))
                .put("awa_deg", Units.toDegrees(target.apparentWindAngle()))
                .put("aws_kn", Units.toKnots(target.apparentWindSpeed()))
                .put("camber_deg", Units.toDegrees(target.trim().camber()))
                .put("twist_deg", Units.toDegrees(target.trim().twist()))
                .put("sheet_deg", Units.toDegrees(target.trim().sheet()))
                .put("heel_deg", Units.toDegrees(target.attitude().heel()))
                .put("righting_moment_nm", target.loads().rightingMoment())
                .put("sheet_load_n", target.loads().sheetLoad());
        ArrayNode limits = node.putArray("limits");
        for (TargetLimit limit : target.limits()) {
            limits.add(limit.key());
        }
        ArrayNode caveats = node.putArray("caveats");
        for (TargetCaveat caveat : target.caveats()) {
            caveats.add(caveat.name().toLowerCase(Locale.ROOT));
        }
    }

    private static void write(GustRequest request, Target target, GustRun.Gust gust, ObjectNode node) {
        GustRow row = gust.row();
        node.put("change_kn", Units.toKnots(row.change()))
                .put("shift_deg", Units.toDegrees(row.shift()))
                .put("heeling_moment_before_nm", row.before())
                .put("heeling_moment_at_once_nm", row.atOnce())
                .put("jump_nm", row.jump())
                .put("jump_ratio", row.jump() / row.before())
                .put("drive_force_before_n", row.driveBefore())
                .put("drive_force_at_once_n", row.driveAtOnce())
                .put("sheet_load_at_once_n", row.sheetLoadAtOnce())
                .put(
                        "sheet_load_over_max",
                        row.sheetLoadAtOnce() > request.wing().sheet().loadMax())
                .put("stall_margin_at_once_deg", Units.toDegrees(row.stallMarginAtOnce()))
                .put("stalled", row.isStalled())
                .put("first", row.first().control().name().toLowerCase(Locale.ROOT))
                .put("first_in_time", row.first().isInTime());
        ArrayNode acts = node.putArray("acts");
        for (GustAct act : row.acts()) {
            ObjectNode one = acts.addObject();
            write(row, act, one);
            String marks = MarkedAct.change(request, target, row, act);
            if (marks != null) {
                one.put("change_marks", marks);
            }
        }
        writeSwings(gust, node);
        TargetPoint steady = gust.steady();
        if (steady != null) {
            writeTarget(steady, node.putObject("steady"));
        }
    }

    private static void write(GustRow row, GustAct act, ObjectNode node) {
        node.put("control", act.control().name().toLowerCase(Locale.ROOT))
                .put("change_deg", Units.toDegrees(act.change()))
                .put("enough", act.isEnough())
                .put("needs_s", act.seconds())
                .put("in_time", act.isInTime())
                .put("heeling_moment_nm", act.heelingMoment())
                .put("drive_force_n", act.drive())
                .put("drive_ratio", act.drive() / row.driveBefore())
                .put("drive_lost_n_per_knm", 1000 * row.price(act))
                .put("stall_margin_deg", Units.toDegrees(act.stallMargin()))
                .put("heeling_moment_after_one_second_nm", act.inOneSecond());
    }

    private static void writeSwings(GustRun.Gust gust, ObjectNode node) {
        ArrayNode swings = node.putArray("in_time");
        for (GustRun.Swing swing : gust.swings()) {
            ObjectNode own = swings.addObject()
                    .put("shape", swing.nobody().shape().name().toLowerCase(Locale.ROOT))
                    .put("length_s", swing.nobody().length());
            write(swing.nobody(), own.putObject("nobody_moves"));
            write(swing.firstAct(), own.putObject("first_act"));
            if (swing.nobody().shape() == GustShape.AT_ONCE) {
                write(swing.nobody(), node.putObject("nobody_moves"));
            }
        }
    }

    private static void write(GustSwing swing, ObjectNode node) {
        node.put("heel_after_one_second_deg", Units.toDegrees(swing.heelAfterOne()))
                .put("heel_after_two_seconds_deg", Units.toDegrees(swing.heelAfterTwo()))
                .put("heel_after_four_seconds_deg", Units.toDegrees(swing.heelAfterFour()))
                .put("heel_least_deg", Units.toDegrees(swing.leastHeel()))
                .put("heel_most_deg", Units.toDegrees(swing.mostHeel()))
                .put("past_heel_limit_after_s", swing.secondsToLimit())
                .put("boat_speed_gained_kn", Units.toKnots(swing.speedGained()))
                .put("heeling_moment_peak_ratio", swing.mostMoment())
                .put("stall_margin_least_deg", Units.toDegrees(swing.leastStallMargin()));
    }
}
