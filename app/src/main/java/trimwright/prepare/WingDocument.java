package trimwright.prepare;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import trimwright.air.AirState;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.text.JsonOut;
import trimwright.text.NoAnswerException;
import trimwright.text.Texts;
import trimwright.units.Units;
import trimwright.wing.PlacedWing;
import trimwright.wing.StripAir;
import trimwright.wing.Wing;
import trimwright.wing.WingAnswer;
import trimwright.wing.WingForce;
import trimwright.wing.WingSetting;
import trimwright.wing.WingSolved;

/** {@code wing/1}: force, loads and stall of a wing as it is set, in standard air, with the flow strip by strip. */
public final class WingDocument {
    private static final int STRIPS = 40;

    private WingDocument() {}

    /** The document; throws {@link NoAnswerException} where the flow cannot be found. */
    public static ObjectNode of(BoatFile boat, WingSpec spec, WingState state) {
        Wing wing = Wing.of(spec, STRIPS);
        int tack = state.tack();
        double roll = tack * state.heel();
        PlacedWing placed = wing.placedAt(roll, spec.footHeight() + state.rideHeight());
        WingSetting setting = new WingSetting(
                tack * state.sheet(), tack * state.camber(), tack * state.twist(), state.twistMidRatio());
        WingAnswer answer = placed.solve(
                StripAir.uniform(STRIPS, state.windSpeed(), state.windAngle(), roll, AirState.STANDARD), setting);
        if (!(answer instanceof WingSolved solved)) {
            throw new NoAnswerException(Texts.of("wing.no_flow"));
        }
        ObjectNode document = JsonOut.document("wing/1", boat.hash())
                .put("boat", boat.boat().name())
                .put("wing", spec.id())
                .put("aws_kn", Units.toKnots(state.windSpeed()))
                .put("awa_deg", Units.toDegrees(state.windAngle()))
                .put("camber_deg", Units.toDegrees(state.camber()))
                .put("twist_deg", Units.toDegrees(state.twist()))
                .put("twist_mid_ratio", state.twistMidRatio())
                .put("sheet_deg", Units.toDegrees(state.sheet()))
                .put("heel_deg", Units.toDegrees(state.heel()))
                .put("ride_height_m", state.rideHeight());
        putLoads(document, spec, solved, tack);
        putStrips(document, wing, solved, tack);
        return document;
    }

    private static void putLoads(ObjectNode document, WingSpec spec, WingSolved solved, int tack) {
        WingForce force = solved.force();
        double opening = tack * force.turningMoment();
        double leeward = -tack * force.y();
        double sheetLoad = Math.max(0, opening / spec.sheet().lever());
        document.put("drive_force_n", force.x())
                .put("side_force_n", leeward)
                .put("heeling_moment_nm", -tack * force.k())
                .put("pitching_moment_nm", force.m())
                .put("turning_moment_nm", opening)
                .put("sheet_load_n", sheetLoad)
                .put("sheet_slack", opening <= 0)
                .put("sheet_load_max_n", spec.sheet().loadMax())
                .put("induced_drag_n", solved.inducedDrag())
                .put("profile_drag_n", solved.profileDrag())
                .put("effort_height_above_foot_m", leeward == 0 ? Double.NaN : force.k() / force.y())
                .put("stall_margin_deg", Units.toDegrees(solved.stallMargin()));
        ArrayNode limits = document.putArray("limits");
        if (sheetLoad > spec.sheet().loadMax()) {
            limits.add("sheet_load");
        }
        if (solved.stallMargin() < spec.trim().stallMarginMin()) {
            limits.add("stall_margin");
        }
    }

    private static void putStrips(ObjectNode document, Wing wing, WingSolved solved, int tack) {
        document.put("stall_height_above_foot_m", wing.stripHeight(solved.stallStrip()));
        ArrayNode strips = document.putArray("strips");
        for (int i = 0; i < wing.strips(); i++) {
            strips.addObject()
                    .put("height_above_foot_m", wing.stripHeight(i))
                    .put("chord_m", wing.stripChord(i))
                    .put("alpha_deg", tack * Units.toDegrees(solved.alpha(i)))
                    .put("flap_angle_deg", tack * Units.toDegrees(solved.flapAngle(i)))
                    .put("lift_coefficient", tack * solved.cl(i))
                    .put("drag_coefficient", solved.cd(i))
                    .put("circulation_m2_per_second", tack * solved.circulation(i))
                    .put("stall_margin_deg", Units.toDegrees(solved.stallMargin(i)));
        }
    }
}
