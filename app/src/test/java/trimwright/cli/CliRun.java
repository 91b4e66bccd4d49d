package trimwright.cli;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import trimwright.Main;

/**
 * One command run in process.
 *
 * @param exit the exit code
 * @param out standard output
 * @param err standard error
 */
public record CliRun(int exit, String out, String err) {
    /**
     * What all tests of a build share: books and tables are kept under a key of the program itself, so one is made once however
     * many tests ask for it, and never found by another build.
     */
    public static Path sharedCache() {
        return Path.of(System.getProperty("trimwright.target", "target"), "test-cache")
                .toAbsolutePath();
    }

    /** Runs with its own data and configuration below {@code home} and the cache that tests share. */
    public static CliRun in(Path home, String... args) {
        return in(home, sharedCache(), args);
    }

    /** Runs with that cache. */
    public static CliRun in(Path home, Path cache, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Map<String, String> environment = Map.of(
                "TRIMWRIGHT_DATA", home.resolve("data").toString(),
                "TRIMWRIGHT_CONFIG", home.resolve("config").toString(),
                "TRIMWRIGHT_CACHE", cache.toString());
        int exit = Main.runner(
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8),
                        ProgressStyle.LINES,
                        environment)
                .run(args);
        return new CliRun(exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}
