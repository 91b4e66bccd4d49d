package trimwright.prepare;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import trimwright.air.ApparentWind;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.platform.Variable;
import trimwright.text.JsonOut;
import trimwright.text.NoAnswerException;
import trimwright.units.Units;
import trimwright.wing.StripAir;
import trimwright.wing.Wing;
import trimwright.wing.WingForce;
import trimwright.wing.WingSolved;

/**
 * {@code wing/1}: force, loads and stall of a wing as it is set, in standard air, the flow strip by strip, and what a
 * little more of each control changes.
 */
public final class WingDocument {
    /** Strips from foot to head. */
    public static final int STRIPS = SolvedWing.STRIPS;

    /** Rate of sheeting (deg/s) that the grinders' power is told for. */
    private static final double SHEETING_RATE_DEG = 1;

    private static final WingInput[] LIES = {
        WingInput.CAMBER,
        WingInput.TWIST,
        WingInput.TWIST_MID_RATIO,
        WingInput.SHEET,
        WingInput.HEEL,
        WingInput.RIDE_HEIGHT,
        WingInput.PITCH
    };

    private WingDocument() {}

    /** With sections in closed form; throws {@link NoAnswerException} where the flow cannot be found. */
    public static ObjectNode of(BoatFile boat, WingSpec spec, WingState state) {
        return of(boat, SolvedWing.of(spec, Sections.closedForm(spec), state));
    }

    /** With sections as given; throws {@link NoAnswerException} where the flow cannot be found. */
    public static ObjectNode of(BoatFile boat, WingSpec spec, Sections sections, WingState state) {
        return of(boat, SolvedWing.of(spec, sections, state));
    }

    /** In closed form, with the computed flow about the sections at some strips: key {@code pressures}. */
    public static ObjectNode withPressures(BoatFile boat, WingSpec spec, WingState state, int... strips) {
        return withPressures(boat, spec, Sections.closedForm(spec), state, strips);
    }

    /** The same with sections as given. */
    public static ObjectNode withPressures(
            BoatFile boat, WingSpec spec, Sections sections, WingState state, int... strips) {
        SolvedWing solved = SolvedWing.of(spec, sections, state);
        ObjectNode document = of(boat, solved);
        document.set("pressures", WingPressures.of(solved, strips));
        return document;
    }

    private static ObjectNode of(BoatFile boat, SolvedWing wing) {
        WingSpec spec = wing.spec();
        WingState state = wing.state();
        WingSolved solved = wing.flow();
        ObjectNode document = JsonOut.document("wing/1", boat.hash())
                .put("boat", boat.boat().name())
                .put("wing", spec.id())
                .put("section", wing.source().key());
        putState(document, state);
        putLoads(document, spec, wing.wing(), state, solved);
        ArrayNode caveats = document.putArray("caveats");
        SectionDoubts.of(wing).forEach(caveats::add);
        putStrips(document, wing.wing(), wing.air(), solved, state.tack());
        WingChanges.put(document, spec, state, solved, solved.sensitivity());
        return document;
    }

    private static void putState(ObjectNode document, WingState state) {
        document.put("wind", state.given().name().toLowerCase(Locale.ROOT));
        if (state.given() == WingState.GivenWind.TRUE) {
            document.put("tws_kn", Units.toKnots(state.conditions().wind().referenceSpeed()))
                    .put(
                            "twa_deg",
                            state.tack() * Units.toDegrees(state.sailing().get(Variable.TRUE_WIND_ANGLE)))
                    .put("boat_speed_kn", state.typed(WingInput.BOAT_SPEED))
                    .put("leeway_deg", state.typed(WingInput.LEEWAY));
        }
        ApparentWind felt = state.apparentWind();
        document.put("aws_kn", Units.toKnots(felt.speed())).put("awa_deg", Units.toDegrees(felt.angle()));
        for (WingInput input : LIES) {
            document.put(input.key(), state.typed(input));
        }
    }

