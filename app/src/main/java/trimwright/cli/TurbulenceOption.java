package trimwright.cli;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import trimwright.aim.Gustiness;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/** How gusty the day is, the same question and default wherever it matters. */
public final class TurbulenceOption {
    private static final double LEAST_PERCENT = 100 * Gustiness.LEAST_TURBULENCE;

    private static final double MOST_PERCENT = 100 * Gustiness.MOST_TURBULENCE;

    @Option(names = "--turbulence", paramLabel = "PERCENT", descriptionKey = "cli.turbulence")
    private @Nullable Double percent;

    /** Standard deviation of the wind over its mean (-): what was typed, or the program's. */
    double ratio() {
        Double given = findRatio();
        return given == null ? Gustiness.TURBULENCE : given;
    }

    /** What was typed (-); null where nothing was. */
    @Nullable
    Double findRatio() {
        if (percent == null) {
            return null;
        }
        if (!(percent >= LEAST_PERCENT && percent <= MOST_PERCENT)) {
            throw new UserInputException(Texts.of("cli.no_turbulence", percent, LEAST_PERCENT, MOST_PERCENT));
        }
        return percent / 100;
    }
}
