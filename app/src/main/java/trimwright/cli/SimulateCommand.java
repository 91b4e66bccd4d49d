package trimwright.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.boatfile.BoatFiles;
import trimwright.prepare.TargetBooks;
import trimwright.prepare.TargetRequest;
import trimwright.raceday.DayMaker;
import trimwright.raceday.DockDay;
import trimwright.raceday.MadeDay;
import trimwright.raceday.ScenarioFile;
import trimwright.sim.BoatRun;
import trimwright.sim.DockStretch;
import trimwright.sim.Scenario;
import trimwright.text.JsonOut;
import trimwright.text.Progress;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/** Sails the invented race day and writes its logs, its course and the truth. */
@Command(name = "simulate")
public final class SimulateCommand implements Callable<Integer> {
    private static final int LEAST_MINUTES = 8;
    private static final int MOST_MINUTES = 120;

    @Mixin
    private final CommonOptions common = new CommonOptions();

    @Mixin
    private final WingOption wing = new WingOption();

    @Option(names = "--boat", paramLabel = "BOAT", defaultValue = "whimbrel14", descriptionKey = "simulate.boat")
    private String boat;

    @Option(names = "--out", paramLabel = "DIR", required = true, descriptionKey = "simulate.out")
    private Path out;

    @Option(names = "--seed", paramLabel = "N", descriptionKey = "simulate.seed")
    private @Nullable Integer seed;

    @Option(names = "--scenario", paramLabel = "FILE", descriptionKey = "simulate.scenario")
    private @Nullable Path scenarioFile;

    @Option(names = "--minutes", paramLabel = "N", defaultValue = "25", descriptionKey = "simulate.minutes")
    private int minutes;

    @Option(names = "--dock", descriptionKey = "simulate.dock")
    private boolean dock;

    private final Console console;
    private final TargetBooks books;

    public SimulateCommand(Console console, TargetBooks books) {
        this.console = console;
        this.books = books;
    }

    @Override
    public Integer call() throws InterruptedException {
        if (dock) {
            return atTheDock();
        }
        NumberCheck.within("--minutes", minutes, LEAST_MINUTES, MOST_MINUTES);
        Scenario scenario = scenario();
        BoatFile file = BoatFiles.find(boat);
        WingSpec spec = wing.of(file.boat());
        int threads = Runtime.getRuntime().availableProcessors();
        DayMaker maker = new DayMaker(file.boat(), spec, console.book(books, TargetRequest.of(file, spec)), threads);
        MadeDay day;
        try (Progress progress = console.progress(
                Texts.of("simulate.progress"), DayMaker.steps(minutes), Texts.of("simulate.progress_unit"))) {
            day = maker.make(scenario, minutes, out, progress);
        }
        console.note(Texts.of("simulate.speed", day.speed()));
        if (common.json()) {
            console.json(document(scenario, day));
        } else {
            console.text(text(day));
        }
        return CommandRunner.DONE;
    }

    /** Ten minutes at the dock in place of a race. */
    private int atTheDock() {
        if (seed == null || seed < 0 || scenarioFile != null) {
            throw new UserInputException(Texts.of("simulate.dock_seed"));
        }
        BoatFile file = BoatFiles.find(boat);
        List<Path> files = DockDay.write(file.boat(), wing.of(file.boat()), seed, out);
        if (common.json()) {
            ObjectNode document = JsonOut.document("simulate/1");
            document.put("folder", out.toString()).put("seed", seed);
            document.putArray("boats").addObject().put("boat", DockDay.BOAT);
            ArrayNode list = document.putArray("files");
            files.forEach(path -> list.add(out.relativize(path).toString()));
            console.json(document);
        } else {
            console.line(Texts.of("simulate.dock_written", files.size(), out, DockDay.BEGIN, DockStretch.PULL));
        }
        return CommandRunner.DONE;
    }

    private Scenario scenario() {
        if (seed != null && scenarioFile == null) {
            if (seed < 0) {
                throw new UserInputException(Texts.of("simulate.seed_range", seed));
            }
            return ScenarioFile.draw(seed);
        }
        if (seed == null && scenarioFile != null) {
            return ScenarioFile.read(scenarioFile);
        }
        throw new UserInputException(Texts.of("simulate.seed_or_scenario"));
    }

    private String text(MadeDay day) {
        StringBuilder text = new StringBuilder();
        for (BoatRun run : day.runs()) {
            text.append(Texts.of(
                    run.hasFinished() ? "simulate.finished" : "simulate.sailing",
                    run.entry().name(),
                    run.passages().isEmpty()
                            ? 0.0
                            : run.passages().get(run.passages().size() - 1) / 60,
                    Math.max(0, run.passages().size() - 1),
                    run.turns().size()));
            text.append('\n');
        }
        return text.append(Texts.of("simulate.written", day.files().size(), out))
                .append('\n')
                .toString();
    }

    private ObjectNode document(Scenario scenario, MadeDay day) {
        ObjectNode document = JsonOut.document("simulate/1");
        document.put("folder", out.toString());
        document.put("seed", scenario.seed());
        ArrayNode boats = document.putArray("boats");
        for (BoatRun run : day.runs()) {
            ObjectNode node = boats.addObject();
            node.put("boat", run.entry().name());
            node.put("finished", run.hasFinished());
            node.put("turns", run.turns().size());
            ArrayNode passages = node.putArray("passages_s");
            run.passages().forEach(time -> passages.add(time));
        }
        ArrayNode files = document.putArray("files");
        day.files().forEach(path -> files.add(out.relativize(path).toString()));
        return document;
    }
}
