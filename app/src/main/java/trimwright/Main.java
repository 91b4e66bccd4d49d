package trimwright;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import trimwright.cli.BoatCheckCommand;
import trimwright.cli.BoatExportCommand;
import trimwright.cli.CalibrateCommand;
import trimwright.cli.CardCommand;
import trimwright.cli.ChooseWingCommand;
import trimwright.cli.CommandGroup;
import trimwright.cli.CommandRunner;
import trimwright.cli.Console;
import trimwright.cli.DebriefCommand;
import trimwright.cli.DemoCommand;
import trimwright.cli.DockCheckCommand;
import trimwright.cli.Folders;
import trimwright.cli.GustCommand;
import trimwright.cli.ImportCommand;
import trimwright.cli.LearnCommand;
import trimwright.cli.LiveCommand;
import trimwright.cli.LoadsCommand;
import trimwright.cli.MomentAddCommand;
import trimwright.cli.MomentDropCommand;
import trimwright.cli.MomentExportCommand;
import trimwright.cli.MomentListCommand;
import trimwright.cli.PracticeCommand;
import trimwright.cli.ProgressStyle;
import trimwright.cli.SectionCommand;
import trimwright.cli.ServeCommand;
import trimwright.cli.SessionsCommand;
import trimwright.cli.SimulateCommand;
import trimwright.cli.StartPlanCommand;
import trimwright.cli.TakeOffCommand;
import trimwright.cli.TargetsCommand;
import trimwright.cli.TurnPlanCommand;
import trimwright.cli.WhereCommand;
import trimwright.cli.WingCommand;
import trimwright.prepare.BookCache;
import trimwright.prepare.SectionTables;
import trimwright.prepare.TableCache;
import trimwright.prepare.TargetBooks;

/** Wiring of the program: the only place where parts are put together. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        // Not the stream that Java opens: its encoding follows the locale, and bytes must not.
        PrintStream out = new PrintStream(new FileOutputStream(FileDescriptor.out), false, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8);
        // Set by the launcher, which can ask the shell; Java 17 cannot tell for standard error alone.
        ProgressStyle style = Boolean.getBoolean("trimwright.terminal") ? ProgressStyle.BAR : ProgressStyle.LINES;
        System.exit(runner(out, err, style, System.getenv()).run(args));
    }

    /** All commands, wired; tests call this in process. */
    public static CommandRunner runner(
            PrintStream out, PrintStream err, ProgressStyle style, Map<String, String> environment) {
        Console console = new Console(out, err, style);
        Folders folders = Folders.from(environment, Path.of(System.getProperty("user.home")));
        SectionTables tables = new SectionTables(new TableCache(folders.cache().resolve("sections"), console::note));
        TargetBooks books = new TargetBooks(new BookCache(folders.cache().resolve("targets"), console::note), tables);
        return new CommandRunner(commands(console, folders, books, tables), console);
    }

    private static List<Callable<Integer>> commands(
            Console console, Folders folders, TargetBooks books, SectionTables tables) {
        return List.of(
                new CommandGroup("boat", List.of(new BoatCheckCommand(console), new BoatExportCommand(console))),
                new CalibrateCommand(console, folders),
                new CardCommand(console, books, Clock.system(ZoneId.systemDefault())),
                new ChooseWingCommand(console, books),
                new DemoCommand(
                        console,
                        folders,
                        (other, arguments) -> new CommandRunner(commands(other, folders, books, tables), other)
                                .run(arguments.toArray(String[]::new))),
                new DebriefCommand(console, folders, books),
                new DockCheckCommand(console, folders),
                new GustCommand(console, books),
                new ImportCommand(console, folders),
                new LearnCommand(console, folders, books),
                new LiveCommand(console, folders, books),
                new LoadsCommand(console, books),
                new CommandGroup(
                        "moment",
                        List.of(
                                new MomentAddCommand(console, folders),
                                new MomentDropCommand(console, folders),
                                new MomentExportCommand(console, folders),
                                new MomentListCommand(console, folders))),
                new PracticeCommand(console, books),
                new ServeCommand(console, folders, books),
                new SectionCommand(console, tables),
                new SessionsCommand(console, folders),
                new SimulateCommand(console, books),
                new TakeOffCommand(console, books),
                new TargetsCommand(console, folders, books, tables),
                new TurnPlanCommand(console, folders, books, Clock.system(ZoneId.systemDefault())),
                new StartPlanCommand(console, books),
                new WingCommand(console, tables),
                new WhereCommand(console, folders));
    }
}
