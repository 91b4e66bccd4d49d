package trimwright.boatfile;

import static trimwright.keyfile.Key.count;
import static trimwright.keyfile.Key.flag;
import static trimwright.keyfile.Key.number;
import static trimwright.keyfile.Key.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import trimwright.keyfile.Key;
import trimwright.keyfile.KeyTable;

/**
 * Every key of a boat file. Ranges are chosen wide: they catch a wrong unit or a slipped point, not an unusual boat.
 * Places: x forward of the main foils' lift centre, heights above the bottom of the hulls, y from the centreline.
 */
final class BoatKeys {
    static final KeyTable TABLE = new KeyTable(
            "boat/1",
            withFoilSets(
                    text("name", "short lower-case name, letters and digits"),
                    text("title", "the name that people read"),
                    number("hulls.length_overall_m", 4, 40, "length over all"),
                    number("hulls.waterline_length_m", 4, 40, "length on the waterline"),
                    number("hulls.beam_m", 0.1, 3, "waterline beam of one hull"),
                    number("hulls.draft_m", 0.05, 2, "draft of one hull when both carry boat, wing and crew"),
                    number("hulls.spacing_m", 1, 25, "between the hulls' centrelines"),
                    number("hulls.block_coefficient_ratio", 0.2, 0.8, "displaced volume over length, beam and draft"),
                    number("platform.mass_kg", 50, 30000, "the boat without wing and crew"),
                    number("platform.x_m", -15, 15, "its centre; negative is aft of the main foils"),
                    number("platform.height_m", 0, 8, "its centre above the bottom of the hulls"),
                    count("crew.count", 1, 20, "number of people"),
                    number("crew.mass_each_kg", 40, 140, "mass of one, with gear"),
                    number("crew.x_m", -15, 15, "their centre"),
                    number("crew.y_max_m", 0, 12, "furthest place of their centre to windward"),
                    number("crew.height_m", 0, 5, "their centre above the bottom of the hulls"),
                    text("wing[].id", "name of the wing, lower case"),
                    number("wing[].foot_height_m", 0.2, 6, "foot of the wing above the bottom of the hulls"),
                    number("wing[].x_m", -10, 10, "turning axis"),
                    number("wing[].flap_chord_ratio", 0.1, 0.7, "flap's chord over the total chord"),
                    number("wing[].turning_axis_ratio", 0.05, 0.6, "axis behind the leading edge over the total chord"),
                    flag("wing[].flap_panels_stiff", "true: each panel of the flap has one angle; else they twist")
                            .orAbsent(),
                    number("wing[].flap_joint[].height_m", 0, 60, "joint of two panels of the flap above the foot"),
                    number("wing[].foot_plate.width_m", 0.1, 25, "deck, trampoline or fairing under the foot, athwart"),
                    number("wing[].foot_plate.gap_m", 0.02, 6, "foot of the wing above it"),
                    number(
                            "wing[].foot_plate.solid_ratio",
                            0,
                            1,
                            "share of the air that it holds back; 1: closed deck"),
                    number("wing[].slot_gap_ratio", 0, 0.05, "width of the slot over the total chord"),
                    number("wing[].mass_kg", 10, 5000, "mass of the wing"),
                    number("wing[].mass_height_m", 0.5, 30, "its centre above the foot"),
                    number("wing[].station[].height_m", 0, 60, "above the foot; the first 0, then rising"),
                    number("wing[].station[].chord_m", 0.1, 15, "total chord, main element and flap in line"),
                    number(
                            "wing[].station[].thickness_ratio",
                            0.04,
                            0.35,
                            "main element's thickness over its own chord"),
                    number("wing[].trim.camber_max_deg", 1, 60, "largest flap angle at the foot"),
                    number("wing[].trim.twist_max_deg", 0, 70, "largest flap angle of the foot less that of the head"),
                    number(
                            "wing[].trim.head_flap_min_deg",
                            -60,
                            30,
                            "least flap angle at the head; negative: put over"),
                    number("wing[].trim.sheet_max_deg", 5, 120, "largest angle of the whole wing to the centreline"),
                    number(
                            "wing[].trim.stall_margin_min_deg",
                            0,
                            10,
                            "least distance to stall of a target, any height"),
                    number("wing[].sheet.lever_m", 0.1, 10, "arm of the sheet about the turning axis"),
                    number("wing[].sheet.purchase_ratio", 1, 60, "load at the wing over load in the hauling part"),
                    number("wing[].sheet.efficiency_ratio", 0.1, 1, "share of the grinders' power that arrives"),
                    number(
                            "wing[].sheet.load_max_n",
                            100,
                            200000,
                            "largest load at the wing that maker or class allows"),
                    number("main_foil.shaft_length_m", 0.3, 6, "shaft below the bottom of the hull, fully down"),
                    number("main_foil.shaft_chord_m", 0.05, 2, "chord of the shaft"),
                    number("main_foil.shaft_thickness_ratio", 0.05, 0.25, "thickness over chord of the shaft"),
                    number("main_foil.tip_span_m", 0.2, 5, "span of the lifting tip"),
                    number("main_foil.tip_chord_m", 0.05, 2, "mean chord of the tip"),
                    number("main_foil.tip_thickness_ratio", 0.05, 0.25, "thickness over chord of the tip"),
                    number(
                            "main_foil.tip_design_lift_ratio",
                            -0.2,
                            1,
                            "lift coefficient that the tip's camber is made for"),
                    number("main_foil.tip_dihedral_deg", -30, 60, "upward slope of the tip toward inboard"),
                    number("main_foil.y_junction_m", 0.5, 15, "where shaft and tip join"),
                    number("main_foil.y_lift_m", 0.5, 15, "lift centre of the tip"),
                    number("main_foil.rake_min_deg", -20, 20, "least incidence of the tip"),
                    number("main_foil.rake_max_deg", -20, 20, "largest incidence of the tip"),
                    number("main_foil.immersion_min_m", 0, 3, "least depth of the tip that is allowed"),
                    number("rudder.x_m", -25, -0.5, "place of the rudders; negative is aft"),
                    number("rudder.shaft_length_m", 0.3, 6, "shaft below the bottom of the hull"),
                    number("rudder.shaft_chord_m", 0.05, 1.5, "chord of the shaft"),
                    number("rudder.shaft_thickness_ratio", 0.05, 0.25, "thickness over chord of the shaft"),
                    number("rudder.elevator_span_m", 0.1, 4, "span of the elevator"),
                    number("rudder.elevator_chord_m", 0.03, 1, "mean chord of the elevator"),
                    number("rudder.elevator_thickness_ratio", 0.05, 0.25, "thickness over chord of the elevator"),
                    number("rudder.elevator_angle_max_deg", 0.5, 20, "largest incidence of an elevator either way"),
                    number("rudder.rudder_angle_max_deg", 1, 45, "largest rudder angle in straight sailing"),
                    number("windage.area_ahead_m2", 0, 30, "drag coefficient times area, wind from ahead"),
                    number("windage.area_abeam_m2", 0, 60, "drag coefficient times area, wind from abeam"),
                    number("windage.height_m", 0, 10, "its centre above the bottom of the hulls"),
                    number("windage.x_m", -15, 15, "its centre"),
                    number(
                            "limits.elevator_down_force_n",
                            100,
                            100000,
                            "largest downward force of the windward elevator"),
                    number("limits.heel_max_deg", 0, 20, "largest heel to windward"),
                    number("limits.heel_min_deg", -20, 10, "least heel; negative is to leeward"),
                    number("limits.ride_height_min_m", 0, 3, "lowest ride height when foiling"),
                    number("limits.ride_height_max_m", 0.1, 5, "highest ride height"),
                    number("limits.pitch_min_deg", -15, 5, "least pitch; bow up is positive"),
                    number("limits.pitch_max_deg", -5, 15, "largest pitch"),
                    number("limits.boat_speed_max_kn", 5, 100, "speed limit of class or maker")
                            .orAbsent(),
                    number(
                                    "limits.gust_chance_max_ratio",
                                    0,
                                    1,
                                    "largest chance in a race that a gust passes a limit; 0.1 where not given")
                            .orAbsent(),
                    number(
                                    "limits.gust_chance_per_minute_ratio",
                                    1e-6,
                                    0.5,
                                    "chance that in a minute of sailing a gust passes a limit, from which the aims of moment"
                                            + " and sheet load follow; 0.003 where not given")
                            .orAbsent(),
                    number(
                                    "limits.turn_chance_max_ratio",
                                    0,
                                    1,
                                    "largest chance that a turn by the safe plan is spoilt; 0.05 where not given")
                            .orAbsent(),
                    number("sensor.wind.height_m", 1, 60, "wind sensor above the bottom of the hulls"),
                    number("sensor.wind.x_m", -20, 20, "wind sensor"),
                    flag("sensor.wind.turns_with_wing", "whether it stands on the wing and so measures from its chord"),
                    number("antenna.aft_of_bow_m", 0, 40, "position antenna behind the foremost point of the bows"),
                    number("antenna.starboard_m", -15, 15, "position antenna to starboard of the centreline"),
                    number("handling.sheet_ease_deg_per_s", 1, 200, "how fast the wing goes out, the sheet let go"),
                    number("handling.sheet_haul_m_per_s", 0.01, 3, "fastest that the rope comes in at the wing"),
                    number("handling.camber_deg_per_s", 0.1, 100, "how fast the flap goes at the foot"),
                    number("handling.twist_deg_per_s", 0.1, 100, "how fast the flap's head goes against its foot"),
                    number("handling.sheet_straight_deg_per_min", 0, 500, "sheet hauled on a straight, all hauls"),
                    number("handling.sheet_turn_deg", 0, 90, "sheet hauled after a turn, from slack to trimmed"),
                    count("handling.grinders", 1, 20, "people on the handles"),
                    number("handling.critical_power_w", 20, 600, "that one of them keeps up for long"),
                    number("handling.work_above_critical_j", 1000, 60000, "that one can do above it, rested"),
                    number("handling.peak_power_w", 100, 3000, "of one in the first instant, all out"),
                    number("handling.oil_efficiency_ratio", 0.1, 1, "share of their power that arrives at the rams"),
                    text("handling.source", "where these figures come from: a sentence that is shown with them")
                            .orAbsent(),
                    text("handling.oil[].name", "what oil drives, the first served first: rakes, boards, ..."),
                    number("handling.oil[].straight_w", 0, 5000, "mean power at the ram on a straight"),
                    number("handling.oil[].turn_j", 0, 100000, "work at the ram in one turn"),
                    text("mark[].control", "what bears these marks: camber, twist, sheet or rake"),
                    text("mark[].wing", "id of the wing that they belong to; left out: of any")
                            .orAbsent(),
                    text("mark[].unit", "the crew's word for them: steps, per cent, tape marks"),
                    number("mark[].finest_reading", 0.001, 1000, "smallest part of a mark that is told and set"),
                    number("mark[].starboard_tack[].angle_deg", -90, 120, "angle of the control, rising"),
                    number(
                            "mark[].starboard_tack[].reading",
                            -100000,
                            100000,
                            "what is read there, wind from starboard; always rising or always falling"),
                    number("mark[].port_tack[].angle_deg", -90, 120, "angle of the control, rising"),
                    number(
                            "mark[].port_tack[].reading",
                            -100000,
                            100000,
                            "what is read there, wind from port; without port_tack the same as on starboard tack")),
            Set.of(
                    "wing[].flap_joint[]",
                    "wing[].foot_plate",
                    "foil_set[]",
                    "handling",
                    "handling.oil[]",
                    "mark[]",
                    "mark[].port_tack[]"));

    private BoatKeys() {}

    /** The keys with those of other foil sets behind them: of the main foil all, of the rudder the elevator's. */
    private static List<Key> withFoilSets(Key... keys) {
        List<Key> all = new ArrayList<>(List.of(keys));
        all.add(text(
                "foil_set[].id",
                "name of another foil set, lower case; \"standard\" is the one of main_foil and rudder"));
        for (Key key : keys) {
            if (key.table().equals("main_foil") || key.path().startsWith("rudder.elevator")) {
                all.add(number(
                                "foil_set[]." + key.path(),
                                key.min(),
                                key.max(),
                                "the same of that set; as on the standard set where not given")
                        .orAbsent());
            }
        }
        return all;
    }
}
