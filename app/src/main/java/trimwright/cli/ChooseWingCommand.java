package trimwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import trimwright.boat.FoilSpec;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.choice.CourseLegs;
import trimwright.choice.ForecastInput;
import trimwright.choice.SetupDocument;
import trimwright.choice.SetupRequest;
import trimwright.choice.SetupRun;
import trimwright.choice.SetupTable;
import trimwright.coursefile.CourseFiles;
import trimwright.prepare.TargetBooks;
import trimwright.setup.Forecast;
import trimwright.setup.GustProcess;
import trimwright.setup.RaceLeg;
import trimwright.setup.SetupChoice;
import trimwright.setup.TurnLosses;
import trimwright.text.NoAnswerException;
import trimwright.text.Progress;
import trimwright.text.Texts;
import trimwright.text.UserInputException;
import trimwright.units.Units;

/** Compares wings, foil sets and crew masses over a forecast and a course. */
@Command(name = "choose-wing")
public final class ChooseWingCommand implements Callable<Integer> {
    @Mixin
    private final CommonOptions common = new CommonOptions();

    @Mixin
    private final BoatOption boat = new BoatOption();

    @Option(names = "--wing", paramLabel = "ID,ID", descriptionKey = "choose.wing")
    private @Nullable String wings;

    @Option(names = "--foils", paramLabel = "ID,ID", descriptionKey = "choose.foils")
    private @Nullable String foils;

    @Option(names = "--crew-mass", paramLabel = "KG,KG", descriptionKey = "choose.crew_masses")
    private @Nullable String crewMasses;

    @Option(names = "--forecast", paramLabel = "FILE", descriptionKey = "choose.forecast")
    private @Nullable Path forecastFile;

    @Option(names = "--wind", paramLabel = "KN", descriptionKey = "choose.wind")
    private @Nullable Double wind;

    @Option(names = "--wind-spread", paramLabel = "KN", descriptionKey = "choose.wind_spread")
    private @Nullable Double windSpread;

    @Option(names = "--from", paramLabel = "DEG", descriptionKey = "choose.from")
    private @Nullable Double from;

    @Option(names = "--shift", paramLabel = "DEG", descriptionKey = "choose.shift")
    private @Nullable Double shift;

    @Mixin
    private final TurbulenceOption turbulence = new TurbulenceOption();

    @Option(names = "--gust-factor", paramLabel = "RATIO", descriptionKey = "choose.gust_factor")
    private @Nullable Double gustFactor;

    @Option(names = "--current", paramLabel = "KN", descriptionKey = "choose.current")
    private @Nullable Double current;

    @Option(names = "--current-to", paramLabel = "DEG", descriptionKey = "choose.current_to")
    private @Nullable Double currentTo;

    @Option(names = "--course", paramLabel = "FILE", descriptionKey = "choose.course")
    private @Nullable Path course;

    @Option(names = "--leg", paramLabel = "METRES", defaultValue = "1500", descriptionKey = "choose.leg")
    private double leg;

    @Option(names = "--laps", paramLabel = "COUNT", defaultValue = "2", descriptionKey = "choose.laps")
    private int laps;

    @Option(names = "--turns", paramLabel = "COUNT", descriptionKey = "choose.turns")
    private @Nullable Double turns;

    private final Console console;
    private final TargetBooks books;

    public ChooseWingCommand(Console console, TargetBooks books) {
        this.console = console;
        this.books = books;
    }

    @Override
    public Integer call() throws InterruptedException {
        BoatFile file = boat.load();
        ForecastInput input = input();
        Forecast forecast = input.forecast();
        SetupRequest request = new SetupRequest(
                file, wings(file), foilSets(file), crewMasses(file), forecast, legs(input, forecast), turns());
        SetupChoice choice = compute(request);
        if (choice.setups().stream()
                .allMatch(setup -> Double.isNaN(setup.asForecast().time()))) {
            throw new NoAnswerException(Texts.of("choose.none"));
        }
        if (common.json()) {
            console.json(SetupDocument.of(request, choice));
        } else {
            print(request, choice);
        }
        return CommandRunner.DONE;
    }

