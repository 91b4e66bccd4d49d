package trimwright.raceday;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import trimwright.crew.Habits;
import trimwright.crew.Temper;
import trimwright.crew.Turning;
import trimwright.keyfile.Fault;
import trimwright.keyfile.KeyFile;
import trimwright.keyfile.Values;
import trimwright.sim.Entry;
import trimwright.sim.Perturbation;
import trimwright.sim.Scenario;
import trimwright.sim.ScenarioDraw;
import trimwright.sim.SensorFaults;
import trimwright.text.Texts;
import trimwright.text.UserInputException;
import trimwright.weather.TurbulenceSpectrum;
import trimwright.weather.WeatherSpec;

/** What a simulated day is made from, as a file: {@code scenario/1}. */
public final class ScenarioFile {
    private static final int MOST_BYTES = 1_000_000;
    /** Metres above the water at which winds are given. */
    private static final double REFERENCE = 10;

    private ScenarioFile() {}

    /**
     * The scenario of a seed, as its file would say it: a day made from that file is the same to the byte.
     *
     * @param seed from 0 to 2147483647
     */
    public static Scenario draw(int seed) {
        return parse(ScenarioText.of(ScenarioDraw.of(seed)), "scenario.toml");
    }

    /**
     * Reads the file.
     *
     * @throws UserInputException with a line for each fault
     */
    public static Scenario read(Path file) {
        try {
            if (Files.isDirectory(file) || Files.size(file) > MOST_BYTES) {
                throw new UserInputException(Texts.of("raceday.not_a_scenario", file));
            }
            return parse(new String(Files.readAllBytes(file), StandardCharsets.UTF_8), file.toString());
        } catch (IOException e) {
            throw new UserInputException(Texts.of("raceday.unreadable", file), e);
        }
    }

    static Scenario parse(String text, String name) {
        KeyFile file = KeyFile.read(text, ScenarioKeys.TABLE, key -> null);
        List<Fault> faults = new ArrayList<>(file.faults());
        Scenario scenario = faults.isEmpty() ? load(file.values(), faults) : null;
        if (scenario == null || !faults.isEmpty()) {
            throw new UserInputException(faults.stream()
                    .sorted(Fault.BY_PLACE)
                    .map(fault -> fault.text(name))
                    .collect(Collectors.joining("\n")));
        }
        return scenario;
    }

    private static @Nullable Scenario load(Values values, List<Fault> faults) {
        TurbulenceSpectrum spectrum = switch (values.getText("weather.spectrum")) {
            case "kaimal" -> TurbulenceSpectrum.KAIMAL;
            case "von_karman" -> TurbulenceSpectrum.VON_KARMAN;
            default -> {
                faults.add(values.fault("weather.spectrum", Texts.of("raceday.spectrum")));
                yield TurbulenceSpectrum.KAIMAL;
            }
        };
        Perturbation hidden = new Perturbation(
                values.number("hidden.mass_ratio"),
                values.number("hidden.drag_ratio"),
                values.number("hidden.moment_ratio"));
        List<Entry> entries = new ArrayList<>();
        List<String> names = new ArrayList<>();
        for (Values row : values.list("boat")) {
            String name = row.getText("name");
            if (!name.matches("[A-Za-z0-9][A-Za-z0-9-]{0,39}")) {
                faults.add(row.fault("name", Texts.of("raceday.boat_name", name)));
            } else if (names.contains(name.toLowerCase(Locale.ROOT))) {
                faults.add(row.fault("name", Texts.of("raceday.two_boats", name)));
            }
            names.add(name.toLowerCase(Locale.ROOT));
            entries.add(new Entry(name, habits(row), temper(row), faults(row), hidden));
        }
        if (entries.isEmpty() || entries.size() > 20 || !faults.isEmpty()) {
            if (faults.isEmpty()) {
                faults.add(values.fault("seed", Texts.of("raceday.boats", entries.size())));
            }
            return null;
        }
        return new Scenario(
                values.count("seed"),
                new WeatherSpec(
                        values.number("weather.wind_kn"),
                        values.number("weather.from_deg"),
                        REFERENCE,
                        values.number("weather.intensity_ratio"),
                        spectrum,
                        values.number("weather.swing_deg"),
                        values.number("weather.surge_ratio"),
                        values.number("weather.puff_ratio"),
                        values.isSet("weather.everywhere_alike")
                                ? WeatherSpec.Unrest.EVERYWHERE_ALIKE
                                : WeatherSpec.Unrest.CARRIED),
                values.isSet("wakes") ? Scenario.Wakes.FELT : Scenario.Wakes.NONE,
                values.isSet("turns_at_once") ? Turning.AT_ONCE : Turning.SAILED,
                entries);
    }

    private static Habits habits(Values row) {
        return new Habits(
                row.number("habit.moment_ratio"),
                row.number("habit.late_ease_s"),
                row.number("habit.twist_deg"),
                row.number("habit.ride_height_m"),
                row.number("habit.late_inversion_s"));
    }

    private static Temper temper(Values row) {
        return new Temper(
                row.number("temper.shift_deg"),
                row.number("temper.overstand_deg"),
                row.number("temper.start_ratio"),
                row.number("temper.gate_ratio"),
                row.number("temper.start_late_s"));
    }

    private static SensorFaults faults(Values row) {
        return new SensorFaults(
                new SensorFaults.WindFault(
                        row.number("fault.wind_angle_deg"),
                        row.number("fault.wind_speed_ratio"),
                        row.number("fault.upwash_deg"),
                        row.number("fault.wind_lag_s")),
                new SensorFaults.AttitudeFault(
                        row.number("fault.compass_deg"), row.number("fault.roll_deg"), row.number("fault.pitch_deg")),
                new SensorFaults.WingFault(
                        row.number("fault.camber_deg"),
                        row.number("fault.twist_deg"),
                        row.number("fault.sheet_deg"),
                        row.number("fault.load_ratio"),
                        row.number("fault.ride_height_m")),
                row.number("fault.dropouts_an_hour"));
    }
}
