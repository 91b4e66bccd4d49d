package trimwright.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.cards.CardBooks;
import trimwright.cards.GustDocument;
import trimwright.cards.GustRequest;
import trimwright.cards.GustRun;
import trimwright.cards.GustTable;
import trimwright.cards.HandlingOf;
import trimwright.prepare.Sections;
import trimwright.prepare.TargetBooks;
import trimwright.target.TargetBook;
import trimwright.text.NoAnswerException;
import trimwright.text.Progress;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/** Says what a gust does to a boat at its target and what to do about it, first and then. */
@Command(name = "gust")
public final class GustCommand implements Callable<Integer> {
    private static final double WIND_LEAST = 1;
    private static final double WIND_MOST = 40;
    private static final double SHIFT_MOST = 20;

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

    @Option(names = "--tws", paramLabel = "KN", defaultValue = "14", descriptionKey = "gust.tws")
    private double tws;

    @Option(names = "--twa", paramLabel = "DEG", descriptionKey = "gust.twa")
    private @Nullable Double twa;

    @Option(names = "--change", paramLabel = "KN", defaultValue = "-4,-2,2,4,6", descriptionKey = "gust.change")
    private String change;

    @Option(names = "--shift", paramLabel = "DEG", descriptionKey = "gust.shift")
    private @Nullable String shift;

    private final Console console;
    private final TargetBooks books;

    public GustCommand(Console console, TargetBooks books) {
        this.console = console;
        this.books = books;
    }

    @Override
    public Integer call() throws InterruptedException {
        BoatFile file = setup.of(boat.load());
        WingSpec spec = wing.of(file.boat());
        NumberCheck.within("--tws", tws, WIND_LEAST, WIND_MOST);
        if (twa != null) {
            NumberCheck.within("--twa", twa, 30, 170);
        }
        List<Double> changes = Steps.parse("--change", change, WIND_LEAST - tws, WIND_MOST - tws);
        if (changes.contains(0.0)) {
            throw new UserInputException(Texts.of("gust.no_change"));
        }
        GustRequest request = new GustRequest(file, spec, HandlingOf.boat(file), tws, twa, withShifts(changes));
        List<GustRun.PointGusts> points = compute(request);
        if (points.isEmpty()) {
            throw new NoAnswerException(Texts.of("gust.none", tws));
        }
        if (common.json()) {
            console.json(section.mark(GustDocument.of(request, points)));
        } else {
            print(request, points);
        }
        return CommandRunner.DONE;
    }

    private List<GustRequest.Change> withShifts(List<Double> changes) {
        return shift == null
                ? GustRequest.usual(changes)
                : GustRequest.each(changes, Steps.parse("--shift", shift, -SHIFT_MOST, SHIFT_MOST));
    }

    private void print(GustRequest request, List<GustRun.PointGusts> points) {
        console.line(Texts.of(
                "gust.title", request.file().boat().title(), request.file().words(request.wing())));
        for (GustRun.PointGusts gusts : points) {
            console.line("");
            console.line(GustTable.title(gusts.point()));
            console.text(GustTable.text(request, gusts.point(), gusts.gusts()));
            if (gusts.gusts().stream().anyMatch(gust -> !gust.swings().isEmpty())) {
                console.line("");
                console.line(Texts.of("gust.time_title"));
                console.text(GustTable.inTime(gusts.gusts()));
            }
        }
        console.line("");
        section.say(console);
        console.line(Texts.of("gust.caution"));
    }

    private List<GustRun.PointGusts> compute(GustRequest request) throws InterruptedException {
        // Tables first, so that each kind of work shows its own progress.
        Sections sections = section.sections(request.wing(), books, console);
        try (Progress progress = console.targetProgress(request.winds().size())) {
            TargetBook book =
                    CardBooks.of(books, request.file(), request.wing(), section.source(), request.winds(), progress);
            return GustRun.of(request, sections, book);
        }
    }
}
