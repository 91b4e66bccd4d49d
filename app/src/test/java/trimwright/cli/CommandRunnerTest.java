package trimwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.ArgSpec;
import trimwright.Main;
import trimwright.text.NoAnswerException;
import trimwright.text.UserInputException;

class CommandRunnerTest {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @TempDir
    Path home;

    @Test
    void whatWentWrongDecidesTheExitCodeAndIsOneLine() {
        assertEquals(2, run(new UserInputException("no such file: a.toml"), "fail"));
        assertEquals("no such file: a.toml\n", err());
        assertEquals(3, run(new NoAnswerException("no balance at 4 kn"), "fail"));
        assertEquals("no balance at 4 kn\n", err());
        assertEquals(130, run(new InterruptedException(), "fail"));
        assertEquals(1, run(new IllegalStateException("odd"), "fail"));
        String line = err();
        assertTrue(line.contains("odd"), line);
        assertEquals(1, line.lines().count());
        assertEquals("", out.toString(StandardCharsets.UTF_8));
    }

    @Test
    void stackTraceOnlyWithDebug() {
        run(new IllegalStateException("odd"), "fail", "--debug");
        assertTrue(err().contains("at trimwright.cli.CommandRunnerTest"));
    }

    @Test
    void wrongCommandLinesAreTheUsersInputInOneLine() {
        for (String[] args : new String[][] {{}, {"nonsense"}, {"where", "--nonsense"}, {"where", "extra"}}) {
            CliRun run = CliRun.in(home, args);
            assertEquals(2, run.exit());
            assertEquals(1, run.err().lines().count(), run.err());
            assertTrue(run.err().contains("--help"), run.err());
            assertEquals("", run.out());
        }
    }

    @Test
    void aSlipOfTheFingerIsNamedWithWhatWasMeant() {
        assertEquals(
                "\"wheer\" is not known after \"trimwright\"; maybe where is meant. See \"trimwright --help\".\n",
                CliRun.in(home, "wheer").err());
        assertEquals(
                "--jsn is no option of \"trimwright where\"; maybe --json is meant. See \"trimwright where --help\".\n",
                CliRun.in(home, "where", "--jsn").err());
    }

    @Test
    void everyCommandExplainsItselfWithAnExample() {
        CommandLine root = Main.runner(System.out, System.err, ProgressStyle.NONE, Map.of())
                .commandLine();
        List<CommandLine> all = new ArrayList<>(List.of(root));
        for (int i = 0; i < all.size(); i++) {
            all.addAll(all.get(i).getSubcommands().values());
        }
        for (CommandLine command : all) {
            String name = command.getCommandSpec().qualifiedName();
            String usage = command.getUsageMessage(CommandLine.Help.Ansi.OFF);
            assertTrue(usage.contains("Example"), name + " has no example");
            assertTrue(command.getCommandSpec().usageMessage().header().length > 0, name + " has no header");
            List<ArgSpec> args = new ArrayList<>(command.getCommandSpec().options());
            args.addAll(command.getCommandSpec().positionalParameters());
            for (ArgSpec arg : args) {
                assertTrue(arg.description().length > 0, name + ": no description of " + arg.paramLabel() + " " + arg);
            }
            assertTrue(command.getCommandSpec().optionsMap().containsKey("--json"), name + " has no --json");
        }
    }

    @Test
    void helpAndVersionGoToStandardOutput() {
        CliRun help = CliRun.in(home, "--help");
        assertEquals(0, help.exit());
        assertTrue(help.out().contains("where"), help.out());
        CliRun version = CliRun.in(home, "--version");
        assertTrue(version.out().matches("trimwright \\d+\\.\\d+\\.\\d+\n"), version.out());
    }

    @Test
    void whereFollowsTheEnvironment() {
        CliRun run = CliRun.in(home, "where", "--json");
        assertEquals(0, run.exit());
        assertTrue(run.out().contains("\"data\" : \"" + home.resolve("data") + "\""), run.out());
        Folders xdg = Folders.from(Map.of("XDG_CONFIG_HOME", "/x", "XDG_CACHE_HOME", "relative"), Path.of("/home/a"));
        assertEquals(Path.of("/home/a/.local/share/trimwright"), xdg.data());
        assertEquals(Path.of("/x/trimwright"), xdg.config());
        assertEquals(Path.of("/home/a/.cache/trimwright"), xdg.cache());
    }

    @Test
    void progressInAFileIsAFewPlainLinesWithRateAndTimeLeft() {
        long[] now = {0};
        ProgressLines lines = new ProgressLines(
                new PrintStream(err, true, StandardCharsets.UTF_8), "winds", 10, "winds", () -> now[0]);
        lines.done(1);
        now[0] = 4_000_000_000L;
        lines.done(3);
        now[0] = 5_000_000_000L;
        lines.done(1);
        assertEquals("winds: 4 of 10 winds, 1.0/s, 6 s left\n", err());
        assertFalse(err().contains("5 of"));
    }

    private int run(Exception failure, String... args) {
        out.reset();
        err.reset();
        return new CommandRunner(
                        List.of(new Failing(failure)),
                        new Console(
                                new PrintStream(out, true, StandardCharsets.UTF_8),
                                new PrintStream(err, true, StandardCharsets.UTF_8),
                                ProgressStyle.NONE))
                .run(args);
    }

    private String err() {
        return err.toString(StandardCharsets.UTF_8);
    }

    @Command(name = "fail")
    private static final class Failing implements Callable<Integer> {
        @Mixin
        private final CommonOptions unusedButParsed = new CommonOptions();

        private final Exception failure;

        private Failing(Exception failure) {
            this.failure = failure;
        }

        @Override
        public Integer call() throws Exception {
            throw failure;
        }
    }
}
