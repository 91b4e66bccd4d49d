package trimwright.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import trimwright.raceday.DockDay;
import trimwright.sim.DockStretch;
import trimwright.sim.ScenarioDraw;
import trimwright.text.JsonOut;

/**
 * The main job in one go, by the other commands and nothing else: a simulated race day, targets of the demo boat, import of
 * the day's logs, their debrief; the morning of that day at the dock and its check; the workbench.
 */
@Command(name = "demo")
public final class DemoCommand implements Callable<Integer> {
    private static final String BOAT = "whimbrel14";
    private static final String WING = "tall";

    @Mixin
    private final CommonOptions common = new CommonOptions();

    @Option(names = "--seed", paramLabel = "N", defaultValue = "1", descriptionKey = "demo.seed")
    private int seed;

    @Option(names = "--port", paramLabel = "N", descriptionKey = "demo.port")
    private @Nullable String port;

    @Option(names = "--no-browser", descriptionKey = "demo.no_browser")
    private boolean noBrowser;

    @Option(names = "--once", descriptionKey = "demo.once")
    private boolean once;

    @Option(names = "--library", paramLabel = "DIR", descriptionKey = "demo.library")
    private @Nullable Path library;

    private final Console console;
    private final Folders folders;
    private final OtherCommands others;

    /** Runs another command line of this program, its answers going to that console; gives the exit code. */
    public interface OtherCommands {
        int run(Console console, List<String> arguments);
    }

    public DemoCommand(Console console, Folders folders, OtherCommands others) {
        this.console = console;
        this.folders = folders;
        this.others = others;
    }

    @Override
    public Integer call() {
        Path own = folders.cache().resolve("demo").resolve("seed-" + seed);
        Path day = own.resolve("day");
        Path shelf = library == null
                ? own.resolve("library")
                : library.toAbsolutePath().normalize();
        ObjectNode document = JsonOut.document("demo/1").put("library", shelf.toString());
        for (Step step : steps(day, own.resolve("morning"), shelf)) {
            ByteArrayOutputStream answers = new ByteArrayOutputStream();
            int exit = runForJson(step.line(), answers);
            if (exit != CommandRunner.DONE) {
                return exit;
            }
            document.set(step.key(), parse(step.line(), answers));
        }
        if (common.json()) {
            console.json(document);
        } else {
            console.text(DemoSummary.of(document));
        }
        return once ? CommandRunner.DONE : serve(shelf);
    }

    /**
     * One command of the demo.
     *
     * @param key of its answer in the demo's own
     */
    private record Step(String key, List<String> line) {
        static Step of(List<String> line) {
            return new Step(line.get(0), line);
        }
    }

    private List<Step> steps(Path day, Path morning, Path shelf) {
        List<String> bring = new ArrayList<>(List.of("import"));
        for (String boat : ScenarioDraw.BOATS) {
            String name = boat.toLowerCase(Locale.ROOT);
            bring.add(day.resolve("logs").resolve(name + ".nmea").toString());
            bring.add(day.resolve("logs").resolve(name + "-wing.csv").toString());
        }
        bring.addAll(List.of(
                "--map",
                day.resolve("wing-map.toml").toString(),
                "--course",
                day.resolve("course.toml").toString(),
                "--library",
                shelf.toString()));
        Step simulate = Step.of(List.of(
                "simulate", "--seed", String.valueOf(seed), "--boat", BOAT, "--wing", WING, "--out", day.toString()));
        Step targets = Step.of(List.of("targets", "--boat", BOAT, "--wing", WING));
        Step debrief = Step.of(List.of("debrief", "latest", "--boat", BOAT, "--library", shelf.toString()));
        return Stream.concat(Stream.of(simulate, targets, Step.of(bring), debrief), atTheDock(morning, shelf).stream())
                .toList();
    }

    /** The morning before the race, so that the race stays the latest session. */
    private List<Step> atTheDock(Path morning, Path shelf) {
        // Each seed has a session of its own in a library that several demos share.
        String name = "dock-" + seed;
        return List.of(
                new Step(
                        "dock_simulate",
                        List.of(
                                "simulate",
                                "--dock",
                                "--seed",
                                String.valueOf(seed),
                                "--boat",
                                BOAT,
                                "--wing",
                                WING,
                                "--out",
                                morning.toString())),
                new Step(
                        "dock_import",
                        List.of(
                                "import",
                                morning.resolve("logs").resolve("dunlin.nmea").toString(),
                                morning.resolve("logs")
                                        .resolve("dunlin-wing.csv")
                                        .toString(),
                                "--map",
                                morning.resolve("wing-map.toml").toString(),
                                "--name",
                                name,
                                "--library",
                                shelf.toString())),
                new Step(
                        "dock_check",
                        List.of(
                                "dock-check",
                                DockDay.BEGIN.toString().substring(0, 10) + "-" + name,
                                "--boat",
                                BOAT,
                                "--wing",
                                WING,
                                "--pull",
                                String.valueOf(DockStretch.PULL),
                                "--library",
                                shelf.toString())));
    }

    private int runForJson(List<String> step, ByteArrayOutputStream answers) {
        console.note("trimwright " + String.join(" ", step));
        List<String> arguments = new ArrayList<>(step);
        arguments.add("--json");
        return others.run(console.answeringTo(new PrintStream(answers, true, StandardCharsets.UTF_8)), arguments);
    }

    private static JsonNode parse(List<String> step, ByteArrayOutputStream answers) {
        try {
            return JsonOut.mapper().readTree(answers.toString(StandardCharsets.UTF_8));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("no JSON from " + step.get(0), e);
        }
    }

    private int serve(Path shelf) {
        List<String> arguments = new ArrayList<>(List.of("serve", "--library", shelf.toString()));
        if (port != null) {
            arguments.addAll(List.of("--port", port));
        }
        if (!noBrowser) {
            arguments.add("--open");
        }
        // With --json the one document is already out; the address then is a note.
        return others.run(common.json() ? console.answeringInNotes() : console, arguments);
    }
}
