package trimwright.prepare;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import trimwright.boat.WingSpec;
import trimwright.boat.WingStation;
import trimwright.boatfile.BoatFile;
import trimwright.section.SectionPoint;
import trimwright.text.JsonOut;
import trimwright.units.Units;
import trimwright.wing.Wing;

/** {@code section/1}: one section of a wing at one angle of attack. */
public final class SectionDocument {
    private SectionDocument() {}

    /**
     * The document, with the caveat {@code past_stall} where the answer is beyond stall.
     *
     * @param sections of that wing
     * @param stationRatio height above the foot over the span, 0 to 1
     * @param alpha angle of attack of the main element (rad)
     * @param flapAngle (rad)
     * @param reynolds on the total chord
     */
    public static ObjectNode of(
            BoatFile boat,
            WingSpec wing,
            Sections sections,
            double stationRatio,
            double alpha,
            double flapAngle,
            double reynolds) {
        double height = stationRatio * wing.span();
        WingStation station = Wing.stationAt(wing, height);
        SectionPoint point = new SectionPoint();
        sections.family().sectionOf(Wing.shapeAt(wing, height)).evaluate(alpha, flapAngle, reynolds, point);
        ObjectNode document = JsonOut.document("section/1", boat.hash())
                .put("boat", boat.boat().name())
                .put("wing", wing.id())
                .put("section", sections.source().key())
                .put("station_ratio", stationRatio)
                .put("height_above_foot_m", height)
                .put("chord_m", station.chord())
                .put("thickness_ratio", station.thicknessRatio())
                .put("alpha_deg", Units.toDegrees(alpha))
                .put("flap_angle_deg", Units.toDegrees(flapAngle))
                .put("reynolds", Math.round(reynolds))
                .put("lift_coefficient", point.cl)
                .put("drag_coefficient", point.cd)
                .put("moment_coefficient", point.cm)
                .put("hinge_moment_coefficient", point.hinge)
                .put("lift_over_drag_ratio", point.cl / point.cd)
                .put("stall_margin_deg", Units.toDegrees(point.stallMargin));
        ArrayNode caveats = document.putArray("caveats");
        if (point.stallMargin < 0) {
            caveats.add("past_stall");
        }
        return document;
    }
}
