package trimwright.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.card.TakeOffCard;
import trimwright.cards.CardBooks;
import trimwright.cards.TakeOffDocument;
import trimwright.cards.TakeOffRequest;
import trimwright.cards.TakeOffRun;
import trimwright.cards.TakeOffTable;
import trimwright.prepare.Sections;
import trimwright.prepare.TargetBooks;
import trimwright.target.TargetBook;
import trimwright.text.Progress;
import trimwright.text.Texts;

/** Says in which wind and at which angle the boat takes off, how she is trimmed for it, and whether it pays. */
@Command(name = "takeoff")
public final class TakeOffCommand implements Callable<Integer> {
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

    @Option(names = "--tws", paramLabel = "KN", defaultValue = "6:12:1", descriptionKey = "takeoff.tws")
    private String tws;

    private final Console console;
    private final TargetBooks books;

    public TakeOffCommand(Console console, TargetBooks books) {
        this.console = console;
        this.books = books;
    }

    @Override
    public Integer call() throws InterruptedException {
        BoatFile file = setup.of(boat.load());
        WingSpec spec = wing.of(file.boat());
        TakeOffRequest request = new TakeOffRequest(file, spec, Steps.winds("--tws", tws));
        TakeOffRun.TakeOffs takeOffs = compute(request);
        if (common.json()) {
            console.json(section.mark(TakeOffDocument.of(request, takeOffs)));
        } else {
            print(request, takeOffs);
        }
        return CommandRunner.DONE;
    }

    private void print(TakeOffRequest request, TakeOffRun.TakeOffs takeOffs) {
        console.line(Texts.of(
                "takeoff.title", request.file().boat().title(), request.file().words(request.wing())));
        console.text(TakeOffTable.text(takeOffs.rows()));
        console.line("");
        console.line(Texts.of("takeoff.time_title"));
        console.text(TakeOffTable.inTime(takeOffs));
        TakeOffCard.LastUp last = takeOffs.last();
        console.line(last == null ? Texts.of("takeoff.never") : TakeOffTable.last(last.wind(), last.state()));
        section.say(console);
        console.line(Texts.of("takeoff.caution"));
    }

    private TakeOffRun.TakeOffs compute(TakeOffRequest request) throws InterruptedException {
        // Tables first, so that each kind of work shows its own progress.
        Sections sections = section.sections(request.wing(), books, console);
        try (Progress progress = console.targetProgress(2 * TakeOffRun.steps(request))) {
            TargetBook book = CardBooks.exactly(
                    books, request.file(), request.wing(), section.source(), request.winds(), progress);
            return TakeOffRun.of(request, sections, book, progress);
        }
    }
}
