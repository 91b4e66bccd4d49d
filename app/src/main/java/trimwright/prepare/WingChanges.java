package trimwright.prepare;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import trimwright.boat.WingSpec;
import trimwright.units.Units;
import trimwright.wing.WingControl;
import trimwright.wing.WingForce;
import trimwright.wing.WingSensitivity;
import trimwright.wing.WingSolved;

/**
 * What one step more of each control and of the apparent wind changes, to first order, from the exact derivatives:
 * {@code one_more} of {@code wing/1}. The strip with the least stall margin is held, and so is the air at the strips where
 * heel and ride height change.
 */
final class WingChanges {
    /** Of the share of the twist at half height (-), chosen: as small a change as can be seen. */
    private static final double MID_STEP = 0.05;
    /** Of the ride height (m), chosen: what waves and a flight controller make of it. */
    private static final double HEIGHT_STEP = 0.1;

    private WingChanges() {}

    static void put(
            ObjectNode document, WingSpec spec, WingState state, WingSolved solved, WingSensitivity sensitivity) {
        ArrayNode changes = document.putArray("one_more");
        for (WingControl control : WingControl.values()) {
            WingInput input = inputOf(control);
            double typedStep = typedStepOf(control);
            double step = stepOf(control, input.toSi(typedStep), state);
            if (Double.isFinite(step)) {
                ObjectNode change =
                        changes.addObject().put("control", input.key()).put("by", typedStep);
                put(change, spec, state.tack(), solved.force(), sensitivity.forceBy(control), step);
                change.put("stall_margin_deg", Units.toDegrees(step * sensitivity.stallMarginBy(control)));
            }
        }
    }

    private static void put(ObjectNode to, WingSpec spec, int tack, WingForce force, WingForce by, double step) {
        double opening = tack * force.turningMoment();
        double more = tack * step * by.turningMoment();
        // The rope's load has a corner where it falls slack; on either side of it, the slope there.
        double sheetLoad = opening > 0 ? more / spec.sheet().lever() : WingDocument.sheetLoad(spec, opening + more);
        to.put("drive_force_n", step * by.x())
                .put("side_force_n", -tack * step * by.y())
                .put("heeling_moment_nm", -tack * step * by.k())
                .put("sheet_load_n", sheetLoad);
    }

    private static double typedStepOf(WingControl control) {
        return switch (control) {
            case TWIST_MID_RATIO -> MID_STEP;
            case FOOT_HEIGHT -> HEIGHT_STEP;
            default -> 1;
        };
    }

    private static WingInput inputOf(WingControl control) {
        return switch (control) {
            case SHEET -> WingInput.SHEET;
            case CAMBER -> WingInput.CAMBER;
            case TWIST -> WingInput.TWIST;
            case TWIST_MID_RATIO -> WingInput.TWIST_MID_RATIO;
            case AIR_SPEED -> WingInput.APPARENT_WIND_SPEED;
            case AIR_ANGLE -> WingInput.APPARENT_WIND_ANGLE;
            case HEEL -> WingInput.HEEL;
            case FOOT_HEIGHT -> WingInput.RIDE_HEIGHT;
        };
    }

    /** A step in SI as the derivatives take it: signed by the tack, the wind's as a share of itself. */
    private static double stepOf(WingControl control, double step, WingState state) {
        return switch (control) {
            case SHEET, CAMBER, TWIST, HEEL -> state.tack() * step;
            case TWIST_MID_RATIO, AIR_ANGLE, FOOT_HEIGHT -> step;
            case AIR_SPEED -> step / state.apparentWind().speed();
        };
    }
}
