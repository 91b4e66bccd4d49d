package trimwright.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.cards.TurnCardPdf;
import trimwright.crew.TurnKind;
import trimwright.drills.DrillBoats;
import trimwright.drills.TurnPlanDocument;
import trimwright.drills.TurnPlanRun;
import trimwright.drills.TurnWords;
import trimwright.plans.KeptPlans;
import trimwright.prepare.TargetBooks;
import trimwright.text.Progress;
import trimwright.text.Texts;
import trimwright.text.UserInputException;
import trimwright.turn.TurnBegin;
import trimwright.turn.TurnSetup;

/** Finds what to do in a turn, by which cue. */
@Command(name = "turn-plan")
public final class TurnPlanCommand implements Callable<Integer> {
    @Mixin
    private final CommonOptions common = new CommonOptions();

    @Mixin
    private final DrillOptions drills = new DrillOptions();

    @Option(names = "--kind", paramLabel = "KIND", defaultValue = "gybe", descriptionKey = "turnplan.kind")
    private String kind;

    @Option(names = "--begin", paramLabel = "HOW", defaultValue = "foils", descriptionKey = "turnplan.begin")
    private String begin;

    @Mixin
    private final TurbulenceOption turbulence = new TurbulenceOption();

    @Option(
            names = "--tries",
            paramLabel = "N",
            defaultValue = "" + TurnPlanRun.TRIES,
            descriptionKey = "turnplan.tries")
    private int tries;

    @Option(
            names = "--turns",
            paramLabel = "N",
            defaultValue = "" + TurnPlanRun.CHECKED,
            descriptionKey = "turnplan.turns")
    private int turns;

    @Option(names = "--keep", descriptionKey = "turnplan.keep")
    private boolean keep;

    @Option(names = "--pdf", paramLabel = "FILE", descriptionKey = "turnplan.pdf")
    private @Nullable Path pdf;

    @Mixin
    private final LibraryOption library = new LibraryOption();

    private final Console console;
    private final Folders folders;
    private final Clock clock;
    private final TargetBooks books;

    public TurnPlanCommand(Console console, Folders folders, TargetBooks books, Clock clock) {
        this.clock = clock;
        this.folders = folders;
        this.console = console;
        this.books = books;
    }

    @Override
    public Integer call() throws InterruptedException {
        drills.check();
        double gusty = turbulence.ratio();
        NumberCheck.within("--tries", tries, 8, 2000);
        NumberCheck.within("--turns", turns, 4, 2000);
        TurnKind turn = TurnWords.kind(kind);
        TurnBegin how = TurnWords.begin(begin);
        BoatFile file = drills.file();
        WingSpec spec = drills.wing(file);
        TurnSetup setup =
                DrillBoats.turn(turn, how, file, spec, drills.book(file, books, console), drills.wind(), gusty);
        TurnPlanRun.Plans plans;
        try (Progress progress = console.progress(Texts.of("turnplan.progress"), TurnPlanRun.steps(tries), "")) {
            plans = TurnPlanRun.of(setup, TurnPlanRun.chanceOf(file), tries, turns, progress);
        }
        ObjectNode document = TurnPlanDocument.of(file, plans);
        String kept = "";
        if (keep) {
            kept = Texts.of("turnplan.kept", new KeptPlans(library.folder(folders)).keep(document)) + "\n";
        }
        if (pdf != null) {
            write(pdf, TurnCardPdf.bytes(document, LocalDate.now(clock)));
        }
        if (common.json()) {
            console.json(document);
        } else {
            console.text(TurnPlanDocument.text(plans) + kept);
        }
        return CommandRunner.DONE;
    }

    private static void write(Path target, byte[] bytes) {
        try {
            Files.write(target, bytes);
        } catch (IOException e) {
            throw new UserInputException(
                    Texts.of("card.not_written", target, e.getClass().getSimpleName()), e);
        }
    }
}
