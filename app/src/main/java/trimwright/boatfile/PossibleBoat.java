package trimwright.boatfile;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import trimwright.boat.FoilSpec;
import trimwright.keyfile.Fault;
import trimwright.keyfile.Values;
import trimwright.text.Texts;

/**
 * What no single number shows: values that cannot stand together. Lengths and masses only, no model. A value that is
 * itself absent or faulty is NaN here and raises no second fault.
 */
final class PossibleBoat {
    /** Density of sea water (kg/m3), rounded: ITTC 7.5-02-01-03 gives 1026 at 15 degrees Celsius. */
    private static final double SEA_WATER = 1026;

    /** Chosen: how far the hulls' displacement at the given draft may differ from the boat's mass (-). */
    private static final double FLOAT_TOLERANCE = 0.25;

    private final Values file;
    private final List<Fault> faults = new ArrayList<>();

    private PossibleBoat(Values file) {
        this.file = file;
    }

    static List<Fault> check(Values file) {
        PossibleBoat check = new PossibleBoat(file);
        check.names();
        check.hulls();
        check.places();
        check.foils();
        check.limits();
        check.file.list("wing").forEach(check::wing);
        check.faults.addAll(MarkLoader.check(file));
        return check.faults;
    }

    private void names() {
        String name = file.findText("name");
        if (name != null && !name.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
            faults.add(file.fault("name", Texts.of("boatfile.name", name)));
        }
        Set<String> ids = new HashSet<>();
        for (Values wing : file.list("wing")) {
            String id = wing.findText("id");
            if (id != null && !ids.add(id)) {
                faults.add(wing.fault("id", Texts.of("boatfile.wing_twice", id)));
            }
        }
        Set<String> sets = new HashSet<>(Set.of(FoilSpec.STANDARD));
        for (Values set : file.list("foil_set")) {
            String id = set.findText("id");
            if (id != null && !sets.add(id)) {
                faults.add(set.fault("id", Texts.of("boatfile.foils_twice", id, FoilSpec.STANDARD)));
            }
        }
        if (file.list("wing").isEmpty()) {
            faults.add(new Fault(0, "wing", Texts.of("boatfile.no_wing")));
        }
    }

    private void hulls() {
        atMost(file, "hulls.waterline_length_m", "hulls.length_overall_m", number("hulls.length_overall_m"));
        atMost(file, "hulls.beam_m", "hulls.spacing_m", number("hulls.spacing_m"));
        double displaced = 2
                * number("hulls.waterline_length_m")
                * number("hulls.beam_m")
                * number("hulls.draft_m")
                * number("hulls.block_coefficient_ratio")
                * SEA_WATER;
        double heaviestWing = file.list("wing").stream()
                .mapToDouble(wing -> wing.number("mass_kg"))
                .max()
                .orElse(Double.NaN);
        double mass = number("platform.mass_kg") + crewMass() + heaviestWing;
        if (Math.abs(displaced / mass - 1) > FLOAT_TOLERANCE) {
            faults.add(file.fault("hulls.draft_m", Texts.of("boatfile.does_not_float", displaced, mass)));
        }
    }

    private void places() {
        double halfBeam = (number("hulls.spacing_m") + number("hulls.beam_m")) / 2;
        atMost(file, "crew.y_max_m", "half the boat's beam", halfBeam);
        atMost(file, "antenna.aft_of_bow_m", "hulls.length_overall_m", number("hulls.length_overall_m"));
        for (Values wing : file.list("wing")) {
            double mass = number("platform.mass_kg") + crewMass() + wing.number("mass_kg");
            double x = (number("platform.mass_kg") * number("platform.x_m")
                            + crewMass() * number("crew.x_m")
                            + wing.number("mass_kg") * wing.number("x_m"))
                    / mass;
            if (x < number("rudder.x_m") || x > 0) {
                faults.add(file.fault(
                        "platform.x_m",
                        Texts.of(
                                "boatfile.centre_of_mass",
                                String.valueOf(wing.findText("id")),
                                x,
                                number("rudder.x_m"))));
            }
        }
    }

    private void foils() {
        double junction = number("main_foil.y_junction_m");
        atMost(file, "main_foil.y_lift_m", "main_foil.y_junction_m (the tip points inboard)", junction);
        atLeast(
                file,
                "main_foil.y_lift_m",
                "main_foil.y_junction_m less the tip's span",
                junction - number("main_foil.tip_span_m"));
        below(file, "main_foil.rake_min_deg", "main_foil.rake_max_deg");
        file.list("foil_set").forEach(this::otherFoils);
    }

