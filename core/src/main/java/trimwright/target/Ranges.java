package trimwright.target;

import java.util.EnumMap;
import java.util.Map;
import trimwright.boat.Boat;
import trimwright.boat.Limits;
import trimwright.boat.TrimRange;
import trimwright.platform.Platform;
import trimwright.platform.Variable;
import trimwright.units.Units;

/** How far each variable may go on a branch. */
final class Ranges {
    /** No target is sought outside (m/s); far from any real one. */
    private static final double SPEED_LEAST = 0.2;

    private static final double SPEED_MOST = 60;

    /** Leeway either way (rad); far from any real one. */
    private static final double LEEWAY = Units.fromDegrees(15);

    /**
     * Share of twist at half height (-); chosen: neither half of the flap twists more than three times as much as the other. What it
     * is worth: docs/theory/target.md.
     */
    private static final double MID_LEAST = 0.25;

    private static final double MID_MOST = 1 - MID_LEAST;

    private final Map<Variable, Band> bands = new EnumMap<>(Variable.class);

    private Ranges() {}

    static Ranges of(Platform platform, Branch branch) {
        Boat boat = platform.boat();
        Limits limits = boat.limits();
        TrimRange trim = platform.wing().trim();
        Double most = limits.boatSpeedMax();
        double draft = platform.restingDraft();
        Ranges ranges = new Ranges();
        ranges.put(Variable.BOAT_SPEED, SPEED_LEAST, most == null ? SPEED_MOST : most);
        ranges.put(Variable.LEEWAY, -LEEWAY, LEEWAY);
        ranges.put(
                Variable.RUDDER, -boat.rudder().rudderAngleMax(), boat.rudder().rudderAngleMax());
        ranges.put(
                Variable.MAIN_RAKE, boat.mainFoil().rakeMin(), boat.mainFoil().rakeMax());
        double elevator = boat.rudder().elevatorAngleMax();
        ranges.put(Variable.ELEVATOR, -elevator, elevator);
        ranges.put(Variable.ELEVATOR_DIFFERENTIAL, -elevator, elevator);
        ranges.put(Variable.SHEET, 0, trim.sheetMax());
        ranges.put(Variable.CAMBER, 0, trim.camberMax());
        ranges.put(Variable.TWIST, 0, trim.twistMax());
        ranges.put(Variable.TWIST_MID_RATIO, MID_LEAST, MID_MOST);
        ranges.put(Variable.HEEL, limits.heelMin(), limits.heelMax());
        ranges.put(Variable.PITCH, limits.pitchMin(), limits.pitchMax());
        ranges.put(Variable.CREW_PLACE, -boat.crew().yMax(), boat.crew().yMax());
        ranges.put(Variable.TRUE_WIND_ANGLE, Units.fromDegrees(5), Units.fromDegrees(175));
        if (branch == Branch.FOILING) {
            ranges.put(Variable.RIDE_HEIGHT, limits.rideHeightMin(), limits.rideHeightMax());
        } else {
            ranges.put(Variable.RIDE_HEIGHT, -2 * draft, draft);
        }
        return ranges;
    }

    private void put(Variable variable, double low, double high) {
        bands.put(variable, new Band(low, high));
    }

    double[] lower(Map<Variable, Double> fixed) {
        double[] row = new double[Variable.count()];
        for (Map.Entry<Variable, Band> entry : bands.entrySet()) {
            Variable variable = entry.getKey();
            Double held = fixed.get(variable);
            row[variable.ordinal()] = (held == null ? entry.getValue().low() : held) / variable.scale();
        }
        return row;
    }

    double[] upper(Map<Variable, Double> fixed) {
        double[] row = new double[Variable.count()];
        for (Map.Entry<Variable, Band> entry : bands.entrySet()) {
            Variable variable = entry.getKey();
            Double held = fixed.get(variable);
            row[variable.ordinal()] = (held == null ? entry.getValue().high() : held) / variable.scale();
        }
        return row;
    }
}
