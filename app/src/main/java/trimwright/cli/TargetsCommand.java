package trimwright.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.prepare.BookAims;
import trimwright.prepare.CostTable;
import trimwright.prepare.SectionSource;
import trimwright.prepare.SectionTables;
import trimwright.prepare.TargetBooks;
import trimwright.prepare.TargetDocument;
import trimwright.prepare.TargetRequest;
import trimwright.prepare.TargetTable;
import trimwright.season.KeptLearned;
import trimwright.season.Learned;
import trimwright.season.LearnedJson;
import trimwright.season.LearnedText;
import trimwright.target.TargetBook;
import trimwright.target.TargetGrid;
import trimwright.target.TargetPoint;
import trimwright.text.MarkText;
import trimwright.text.NoAnswerException;
import trimwright.text.Progress;
import trimwright.text.Texts;
import trimwright.text.UserInputException;
import trimwright.units.Units;

/** Computes the target book: best speed, angle and trim over wind and point of sail. */
@Command(name = "targets")
public final class TargetsCommand implements Callable<Integer> {
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

    @Mixin
    private final LearnedOption taught = new LearnedOption();

    @Mixin
    private final LibraryOption library = new LibraryOption();

    @Option(names = "--tws", paramLabel = "KN", defaultValue = "6:26:2", descriptionKey = "targets.tws")
    private String tws;

    @Option(names = "--twa", paramLabel = "DEG", defaultValue = "30:170:5", descriptionKey = "targets.twa")
    private String twa;

    @Option(names = "--fix", paramLabel = "CONTROL=VALUE", descriptionKey = "targets.fix_option")
    private final List<String> fix = new ArrayList<>();

    @Option(names = "--csv", descriptionKey = "targets.csv")
    private boolean csv;

    @Option(names = "--costs", descriptionKey = "targets.costs")
    private boolean costs;

    @Mixin
    private final TurbulenceOption turbulence = new TurbulenceOption();

    private final Console console;
    private final Folders folders;
    private final TargetBooks books;
    private final SectionTables tables;

    /** @param tables the same that the books take their sections from */
    public TargetsCommand(Console console, Folders folders, TargetBooks books, SectionTables tables) {
        this.console = console;
        this.folders = folders;
        this.books = books;
        this.tables = tables;
    }

    @Override
    public Integer call() throws InterruptedException {
        if (csv && common.json()) {
            throw new UserInputException(Texts.of("targets.json_or_csv"));
        }
        double gusty = turbulence.ratio();
        BoatFile file = setup.of(boat.load());
        WingSpec spec = wing.of(file.boat());
        List<Double> winds = Steps.winds("--tws", tws);
        List<Double> angles = Steps.parse("--twa", twa, 20, 175).stream()
                .map(Units::fromDegrees)
                .toList();
        HeldControls held = HeldControls.parse(fix, file, spec);
        TargetRequest request = new TargetRequest(
                file, spec, new TargetGrid(winds, angles), held.controls(), held.foils(), section.source());
        if (taught.isWanted() && (csv || !fix.isEmpty())) {
            // Held controls ask what the model can do with them; a table for other programs would not say what is
            // learnt.
            throw new UserInputException(Texts.of("targets.learned_alone"));
        }
        Learned learned = taught.of(file, spec, library, folders);
        TargetBook model = compute(request);
        TargetBook book = learned == null ? model : KeptLearned.book(model, learned.targets(), file);
        if (book.points().stream().noneMatch(TargetPoint::isSolved)) {
            throw new NoAnswerException(
                    Texts.of("targets.none", String.valueOf(book.points().get(0).reason())));
        }
        BookAims aims = BookAims.of(request, section.sections(spec, tables, console), model, gusty, Progress.NONE)
                .at(model, book);
        if (common.json()) {
            ObjectNode document = TargetDocument.of(request, book, aims);
            if (learned != null) {
                LearnedJson.mark(document, learned);
            }
            console.json(document);
        } else if (csv) {
            console.text(TargetTable.csv(book, aims));
        } else {
            console.line(Texts.of("targets.title", file.boat().title(), file.words(spec)));
            if (!fix.isEmpty()) {
                console.line(Texts.of("targets.held", String.join(", ", fix)));
            }
            console.text(TargetTable.text(book, aims, file.marks()));
            if (learned != null) {
                console.line(Texts.of("targets.learned"));
                console.text(LearnedText.of(learned, model));
            }
            console.line(aims.reason());
            console.line(Texts.of("targets.aim_columns"));
            String marked = MarkText.legend(file.marks(), spec.id());
            if (!marked.isEmpty()) {
                console.line(Texts.of("targets.marks", marked));
            }
            if (costs) {
                console.line(Texts.of("targets.costs_title"));
                console.text(CostTable.text(book));
            }
            if (request.section() == SectionSource.COMPUTED) {
                console.line(Texts.of("sections.computed"));
            }
            console.line(Texts.of("targets.caution"));
        }
        return CommandRunner.DONE;
    }

    private TargetBook compute(TargetRequest request) throws InterruptedException {
        TargetBook kept = books.find(request);
        if (kept != null) {
            return kept;
        }
        // Tables first, so that each kind of work shows its own progress.
        section.sections(request.wing(), tables, console);
        return console.book(books, request);
    }
}
