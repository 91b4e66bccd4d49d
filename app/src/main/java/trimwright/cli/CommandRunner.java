package trimwright.cli;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;
import trimwright.keyfile.NearName;
import trimwright.text.NoAnswerException;
import trimwright.text.Texts;
import trimwright.text.UserInputException;
import trimwright.text.Version;

/** Runs one command line and turns what happens into one line on standard error and an exit code. */
public final class CommandRunner {
    /** Done; also a partly bad file imported, with counts on standard error. */
    public static final int DONE = 0;
    /** Anything unexpected: our fault. */
    public static final int OUR_FAULT = 1;
    /** What the user gave is wrong. */
    public static final int USER_INPUT = 2;
    /** The physics has no answer. */
    public static final int NO_ANSWER = 3;
    /** Interrupted; the same number that a shell gives for a signal 2. */
    public static final int INTERRUPTED = 130;

    private final List<Callable<Integer>> commands;
    private final PrintStream out;
    private final PrintStream err;

    /** Each command annotated for picocli, or a {@link CommandGroup} of such. */
    public CommandRunner(List<Callable<Integer>> commands, Console console) {
        this.commands = List.copyOf(commands);
        out = console.out();
        err = console.err();
    }

    /** The exit code of contracts: 0, 1, 2, 3 or 130. */
    public int run(String... args) {
        CommandLine line = commandLine();
        try {
            return line.execute(args);
        } catch (StackOverflowError | OutOfMemoryError | LinkageError e) {
            // Picocli hands on errors; they too are our fault and get their one line.
            return ourFault(e, List.of(args).contains("--debug"));
        } finally {
            out.flush();
            err.flush();
        }
    }

    CommandLine commandLine() {
        CommandLine line = lineOf(new CommandGroup("trimwright", commands));
        // After the commands: picocli hands these down to those that exist.
        line.setResourceBundle(Texts.bundle());
        line.setOut(new PrintWriter(out, true, StandardCharsets.UTF_8));
        line.setErr(new PrintWriter(err, true, StandardCharsets.UTF_8));
        line.setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF));
        line.setUsageHelpWidth(100);
        line.setAbbreviatedOptionsAllowed(false);
        line.setParameterExceptionHandler((e, given) -> wrongCommandLine(e));
        line.setExecutionExceptionHandler(this::failed);
        return line;
    }

    private static CommandLine lineOf(Callable<Integer> command) {
        final CommandLine line;
        if (command instanceof CommandGroup group) {
            CommandSpec spec = CommandSpec.wrapWithoutInspection(group).name(group.name());
            spec.addMixin("common", CommandSpec.forAnnotatedObject(new CommonOptions()));
            line = new CommandLine(spec);
            group.commands().forEach(below -> line.addSubcommand(lineOf(below)));
        } else {
            line = new CommandLine(command);
        }
        line.getCommandSpec().version("trimwright " + Version.get());
        return line;
    }

    private int wrongCommandLine(ParameterException e) {
        String command = e.getCommandLine().getCommandSpec().qualifiedName();
        String what = e instanceof UnmatchedArgumentException unmatched
                ? unmatched(unmatched.getUnmatched().get(0), e.getCommandLine())
                : String.valueOf(e.getMessage());
        say(Texts.of("cli.wrong_command_line", what, command));
        return USER_INPUT;
    }

    private static String unmatched(String word, CommandLine line) {
        String command = line.getCommandSpec().qualifiedName();
        boolean option = word.startsWith("-");
        List<String> known = List.copyOf(
                option
                        ? line.getCommandSpec().optionsMap().keySet()
                        : line.getSubcommands().keySet());
        String near = NearName.find(word, known);
        String what = Texts.of(option ? "cli.no_option" : "cli.no_such_command", word, command);
        return near == null ? what : Texts.of("cli.maybe", what, near);
    }

    private int failed(Exception e, CommandLine line, ParseResult parsed) {
        boolean debug = parsed.asCommandLineList().stream()
                .anyMatch(level -> level.getParseResult().hasMatchedOption("--debug"));
        int code;
        if (e instanceof UserInputException) {
            code = USER_INPUT;
            say(e.getMessage());
        } else if (e instanceof NoAnswerException) {
            code = NO_ANSWER;
            say(e.getMessage());
        } else if (e instanceof InterruptedException) {
            code = INTERRUPTED;
            say(Texts.of("cli.interrupted"));
        } else {
            return ourFault(e, debug);
        }
        if (debug) {
            e.printStackTrace(err);
        }
        return code;
    }

    private int ourFault(Throwable e, boolean debug) {
        say(Texts.of("cli.our_fault", e));
        if (debug) {
            e.printStackTrace(err);
        }
        return OUR_FAULT;
    }

    private void say(@Nullable String message) {
        err.print(String.valueOf(message).stripTrailing() + "\n");
    }
}
