package trimwright.raceday;

import java.util.Locale;
import trimwright.crew.Habits;
import trimwright.crew.Temper;
import trimwright.crew.Turning;
import trimwright.sim.Entry;
import trimwright.sim.Perturbation;
import trimwright.sim.Scenario;
import trimwright.sim.SensorFaults;
import trimwright.units.Units;
import trimwright.weather.WeatherSpec;

/** A scenario as the text of a file. */
final class ScenarioText {
    private ScenarioText() {}

    static String of(Scenario scenario) {
        StringBuilder text = new StringBuilder();
        text.append("schema = \"").append(ScenarioKeys.SCHEMA).append("\"\n");
        text.append("seed = ").append(scenario.seed()).append('\n');
        text.append("wakes = ").append(scenario.wakes() == Scenario.Wakes.FELT).append('\n');
        text.append("turns_at_once = ")
                .append(scenario.turning() == Turning.AT_ONCE)
                .append('\n');
        WeatherSpec weather = scenario.weather();
        text.append("\n[weather]\n");
        number("wind_kn", Units.toKnots(weather.speed()), text);
        number("from_deg", Math.toDegrees(weather.from()), text);
        number("intensity_ratio", weather.intensity(), text);
        text.append("spectrum = \"")
                .append(weather.spectrum().name().toLowerCase(Locale.ROOT))
                .append("\"\n");
        number("swing_deg", Math.toDegrees(weather.swing()), text);
        number("surge_ratio", weather.surge(), text);
        number("puff_ratio", weather.puffStrength(), text);
        if (weather.unrest() == WeatherSpec.Unrest.EVERYWHERE_ALIKE) {
            text.append("everywhere_alike = true\n");
        }
        Perturbation hidden = scenario.entries().get(0).perturbation();
        text.append("\n[hidden]\n");
        number("mass_ratio", hidden.mass(), text);
        number("drag_ratio", hidden.drag(), text);
        number("moment_ratio", hidden.moment(), text);
        scenario.entries().forEach(entry -> boat(entry, text));
        return text.toString();
    }

    private static void boat(Entry entry, StringBuilder text) {
        text.append("\n[[boat]]\nname = \"").append(entry.name()).append("\"\n");
        Habits habits = entry.habits();
        text.append("[boat.habit]\n");
        number("moment_ratio", habits.momentShare(), text);
        number("late_ease_s", habits.lateEase(), text);
        number("twist_deg", Math.toDegrees(habits.twist()), text);
        number("ride_height_m", habits.rideHeight(), text);
        number("late_inversion_s", habits.lateInversion(), text);
        Temper temper = entry.temper();
        text.append("[boat.temper]\n");
        number("shift_deg", Math.toDegrees(temper.shift()), text);
        number("overstand_deg", Math.toDegrees(temper.overstand()), text);
        number("start_ratio", temper.startShare(), text);
        number("gate_ratio", temper.gateShare(), text);
        number("start_late_s", temper.startMargin(), text);
        SensorFaults faults = entry.faults();
        text.append("[boat.fault]\n");
        number("wind_angle_deg", Math.toDegrees(faults.wind().angle()), text);
        number("wind_speed_ratio", faults.wind().speedFactor(), text);
        number("upwash_deg", Math.toDegrees(faults.wind().upwash()), text);
        number("wind_lag_s", faults.wind().lag(), text);
        number("compass_deg", Math.toDegrees(faults.attitude().compass()), text);
        number("roll_deg", Math.toDegrees(faults.attitude().roll()), text);
        number("pitch_deg", Math.toDegrees(faults.attitude().pitch()), text);
        number("camber_deg", Math.toDegrees(faults.wing().camber()), text);
        number("twist_deg", Math.toDegrees(faults.wing().twist()), text);
        number("sheet_deg", Math.toDegrees(faults.wing().sheet()), text);
        number("load_ratio", faults.wing().loadFactor(), text);
        number("ride_height_m", faults.wing().rideHeight(), text);
        number("dropouts_an_hour", faults.dropoutsPerHour(), text);
    }

    private static void number(String key, double value, StringBuilder text) {
        // Adding zero turns -0 into 0.
        text.append(String.format(Locale.ROOT, "%s = %.6f\n", key, value + 0.0));
    }
}