    /** Faults of another set name the key of it that matters, whether it is given there or taken from the standard set. */
    private void otherFoils(Values set) {
        double junction = numberOf(set, "main_foil.y_junction_m");
        double lift = numberOf(set, "main_foil.y_lift_m");
        double span = numberOf(set, "main_foil.tip_span_m");
        if (lift > junction) {
            faults.add(set.fault(
                    "main_foil.y_lift_m",
                    Texts.of(
                            "boatfile.at_most", "main_foil.y_junction_m (the tip points inboard)", rounded(junction))));
        }
        if (lift < junction - span) {
            faults.add(set.fault(
                    "main_foil.y_lift_m",
                    Texts.of(
                            "boatfile.at_least",
                            "main_foil.y_junction_m less the tip's span",
                            rounded(junction - span))));
        }
        if (numberOf(set, "main_foil.rake_min_deg") >= numberOf(set, "main_foil.rake_max_deg")) {
            faults.add(set.fault("main_foil.rake_min_deg", Texts.of("boatfile.below", "main_foil.rake_max_deg")));
        }
        double deepest = numberOf(set, "main_foil.shaft_length_m") - numberOf(set, "main_foil.immersion_min_m");
        if (number("limits.ride_height_max_m") > deepest) {
            faults.add(set.fault(
                    "main_foil.shaft_length_m",
                    Texts.of("boatfile.foil_too_short", number("limits.ride_height_max_m"), deepest)));
        }
    }

    private double numberOf(Values set, String path) {
        Double own = set.findNumber(path);
        return own == null ? number(path) : own;
    }

    private void limits() {
        below(file, "limits.heel_min_deg", "limits.heel_max_deg");
        below(file, "limits.ride_height_min_m", "limits.ride_height_max_m");
        below(file, "limits.pitch_min_deg", "limits.pitch_max_deg");
        atMost(
                file,
                "limits.ride_height_max_m",
                "main_foil.shaft_length_m less main_foil.immersion_min_m",
                number("main_foil.shaft_length_m") - number("main_foil.immersion_min_m"));
        atMost(file, "limits.ride_height_max_m", "rudder.shaft_length_m", number("rudder.shaft_length_m"));
        below(file, "handling.critical_power_w", "handling.peak_power_w");
    }

    private void wing(Values wing) {
        List<Values> stations = wing.list("station");
        if (stations.size() < 2) {
            faults.add(wing.fault("id", Texts.of("boatfile.two_stations")));
            return;
        }
        if (stations.get(0).number("height_m") != 0) {
            faults.add(stations.get(0).fault("height_m", Texts.of("boatfile.first_station")));
        }
        for (int i = 1; i < stations.size(); i++) {
            double under = stations.get(i - 1).number("height_m");
            double height = stations.get(i).number("height_m");
            if (height <= under) {
                faults.add(stations.get(i).fault("height_m", Texts.of("boatfile.stations_rise", height, under)));
            }
        }
        double span = stations.get(stations.size() - 1).number("height_m");
        joints(wing.list("flap_joint"), span);
        below(wing, "foot_plate.gap_m", "foot_height_m");
        atMost(wing, "mass_height_m", "the height of the wing's head", span);
        atMost(wing, "turning_axis_ratio", "1 less flap_chord_ratio", 1 - wing.number("flap_chord_ratio"));
        below(wing, "trim.head_flap_min_deg", "trim.camber_max_deg");
        double longest = stations.stream()
                .mapToDouble(row -> row.number("chord_m"))
                .max()
                .orElse(Double.NaN);
        atMost(wing, "sheet.lever_m", "the wing's longest chord", longest);
    }

    private void joints(List<Values> joints, double span) {
        double under = 0;
        for (Values joint : joints) {
            double height = joint.number("height_m");
            if (height <= under || height >= span) {
                faults.add(joint.fault("height_m", Texts.of("boatfile.joints_rise", height, under, span)));
            }
            under = height;
        }
    }

    private double crewMass() {
        return file.count("crew.count") * number("crew.mass_each_kg");
    }

    private double number(String path) {
        return file.number(path);
    }

    private void below(Values row, String path, String other) {
        if (row.number(path) >= row.number(other)) {
            faults.add(row.fault(path, Texts.of("boatfile.below", other)));
        }
    }

    private void atMost(Values row, String path, String what, double bound) {
        if (row.number(path) > bound) {
            faults.add(row.fault(path, Texts.of("boatfile.at_most", what, rounded(bound))));
        }
    }

    private void atLeast(Values row, String path, String what, double bound) {
        if (row.number(path) < bound) {
            faults.add(row.fault(path, Texts.of("boatfile.at_least", what, rounded(bound))));
        }
    }

    private static String rounded(double value) {
        return String.format(Locale.ROOT, "%.3f", value);
    }
}