    private ForecastInput input() {
        return withGusts(forecastFile == null ? ForecastInput.none() : ForecastInput.read(forecastFile))
                .with("wind_kn", checked("--wind", wind, 2, 40))
                .with("wind_spread_kn", checked("--wind-spread", windSpread, 0, 15))
                .with("from_deg", checked("--from", from, 0, 360))
                .with("shift_deg", checked("--shift", shift, 0, 45))
                .with("current_kn", checked("--current", current, 0, 10))
                .with("current_to_deg", checked("--current-to", currentTo, 0, 360));
    }

    /** What was typed of gusts stands in place of all that the file says of them. */
    private ForecastInput withGusts(ForecastInput input) {
        Double gusty = turbulence.findRatio();
        Double factor = checked("--gust-factor", gustFactor, 1.02, 2.5);
        ForecastInput other = gusty == null && factor == null
                ? input
                : input.without("turbulence_ratio").without("gust_factor_ratio");
        return other.with("turbulence_ratio", gusty).with("gust_factor_ratio", factor);
    }

    private static @Nullable Double checked(String option, @Nullable Double value, double least, double most) {
        return value == null ? null : Double.valueOf(NumberCheck.within(option, value, least, most));
    }

    private List<WingSpec> wings(BoatFile file) {
        if (wings == null) {
            return file.boat().wings();
        }
        List<WingSpec> chosen = new ArrayList<>();
        for (String id : names(wings)) {
            chosen.add(WingOption.of(file.boat(), id));
        }
        return chosen;
    }

    private List<String> foilSets(BoatFile file) {
        return foils == null ? file.boat().foilSets().stream().map(FoilSpec::id).toList() : names(foils);
    }

    private static List<String> names(String given) {
        return Arrays.stream(given.split(",", -1)).map(String::strip).distinct().toList();
    }

    private List<Double> crewMasses(BoatFile file) {
        return crewMasses == null
                ? List.of(file.boat().crew().mass())
                : Steps.parse("--crew-mass", crewMasses, 40, 20 * 140);
    }

    private List<RaceLeg> legs(ForecastInput input, Forecast forecast) {
        if (course == null) {
            NumberCheck.within("--leg", leg, 50, 50_000);
            NumberCheck.within("--laps", laps, 1, 50);
            return CourseLegs.upAndDown(forecast.from(), leg, laps);
        }
        if (!input.hasDirection()) {
            throw new UserInputException(Texts.of("choose.no_direction"));
        }
        return CourseLegs.of(CourseFiles.read(course));
    }

    private TurnLosses turns() {
        return turns == null
                ? TurnLosses.USUAL
                : TurnLosses.USUAL.withPerLeg(NumberCheck.within("--turns", turns, 0, 50));
    }

    private void print(SetupRequest request, SetupChoice choice) {
        Forecast forecast = request.forecast();
        console.line(Texts.of(
                "choose.title",
                request.file().boat().title(),
                Units.toKnots(forecast.meanWind()),
                Units.toKnots(forecast.spread()),
                Units.toDegrees(forecast.swing()),
                100 * forecast.turbulence(),
                GustProcess.gustFactor(forecast.turbulence(), forecast.meanWind()),
                Units.toKnots(forecast.current()),
                request.legs().stream().mapToDouble(RaceLeg::length).sum() / 1000,
                request.legs().size()));
        console.text(SetupTable.setups(request, choice));
        console.line("");
        console.line(Texts.of("choose.regret"));
        console.text(SetupTable.regrets(choice));
        console.line("");
        console.line(choice.recommended() == null ? Texts.of("choose.none_recommended") : Texts.of("choose.interval"));
        console.line(Texts.of("choose.caution"));
    }

    private SetupChoice compute(SetupRequest request) throws InterruptedException {
        try (Progress progress = console.targetProgress(SetupRun.steps(request))) {
            return SetupRun.of(request, books, progress);
        }
    }
}
