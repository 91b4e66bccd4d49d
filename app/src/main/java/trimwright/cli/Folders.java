package trimwright.cli;

import java.nio.file.Path;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Where the program keeps things: the XDG base directories, each overridden by a variable of our own.
 *
 * @param data sessions and boats: the default library
 * @param config what the user sets
 * @param cache what can be made again
 */
public record Folders(Path data, Path config, Path cache) {
    private static final String NAME = "trimwright";

    /** From the environment: {@code TRIMWRIGHT_DATA}, else {@code XDG_DATA_HOME}, else below the home folder; likewise others. */
    public static Folders from(Map<String, String> environment, Path home) {
        return new Folders(
                find(environment, "DATA", home.resolve(".local/share")),
                find(environment, "CONFIG", home.resolve(".config")),
                find(environment, "CACHE", home.resolve(".cache")));
    }

    private static Path find(Map<String, String> environment, String kind, Path otherwise) {
        String own = set(environment, "TRIMWRIGHT_" + kind);
        if (own != null) {
            return Path.of(own).toAbsolutePath().normalize();
        }
        String xdg = set(environment, "XDG_" + kind + "_HOME");
        // The XDG specification: a relative path is to be ignored.
        Path base = xdg != null && Path.of(xdg).isAbsolute() ? Path.of(xdg) : otherwise;
        return base.resolve(NAME).normalize();
    }

    private static @Nullable String set(Map<String, String> environment, String name) {
        String value = environment.get(name);
        return value == null || value.isEmpty() ? null : value;
    }
}
