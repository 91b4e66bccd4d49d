package trimwright.choice;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import trimwright.aim.Gustiness;
import trimwright.keyfile.Key;
import trimwright.keyfile.KeyFile;
import trimwright.setup.Forecast;
import trimwright.setup.GustProcess;
import trimwright.text.Texts;
import trimwright.text.UserInputException;
import trimwright.units.Units;

/**
 * A forecast as people give it, by the keys of {@code forecast/1}: from a file, from options, or from a page.
 *
 * @param values by key, in the key's unit
 */
public record ForecastInput(Map<String, Double> values) {
    private static final int MOST_BYTES = 100_000;

    /** Where nothing is said: chosen, a fair forecast of a steady sea wind (common practice, no source). */
    private static final Map<String, Double> USUAL = Map.of(
            "wind_spread_kn", 2.0,
            "from_deg", 0.0,
            "shift_deg", 5.0,
            "turbulence_ratio", Gustiness.TURBULENCE,
            "current_kn", 0.0,
            "current_to_deg", 0.0);

    public ForecastInput {
        values = Map.copyOf(values);
    }

    /** Nothing said. */
    public static ForecastInput none() {
        return new ForecastInput(Map.of());
    }

    /**
     * Reads a file.
     *
     * @throws UserInputException with a line for each fault
     */
    public static ForecastInput read(Path file) {
        try {
            if (!Files.isRegularFile(file) || Files.size(file) > MOST_BYTES) {
                throw new UserInputException(Texts.of("choose.not_a_forecast", file));
            }
            KeyFile read = KeyFile.read(Files.readString(file), ForecastKeys.TABLE, key -> null);
            if (!read.faults().isEmpty()) {
                throw new UserInputException(read.faults().stream()
                        .map(fault -> fault.text(file.toString()))
                        .collect(Collectors.joining("\n")));
            }
            Map<String, Double> values = new HashMap<>();
            for (Key key : ForecastKeys.NUMBERS) {
                Double value = read.values().findNumber(key.path());
                if (value != null) {
                    values.put(key.path(), key.unit().fromSi(value));
                }
            }
            return new ForecastInput(values);
        } catch (IOException e) {
            throw new UserInputException(Texts.of("choose.not_a_forecast", file), e);
        }
    }

    /** The same with a value replaced; as it was where that is null. */
    public ForecastInput with(String key, @Nullable Double value) {
        if (value == null) {
            return this;
        }
        Map<String, Double> other = new HashMap<>(values);
        other.put(key, value);
        return new ForecastInput(other);
    }

    /** The same with a value not said. */
    public ForecastInput without(String key) {
        Map<String, Double> other = new HashMap<>(values);
        other.remove(key);
        return new ForecastInput(other);
    }

    /** Whether it was said how gusty it is. */
    public boolean hasGusts() {
        return values.containsKey("turbulence_ratio") || values.containsKey("gust_factor_ratio");
    }

    /** Whether the direction of the wind was said. */
    public boolean hasDirection() {
        return values.containsKey("from_deg");
    }

    /** The forecast; one line where the wind is not said. */
    public Forecast forecast() {
        if (!values.containsKey("wind_kn")) {
            throw new UserInputException(Texts.of("choose.no_wind"));
        }
        if (values.containsKey("turbulence_ratio") && values.containsKey("gust_factor_ratio")) {
            throw new UserInputException(Texts.of("choose.gusts_twice"));
        }
        double wind = Units.fromKnots(get("wind_kn"));
        return new Forecast(
                wind,
                Units.fromKnots(get("wind_spread_kn")),
                Units.fromDegrees(get("from_deg")),
                Units.fromDegrees(get("shift_deg")),
                turbulence(wind),
                Units.fromDegrees(get("current_to_deg")),
                Units.fromKnots(get("current_kn")));
    }

    /** As it was said, or what the gust factor means in the expected wind (m/s). */
    private double turbulence(double wind) {
        Double factor = values.get("gust_factor_ratio");
        return factor == null ? get("turbulence_ratio") : GustProcess.turbulence(factor, wind);
    }

    private double get(String key) {
        Double given = values.get(key);
        return given == null ? USUAL.getOrDefault(key, Double.NaN) : given;
    }
}
