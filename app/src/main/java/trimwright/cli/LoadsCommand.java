package trimwright.cli;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.cards.CardBooks;
import trimwright.cards.HandlingOf;
import trimwright.cards.LoadDocument;
import trimwright.cards.LoadRequest;
import trimwright.cards.LoadRun;
import trimwright.cards.LoadTable;
import trimwright.prepare.Sections;
import trimwright.prepare.TargetBooks;
import trimwright.target.TargetBook;
import trimwright.text.NoAnswerException;
import trimwright.text.Progress;
import trimwright.text.Texts;

/** Says what the sheet pulls, what hauling it takes, and what a lap leaves for turns. */
@Command(name = "loads")
public final class LoadsCommand implements Callable<Integer> {
    private static final double SECONDS_A_MINUTE = 60;

    @Mixin
    private final CommonOptions common = new CommonOptions();

    @Mixin
    private final BoatOption boat = new BoatOption();

    @Mixin
    private final WingOption wing = new WingOption();

    @Mixin
    private final SetupOption setup = new SetupOption();

    @Mixin
    private final SectionOption section = new SectionOption();

    @Option(names = "--tws", paramLabel = "KN", defaultValue = "8:24:4", descriptionKey = "loads.tws")
    private String tws;

    @Option(names = "--lap", paramLabel = "MINUTES", defaultValue = "6", descriptionKey = "loads.lap")
    private double lap;

    @Option(names = "--fitness", paramLabel = "PERCENT", defaultValue = "60,80,100", descriptionKey = "loads.fitness")
    private String fitness;

    private final Console console;
    private final TargetBooks books;

    public LoadsCommand(Console console, TargetBooks books) {
        this.console = console;
        this.books = books;
    }

    @Override
    public Integer call() throws InterruptedException {
        BoatFile file = setup.of(boat.load());
        WingSpec spec = wing.of(file.boat());
        LoadRequest request = new LoadRequest(
                file,
                spec,
                HandlingOf.boat(file),
                Steps.winds("--tws", tws),
                SECONDS_A_MINUTE * NumberCheck.within("--lap", lap, 0.5, 120),
                Steps.parse("--fitness", fitness, 10, 120).stream()
                        .map(percent -> percent / 100)
                        .toList());
        List<LoadRun.WindLoads> loads = compute(request);
        if (loads.stream().allMatch(wind -> wind.rows().isEmpty())) {
            throw new NoAnswerException(Texts.of("loads.none"));
        }
        if (common.json()) {
            console.json(section.mark(LoadDocument.of(request, loads)));
        } else {
            print(request, loads);
        }
        return CommandRunner.DONE;
    }

    private void print(LoadRequest request, List<LoadRun.WindLoads> loads) {
        console.line(Texts.of(
                "loads.title", request.file().boat().title(), request.file().words(request.wing())));
        console.text(LoadTable.sheets(request, loads));
        console.line("");
        console.line(Texts.of("loads.camber_title"));
        console.text(LoadTable.cambers(loads));
        console.line("");
        console.line(Texts.of("loads.account_title", lap));
        console.text(LoadTable.accounts(request, loads));
        console.line("");
        console.line(Texts.of("loads.haul_title"));
        console.text(LoadTable.hauls(request, loads));
        section.say(console);
        console.line(LoadDocument.source(request));
        console.line(Texts.of("loads.caution"));
    }

    private List<LoadRun.WindLoads> compute(LoadRequest request) throws InterruptedException {
        // Tables first, so that each kind of work shows its own progress.
        Sections sections = section.sections(request.wing(), books, console);
        try (Progress progress = console.targetProgress(2 * LoadRun.steps(request))) {
            TargetBook book =
                    CardBooks.of(books, request.file(), request.wing(), section.source(), request.winds(), progress);
            return LoadRun.of(request, sections, book, progress);
        }
    }
}
