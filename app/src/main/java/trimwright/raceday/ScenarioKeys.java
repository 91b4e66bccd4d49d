package trimwright.raceday;

import java.util.List;
import trimwright.keyfile.Key;
import trimwright.keyfile.KeyTable;

/** All keys of a scenario file; reader, checker, writer and docs/formats.md share this table. */
public final class ScenarioKeys {
    static final String SCHEMA = "scenario/1";

    private static final String HABIT = "boat[].habit.";
    private static final String TEMPER = "boat[].temper.";
    private static final String FAULT = "boat[].fault.";

    public static final KeyTable TABLE = new KeyTable(
            SCHEMA,
            List.of(
                    Key.count("seed", 0, Integer.MAX_VALUE, "of wind, noise and dropouts"),
                    Key.flag("wakes", "false: no boat feels another's wake"),
                    Key.flag("turns_at_once", "true: tacks and gybes are made at once and cost nothing"),
                    Key.number("weather.wind_kn", 8, 26, "mean true wind at 10 m"),
                    Key.number("weather.from_deg", 0, 360, "direction from which it blows"),
                    Key.number("weather.intensity_ratio", 0, 0.3, "standard deviation of turbulence over the mean"),
                    Key.text("weather.spectrum", "of turbulence: kaimal or von_karman"),
                    Key.number("weather.swing_deg", 0, 20, "standard deviation of slow swings of direction"),
                    Key.number("weather.surge_ratio", 0, 0.3, "standard deviation of slow swings of speed"),
                    Key.number("weather.puff_ratio", 0, 0.5, "mean rise of the wind in a puff"),
                    Key.flag("weather.everywhere_alike", "true: at one time the same wind at all places")
                            .orAbsent(),
                    Key.number("hidden.mass_ratio", -0.1, 0.1, "more mass than the boat file says"),
                    Key.number("hidden.drag_ratio", -0.3, 0.3, "more windage"),
                    Key.number("hidden.moment_ratio", -0.1, 0.1, "more righting moment"),
                    Key.text("boat[].name", "of the boat and its files"),
                    Key.number(HABIT + "moment_ratio", 0.51, 1, "share of the righting moment that is carried"),
                    Key.number(HABIT + "late_ease_s", 0, 3.9, "by which an ease of the sheet comes later"),
                    Key.number(HABIT + "twist_deg", -20, 20, "more twist than aimed at"),
                    Key.number(HABIT + "ride_height_m", -0.5, 0.5, "higher than aimed at"),
                    Key.number(HABIT + "late_inversion_s", 0, 5, "by which camber is put over later in a turn"),
                    Key.number(TEMPER + "shift_deg", 0, 45, "header on which she tacks, lift on which she gybes"),
                    Key.number(TEMPER + "overstand_deg", 0, 20, "beyond the lay line at which she turns for the mark"),
                    Key.number(TEMPER + "start_ratio", 0.02, 0.98, "place on the start line from its port end"),
                    Key.number(TEMPER + "gate_ratio", 0.02, 0.98, "place in a gate from its port mark"),
                    Key.number(TEMPER + "start_late_s", 0, 20, "lateness at the gun that she plans for"),
                    Key.number(FAULT + "wind_angle_deg", -20, 20, "added to the apparent wind angle"),
                    Key.number(FAULT + "wind_speed_ratio", 0.7, 1.3, "factor on the apparent wind speed"),
                    Key.number(
                            FAULT + "upwash_deg",
                            -20,
                            20,
                            "turn of the wind at the sensor for a lift coefficient of 1"),
                    Key.number(FAULT + "wind_lag_s", 0, 5, "lag of the wind sensor"),
                    Key.number(FAULT + "compass_deg", -20, 20, "added to the heading"),
                    Key.number(FAULT + "roll_deg", -10, 10, "added to the roll"),
                    Key.number(FAULT + "pitch_deg", -10, 10, "added to the pitch"),
                    Key.number(FAULT + "camber_deg", -10, 10, "added to the signed camber"),
                    Key.number(FAULT + "twist_deg", -10, 10, "added to the signed twist"),
                    Key.number(FAULT + "sheet_deg", -10, 10, "added to the signed sheet"),
                    Key.number(FAULT + "load_ratio", 0.5, 1.5, "factor on the sheet load"),
                    Key.number(FAULT + "ride_height_m", -0.5, 0.5, "added to the ride height"),
                    Key.number(FAULT + "dropouts_an_hour", 0, 1000, "how often some instrument falls silent")));

    private ScenarioKeys() {}
}