    private static void putLoads(ObjectNode document, WingSpec spec, Wing wing, WingState state, WingSolved solved) {
        WingForce force = solved.force();
        int tack = state.tack();
        double leeward = -tack * force.y();
        double angle = tack * state.apparentWind().angle();
        double opening = tack * force.turningMoment();
        double sheetLoad = sheetLoad(spec, opening);
        document.put("drive_force_n", force.x())
                .put("side_force_n", leeward)
                .put("lift_n", force.x() * StrictMath.sin(angle) + leeward * StrictMath.cos(angle))
                .put("drag_n", leeward * StrictMath.sin(angle) - force.x() * StrictMath.cos(angle))
                .put("heeling_moment_nm", -tack * force.k())
                .put("pitching_moment_nm", force.m())
                .put("turning_moment_nm", opening)
                .put("sheet_load_n", sheetLoad)
                .put("sheet_slack", opening <= 0)
                .put("sheet_load_max_n", spec.sheet().loadMax())
                .put("sheet_tail_load_n", sheetLoad / spec.sheet().purchase())
                .put("grinding_power_w", grindingPower(spec, opening))
                .put("induced_drag_n", solved.inducedDrag())
                .put("profile_drag_n", solved.profileDrag())
                .put("effort_height_above_foot_m", force.effortHeight())
                .put("stall_margin_deg", Units.toDegrees(solved.stallMargin()));
        ArrayNode hinges = document.putArray("flap_panels");
        for (int panel = 0; panel < wing.flapPanels(); panel++) {
            hinges.addObject()
                    .put("from_m", joint(spec, panel))
                    .put("to_m", joint(spec, panel + 1))
                    .put("hinge_moment_nm", tack * solved.panelHingeMoment(panel));
        }
        ArrayNode limits = document.putArray("limits");
        if (sheetLoad > spec.sheet().loadMax()) {
            limits.add("sheet_load");
        }
        if (solved.stallMargin() < spec.trim().stallMarginMin()) {
            limits.add("stall_margin");
        }
        double head = state.sailing().get(Variable.CAMBER) - state.sailing().get(Variable.TWIST);
        if (head < spec.trim().headFlapMin()) {
            limits.add("twist_max");
        }
    }

    /** Load of the sheet (N) for a moment that opens the wing (N m): a rope cannot push. */
    static double sheetLoad(WingSpec spec, double opening) {
        return Math.max(0, opening / spec.sheet().lever());
    }

    /** Power of the grinders (W) to sheet in at {@link #SHEETING_RATE_DEG} against a moment that opens the wing (N m). */
    private static double grindingPower(WingSpec spec, double opening) {
        return Math.max(0, opening)
                * Units.fromDegrees(SHEETING_RATE_DEG)
                / spec.sheet().efficiency();
    }

    /** Height above the foot (m) at which a panel of the flap begins. */
    private static double joint(WingSpec spec, int panel) {
        List<Double> joints = spec.flapPanels().joints();
        return panel == 0 ? 0 : panel <= joints.size() ? joints.get(panel - 1) : spec.span();
    }

    private static void putStrips(ObjectNode document, Wing wing, StripAir air, WingSolved solved, int tack) {
        document.put("stall_height_above_foot_m", wing.stripHeight(solved.stallStrip()));
        double density = air.state().density();
        ArrayNode strips = document.putArray("strips");
        for (int i = 0; i < wing.strips(); i++) {
            double speed = StrictMath.hypot(solved.airX(i), solved.airY(i));
            // Lift across the air that the strip meets, drag along it; both for a metre of span.
            double lift = density * solved.circulation(i);
            double drag = 0.5 * density * speed * wing.stripChord(i) * solved.cd(i);
            strips.addObject()
                    .put("height_above_foot_m", wing.stripHeight(i))
                    .put("width_m", wing.stripWidth(i))
                    .put("chord_m", wing.stripChord(i))
                    .put("aws_kn", Units.toKnots(StrictMath.hypot(air.x(i), air.y(i))))
                    .put("awa_deg", Units.toDegrees(StrictMath.atan2(-air.y(i), -air.x(i))))
                    .put("alpha_deg", tack * Units.toDegrees(solved.alpha(i)))
                    .put("flap_angle_deg", tack * Units.toDegrees(solved.flapAngle(i)))
                    .put("lift_coefficient", tack * solved.cl(i))
                    .put("drag_coefficient", solved.cd(i))
                    .put("circulation_m2_per_second", tack * solved.circulation(i))
                    .put("drive_n_per_m", drag * solved.airX(i) - lift * solved.airY(i))
                    .put("side_n_per_m", -tack * (lift * solved.airX(i) + drag * solved.airY(i)))
                    .put("stall_margin_deg", Units.toDegrees(solved.stallMargin(i)));
        }
    }
}
