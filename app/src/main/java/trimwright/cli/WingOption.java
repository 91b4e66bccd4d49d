package trimwright.cli;

import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import trimwright.boat.Boat;
import trimwright.boat.WingSpec;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/** Which of the boat's wings a command computes. */
public final class WingOption {
    @Option(names = "--wing", paramLabel = "ID", descriptionKey = "common.wing")
    private @Nullable String wing;

    /** The wing named, or the first of the file. */
    public WingSpec of(Boat boat) {
        return wing == null ? boat.wings().get(0) : of(boat, wing);
    }

    /** The wing of that id; one line where the boat has none such. */
    static WingSpec of(Boat boat, String wing) {
        for (WingSpec spec : boat.wings()) {
            if (spec.id().equals(wing)) {
                return spec;
            }
        }
        String known = boat.wings().stream().map(WingSpec::id).collect(Collectors.joining(", "));
        throw new UserInputException(Texts.of("cli.no_wing", wing, boat.name(), known));
    }
}
