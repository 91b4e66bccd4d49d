package trimwright.boatfile;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.boat.Antenna;
import trimwright.boat.Boat;
import trimwright.boat.Crew;
import trimwright.boat.FlapPanels;
import trimwright.boat.FoilSpec;
import trimwright.boat.FootPlate;
import trimwright.boat.Handling;
import trimwright.boat.Hulls;
import trimwright.boat.Limits;
import trimwright.boat.MainFoil;
import trimwright.boat.Mass;
import trimwright.boat.Rudder;
import trimwright.boat.SheetTackle;
import trimwright.boat.TrimRange;
import trimwright.boat.WindSensor;
import trimwright.boat.Windage;
import trimwright.boat.WingSpec;
import trimwright.boat.WingStation;
import trimwright.keyfile.Values;

/** From the checked values of a file to the boat. */
final class BoatLoader {
    private BoatLoader() {}

    static Boat load(Values file) {
        return new Boat(
                file.getText("name"),
                file.getText("title"),
                hulls(file),
                new Mass(
                        file.number("platform.mass_kg"), file.number("platform.x_m"), file.number("platform.height_m")),
                crew(file),
                file.list("wing").stream().map(BoatLoader::wing).toList(),
                standardFoils(file),
                foilSets(file),
                windage(file),
                limits(file),
                new WindSensor(
                        file.number("sensor.wind.height_m"),
                        file.number("sensor.wind.x_m"),
                        file.isSet("sensor.wind.turns_with_wing")),
                new Antenna(file.number("antenna.aft_of_bow_m"), file.number("antenna.starboard_m")),
                handling(file));
    }

    private static @Nullable Handling handling(Values file) {
        Double ease = file.findNumber("handling.sheet_ease_deg_per_s");
        List<Handling.OilUser> users = file.list("handling.oil").stream()
                .map(row -> new Handling.OilUser(row.getText("name"), row.number("straight_w"), row.number("turn_j")))
                .toList();
        Handling.Grinders grinders = new Handling.Grinders(
                file.count("handling.grinders"),
                file.number("handling.critical_power_w"),
                file.number("handling.work_above_critical_j"),
                file.number("handling.peak_power_w"));
        Handling.SheetWork work = new Handling.SheetWork(
                file.number("handling.sheet_straight_deg_per_min"), file.number("handling.sheet_turn_deg"));
        double haul = file.number("handling.sheet_haul_m_per_s");
        double camber = file.number("handling.camber_deg_per_s");
        double twist = file.number("handling.twist_deg_per_s");
        double efficiency = file.number("handling.oil_efficiency_ratio");
        return ease == null
                ? null
                : new Handling(
                        new Handling.ControlRates(ease, haul, camber, twist),
                        grinders,
                        work,
                        efficiency,
                        users,
                        file.findText("handling.source"));
    }

    private static Hulls hulls(Values file) {
        return new Hulls(
                file.number("hulls.length_overall_m"),
                file.number("hulls.waterline_length_m"),
                file.number("hulls.beam_m"),
                file.number("hulls.draft_m"),
                file.number("hulls.spacing_m"),
                file.number("hulls.block_coefficient_ratio"));
    }

    private static Crew crew(Values file) {
        return new Crew(
                file.count("crew.count"),
                file.number("crew.mass_each_kg"),
                file.number("crew.x_m"),
                file.number("crew.y_max_m"),
                file.number("crew.height_m"));
    }

    private static WingSpec wing(Values wing) {
        List<WingStation> stations = wing.list("station").stream()
                .map(row ->
                        new WingStation(row.number("height_m"), row.number("chord_m"), row.number("thickness_ratio")))
                .toList();
        TrimRange trim = new TrimRange(
                wing.number("trim.camber_max_deg"),
                wing.number("trim.twist_max_deg"),
                wing.number("trim.head_flap_min_deg"),
                wing.number("trim.sheet_max_deg"),
                wing.number("trim.stall_margin_min_deg"));
        SheetTackle sheet = new SheetTackle(
                wing.number("sheet.lever_m"),
                wing.number("sheet.purchase_ratio"),
                wing.number("sheet.efficiency_ratio"),
                wing.number("sheet.load_max_n"));
        return new WingSpec(
                wing.getText("id"),
                stations,
                wing.number("foot_height_m"),
                wing.number("x_m"),
                wing.number("flap_chord_ratio"),
                wing.number("turning_axis_ratio"),
                flapPanels(wing),
                footPlate(wing),
                wing.number("slot_gap_ratio"),
                wing.number("mass_kg"),
                wing.number("mass_height_m"),
                trim,
                sheet);
    }

