package trimwright.drills;

import com.fasterxml.jackson.databind.node.ObjectNode;
import trimwright.boat.WingSpec;
import trimwright.crew.Aim;
import trimwright.crew.Sight;
import trimwright.motion.Controls;
import trimwright.motion.MotionLoads;
import trimwright.practice.DrillMoment;
import trimwright.text.JsonOut;
import trimwright.units.Units;

/**
 * One instant of a drill for a page. Heel, camber, twist and sheet are free of the tack; {@code side} says for which tack
 * the wing is trimmed, {@code tack} on which the boat sails.
 */
public final class DrillFrame {
    private DrillFrame() {}

    /** @param side +1 where the wing is trimmed for wind from starboard, -1 from port */
    public static ObjectNode of(DrillMoment moment, WingSpec wing, int side) {
        Sight sight = moment.sight();
        Aim aim = moment.aim();
        int tack = sight.tack();
        MotionLoads loads = sight.loads();
        Controls controls = sight.state().controls();
        ObjectNode frame = JsonOut.mapper().createObjectNode();
        frame.put("time_s", moment.time());
        frame.put("tack", tack);
        frame.put("side", side);
        frame.put(
                "turn", moment.turn() == null ? "" : moment.turn().kind().name().toLowerCase(java.util.Locale.ROOT));
        frame.put("tws_kn", Units.toKnots(sight.windSpeed()));
        frame.put("twa_deg", Units.toDegrees(sight.trueWindAngle()));
        frame.put("aws_kn", Units.toKnots(sight.felt().speed()));
        frame.put("awa_deg", Units.toDegrees(sight.felt().angle()));
        frame.put("heading_deg", Units.toDegrees(sight.heading()));
        frame.put("boat_speed_kn", Units.toKnots(sight.speed()));
        frame.put("aim_speed_kn", Units.toKnots(aim.speed()));
        frame.put("progress_kn", Units.toKnots(moment.progress()));
        frame.put("best_progress_kn", Units.toKnots(moment.bestProgress()));
        frame.put("lost_s", moment.lost());
        if (!Double.isNaN(moment.toGun())) {
            frame.put("to_gun_s", moment.toGun());
            frame.put("to_line_m", moment.toLine());
        }
        frame.put("heel_deg", Units.toDegrees(tack * sight.state().pose().roll()));
        frame.put("roll_deg", Units.toDegrees(sight.state().pose().roll()));
        frame.put("aim_heel_deg", Units.toDegrees(aim.attitude().heel()));
        frame.put("pitch_deg", Units.toDegrees(sight.state().pose().pitch()));
        frame.put("ride_height_m", sight.rideHeight());
        frame.put("sheet_deg", Units.toDegrees(side * controls.sheet()));
        frame.put("camber_deg", Units.toDegrees(side * controls.camber()));
        frame.put("twist_deg", Units.toDegrees(side * controls.twist()));
        frame.put("twist_mid_ratio", controls.twistMid());
        frame.put(
                "aim_sheet_deg",
                Units.toDegrees(tack * sight.felt().angle() - aim.trim().incidence()));
        frame.put("aim_camber_deg", Units.toDegrees(aim.trim().camber()));
        frame.put("aim_twist_deg", Units.toDegrees(aim.trim().twist()));
        frame.put("port_board_ratio", controls.portBoard());
        frame.put("starboard_board_ratio", controls.starboardBoard());
        frame.put("crew_m", controls.crew());
        frame.put("rudder_deg", Units.toDegrees(controls.rudder()));
        frame.put("stall_margin_deg", Units.toDegrees(loads.stallMargin()));
        frame.put("sheet_load_n", Math.abs(loads.turningMoment()) / wing.sheet().lever());
        frame.put("hull_touched", loads.hullLift() > 0);
        frame.put("slides", moment.slides());
        return frame;
    }
}
