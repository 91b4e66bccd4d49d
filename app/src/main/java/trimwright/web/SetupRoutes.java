package trimwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.boat.FoilSpec;
import trimwright.boatfile.BoatFile;
import trimwright.choice.CourseLegs;
import trimwright.choice.ForecastInput;
import trimwright.choice.ForecastKeys;
import trimwright.choice.SetupDocument;
import trimwright.choice.SetupRequest;
import trimwright.choice.SetupRun;
import trimwright.keyfile.Key;
import trimwright.prepare.TargetBooks;
import trimwright.setup.Forecast;
import trimwright.setup.TurnLosses;
import trimwright.text.Progress;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/** The choice of wing and crew over a forecast, up and down the wind: as {@code trimwright choose-wing} says it. */
final class SetupRoutes implements Routes {
    /** Chosen: forecasts of one morning. */
    private static final int KEPT = 12;

    /** Legs and laps where nothing is said: those of the command. */
    private static final double LEG = 1500;

    private static final double LAPS = 2;

    private final BoatShelf boats;
    private final TargetBooks books;
    private final BackgroundWork<MadeDocument> work = new BackgroundWork<>(KEPT);

    SetupRoutes(BoatShelf boats, TargetBooks books) {
        this.boats = boats;
        this.books = books;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/api/choose-wing", this::answer);
    }

    private void answer(Context ctx) {
        SetupRequest request = request(ctx);
        String key = ctx.queryString() + " " + request.file().hash();
        work.answer(ctx, key, SetupRun.steps(request), progress -> made(request, progress));
    }

    private MadeDocument made(SetupRequest request, Progress progress) {
        try {
            return new MadeDocument(Json.bytes(SetupDocument.of(request, SetupRun.of(request, books, progress))));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the workbench stops", e);
        }
    }

    private SetupRequest request(Context ctx) {
        BoatFile file = boats.get(Query.text(ctx, "boat"));
        ForecastInput input = ForecastInput.none();
        for (Key key : ForecastKeys.NUMBERS) {
            if (ctx.queryParam(key.path()) != null) {
                input = input.with(key.path(), Query.number(ctx, key.path(), key.min(), key.max()));
            }
        }
        if (!input.hasGusts()) {
            input = input.with("turbulence_ratio", Query.turbulence(ctx));
        }
        Forecast forecast = input.forecast();
        double leg = Query.numberOr(ctx, "leg_m", 50, 50_000, LEG);
        int laps = (int) Query.numberOr(ctx, "laps", 1, 50, LAPS);
        return new SetupRequest(
                file,
                file.boat().wings(),
                foilSets(ctx, file),
                crewMasses(ctx, file),
                forecast,
                CourseLegs.upAndDown(forecast.from(), leg, laps),
                TurnLosses.USUAL.withPerLeg(Query.numberOr(ctx, "turns", 0, 50, TurnLosses.USUAL.perLeg())));
    }

    /** Those named, with commas; all of the file where none is. */
    private static List<String> foilSets(Context ctx, BoatFile file) {
        @Nullable String given = ctx.queryParam("foils");
        return given == null || given.isBlank()
                ? file.boat().foilSets().stream().map(FoilSpec::id).toList()
                : Arrays.stream(given.split(",", -1))
                        .map(String::strip)
                        .distinct()
                        .toList();
    }

    private static List<Double> crewMasses(Context ctx, BoatFile file) {
        @Nullable String given = ctx.queryParam("crew_mass_kg");
        if (given == null || given.isBlank()) {
            return List.of(file.boat().crew().mass());
        }
        try {
            return Arrays.stream(given.split(",", -1))
                    .map(text -> Double.valueOf(text.strip()))
                    .distinct()
                    .sorted()
                    .toList();
        } catch (NumberFormatException e) {
            throw new UserInputException(Texts.of("choose.crew_masses_no_numbers", given), e);
        }
    }

    @Override
    public void close() {
        work.close();
    }
}