    private static FlapPanels flapPanels(Values wing) {
        List<Double> joints = wing.list("flap_joint").stream()
                .map(row -> row.number("height_m"))
                .toList();
        return new FlapPanels(
                joints, wing.isSet("flap_panels_stiff") ? FlapPanels.Make.STIFF : FlapPanels.Make.TWISTING);
    }

    private static @Nullable FootPlate footPlate(Values wing) {
        Double width = wing.findNumber("foot_plate.width_m");
        return width == null
                ? null
                : new FootPlate(width, wing.number("foot_plate.gap_m"), wing.number("foot_plate.solid_ratio"));
    }

    /** Where a set's numbers come from. */
    private interface Numbers {
        double of(String path);
    }

    private static FoilSpec standardFoils(Values file) {
        return new FoilSpec(FoilSpec.STANDARD, mainFoil(file::number), rudder(file::number));
    }

    /** The standard set, then the others: what these do not say is as there. */
    private static List<FoilSpec> foilSets(Values file) {
        List<FoilSpec> sets = new ArrayList<>(List.of(standardFoils(file)));
        for (Values row : file.list("foil_set")) {
            Numbers numbers = path -> numberOf(row, file, path);
            Numbers elevators =
                    path -> path.startsWith("rudder.elevator") ? numberOf(row, file, path) : file.number(path);
            sets.add(new FoilSpec(row.getText("id"), mainFoil(numbers), rudder(elevators)));
        }
        return sets;
    }

    private static double numberOf(Values set, Values file, String path) {
        Double own = set.findNumber(path);
        return own == null ? file.number(path) : own;
    }

    private static MainFoil mainFoil(Numbers file) {
        return new MainFoil(
                file.of("main_foil.shaft_length_m"),
                file.of("main_foil.shaft_chord_m"),
                file.of("main_foil.shaft_thickness_ratio"),
                file.of("main_foil.tip_span_m"),
                file.of("main_foil.tip_chord_m"),
                file.of("main_foil.tip_thickness_ratio"),
                file.of("main_foil.tip_design_lift_ratio"),
                file.of("main_foil.tip_dihedral_deg"),
                file.of("main_foil.y_junction_m"),
                file.of("main_foil.y_lift_m"),
                file.of("main_foil.rake_min_deg"),
                file.of("main_foil.rake_max_deg"),
                file.of("main_foil.immersion_min_m"));
    }

    private static Rudder rudder(Numbers file) {
        return new Rudder(
                file.of("rudder.x_m"),
                file.of("rudder.shaft_length_m"),
                file.of("rudder.shaft_chord_m"),
                file.of("rudder.shaft_thickness_ratio"),
                file.of("rudder.elevator_span_m"),
                file.of("rudder.elevator_chord_m"),
                file.of("rudder.elevator_thickness_ratio"),
                file.of("rudder.elevator_angle_max_deg"),
                file.of("rudder.rudder_angle_max_deg"));
    }

    private static Windage windage(Values file) {
        return new Windage(
                file.number("windage.area_ahead_m2"),
                file.number("windage.area_abeam_m2"),
                file.number("windage.height_m"),
                file.number("windage.x_m"));
    }

    private static Limits limits(Values file) {
        return new Limits(
                file.number("limits.elevator_down_force_n"),
                file.number("limits.heel_max_deg"),
                file.number("limits.heel_min_deg"),
                file.number("limits.ride_height_min_m"),
                file.number("limits.ride_height_max_m"),
                file.number("limits.pitch_min_deg"),
                file.number("limits.pitch_max_deg"),
                file.findNumber("limits.boat_speed_max_kn"),
                file.findNumber("limits.gust_chance_max_ratio"),
                file.findNumber("limits.gust_chance_per_minute_ratio"),
                file.findNumber("limits.turn_chance_max_ratio"));
    }
}
