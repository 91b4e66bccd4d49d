package trimwright.drills;

import org.jspecify.annotations.Nullable;
import trimwright.text.Texts;
import trimwright.text.UserInputException;
import trimwright.weather.WaveSpec;

/** The sea of a drill as people write it: significant height in metres and, after a comma, the peak's period in seconds. */
public final class DrillSea {
    /** Highest that is sailed in (m): chosen; beyond, a boat's ride height is no answer to it. */
    public static final double HIGHEST = 1;

    /** Longest period (s): chosen; longer waves carry a boat up and down with them, and no wind of the day has raised them. */
    static final double LONGEST = 8;

    /** Drills have the wind from north. */
    private static final double FROM = 0;

    private DrillSea() {}

    /**
     * The sea of those words; null on flat water, which is height 0.
     *
     * @throws UserInputException where they are none, or of a sea that there is not
     */
    public static @Nullable WaveSpec of(String words) {
        String[] parts = words.strip().split("\\s*,\\s*", -1);
        if (parts.length > 2) {
            throw notUnderstood(words);
        }
        double height = number(parts[0], words);
        if (!(height >= 0 && height <= HIGHEST)) {
            throw new UserInputException(Texts.of("practice.waves_height", parts[0], HIGHEST));
        }
        double period = parts.length == 2 ? number(parts[1], words) : Double.NaN;
        if (height == 0) {
            return null;
        }
        if (Double.isNaN(period)) {
            return WaveSpec.of(height, FROM);
        }
        double least = WaveSpec.leastPeriod(height);
        if (!(period >= least && period <= LONGEST)) {
            throw new UserInputException(
                    Texts.of("practice.waves_period", parts[1], parts[0], Math.ceil(10 * least) / 10, LONGEST));
        }
        return new WaveSpec(height, period, FROM);
    }

    private static double number(String part, String words) {
        double value;
        try {
            value = Double.parseDouble(part);
        } catch (NumberFormatException e) {
            throw notUnderstood(words);
        }
        if (!Double.isFinite(value)) {
            throw notUnderstood(words);
        }
        return value;
    }

    private static UserInputException notUnderstood(String words) {
        return new UserInputException(Texts.of("practice.waves_form", words));
    }
}
