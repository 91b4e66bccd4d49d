package trimwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.cards.CardBooks;
import trimwright.cards.CardSide;
import trimwright.cards.CardSides;
import trimwright.cards.TrimCard;
import trimwright.cards.TrimCardPdf;
import trimwright.cards.TrimCardRequest;
import trimwright.prepare.Sections;
import trimwright.prepare.TargetBooks;
import trimwright.target.TargetBook;
import trimwright.text.JsonOut;
import trimwright.text.NoAnswerException;
import trimwright.text.Progress;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/** Prints the trim card. */
@Command(name = "card")
public final class CardCommand implements Callable<Integer> {
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

    @Option(names = "--tws", paramLabel = "KN", defaultValue = "8:24:4", descriptionKey = "card.tws")
    private String tws;

    @Option(names = "--sides", paramLabel = "NAMES", descriptionKey = "card.sides")
    private @Nullable String sides;

    @Mixin
    private final TurbulenceOption turbulence = new TurbulenceOption();

    @Option(names = "--date", paramLabel = "YYYY-MM-DD", descriptionKey = "card.date")
    private @Nullable String date;

    @Option(names = "--out", paramLabel = "FILE", descriptionKey = "card.out")
    private @Nullable String out;

    private final Console console;
    private final TargetBooks books;
    private final Clock clock;

    /** @param clock gives the day that stands on a card where none is named */
    public CardCommand(Console console, TargetBooks books, Clock clock) {
        this.console = console;
        this.books = books;
        this.clock = clock;
    }

    @Override
    public Integer call() throws InterruptedException {
        BoatFile file = setup.of(boat.load());
        WingSpec spec = wing.of(file.boat());
        List<Double> winds = Steps.winds("--tws", tws);
        if (winds.size() > TrimCardRequest.MOST_WINDS) {
            throw new UserInputException(Texts.of("card.too_many", winds.size(), TrimCardRequest.MOST_WINDS));
        }
        List<CardSide> chosen = sides(file);
        TrimCardRequest request =
                new TrimCardRequest(file, spec, winds, chosen, date(), turbulence.ratio(), section.source());
        Path target = target(file, spec);
        List<TrimCard.Side> pages = compute(request);
        if (pages.stream().flatMap(one -> one.rows().stream()).allMatch(row -> row.reason() != null)) {
            throw new NoAnswerException(Texts.of("card.none"));
        }
        write(target, TrimCardPdf.bytes(request, pages));
        if (common.json()) {
            console.json(JsonOut.document("card/1", file.hash())
                    .put("boat", file.boat().name())
                    .put("wing", spec.id())
                    .put("foils", file.boat().foils().id())
                    .put("crew_mass_kg", file.boat().crew().mass())
                    .put("date", request.date().toString())
                    .put("section", section.source().key())
                    .put("turbulence_ratio", request.turbulence())
                    .put("file", target.toString())
                    .put("sides", pages.size()));
        } else {
            console.line(Texts.of("card.written", target, pages.size()));
            console.line(Texts.of("web.caution.short"));
        }
        return CommandRunner.DONE;
    }

    private List<CardSide> sides(BoatFile file) {
        if (sides == null) {
            return CardSide.listFor(file);
        }
        Set<CardSide> chosen = new TreeSet<>();
        for (String name : sides.split(",", -1)) {
            List<CardSide> named = CardSide.listNamed(name.strip());
            if (named.isEmpty()) {
                throw new UserInputException(Texts.of("card.no_side", name));
            }
            chosen.addAll(named);
        }
        return List.copyOf(chosen);
    }

    private LocalDate date() {
        if (date == null) {
            return LocalDate.now(clock);
        }
        try {
            return LocalDate.parse(date);
        } catch (DateTimeParseException e) {
            throw new UserInputException(Texts.of("card.no_date", date), e);
        }
    }

    private Path target(BoatFile file, WingSpec spec) {
        String name = out == null ? file.boat().name() + "-" + spec.id() + "-card.pdf" : out;
        try {
            Path target = Path.of(name);
            Path folder = target.toAbsolutePath().getParent();
            if (folder == null || !Files.isDirectory(folder) || Files.isDirectory(target)) {
                throw new UserInputException(Texts.of("card.not_written", target, Texts.of("card.no_folder")));
            }
            return target;
        } catch (InvalidPathException e) {
            throw new UserInputException(Texts.of("card.not_written", name, e.getReason()), e);
        }
    }

    private static void write(Path target, byte[] bytes) {
        try {
            Files.write(target, bytes);
        } catch (IOException e) {
            throw new UserInputException(
                    Texts.of("card.not_written", target, e.getClass().getSimpleName()), e);
        }
    }

    private List<TrimCard.Side> compute(TrimCardRequest request) throws InterruptedException {
        // Tables first, so that each kind of work shows its own progress.
        Sections sections = section.sections(request.wing(), books, console);
        try (Progress progress = console.targetProgress(request.winds().size())) {
            TargetBook book =
                    CardBooks.of(books, request.file(), request.wing(), section.source(), request.winds(), progress);
            return CardSides.of(request, sections, book);
        }
    }
}
