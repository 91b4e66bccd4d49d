package trimwright.choice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.platform.Platform;
import trimwright.prepare.InParallel;
import trimwright.prepare.TargetBooks;
import trimwright.prepare.TargetRequest;
import trimwright.prepare.TargetRun;
import trimwright.setup.AimedLeg;
import trimwright.setup.AimedSailing;
import trimwright.setup.Forecast;
import trimwright.setup.RaceLeg;
import trimwright.setup.RaceModel;
import trimwright.setup.SetupChoice;
import trimwright.target.TargetBook;
import trimwright.text.Progress;
import trimwright.units.Angles;

/** Computes the choice: a target book a setup, the gusts that pass a limit on each leg, and the race in the forecast's winds. */
public final class SetupRun {
    private SetupRun() {}

    /** Steps that {@link Progress} is told about: one a wind of each book, one a wind whose gusts are looked at. */
    public static long steps(SetupRequest request) {
        return request.setups().size()
                * (request.grid().winds().size()
                        + (long) request.gustWinds().size() * angles(request).size());
    }

    /** All setups, in the order of the request. */
    public static SetupChoice of(SetupRequest request, TargetBooks books, Progress progress)
            throws InterruptedException {
        List<SetupChoice.Setup> setups = new ArrayList<>();
        for (SetupRequest.Sailed sailed : request.setups()) {
            setups.add(setup(request, sailed.file(), sailed.wing(), books, progress));
        }
        return new SetupChoice(setups, request.chanceMax());
    }

    private static SetupChoice.Setup setup(
            SetupRequest request, BoatFile file, WingSpec wing, TargetBooks books, Progress progress)
            throws InterruptedException {
        TargetBook book = books.of(new TargetRequest(file, wing, request.grid(), Map.of()), progress);
        RaceModel model = new RaceModel(book, aims(request, file, wing, book, progress), request.turns());
        Forecast forecast = request.forecast();
        double less = forecast.meanWind() - SetupChoice.OTHER_WIND;
        double more = forecast.meanWind() + SetupChoice.OTHER_WIND;
        return new SetupChoice.Setup(
                wing.id(),
                file.boat().foils().id(),
                file.boat().crew().mass(),
                model.outlook(forecast, request.legs()),
                model.outlook(forecast.withMean(Math.max(less, SetupChoice.OTHER_WIND / 3)), request.legs()),
                model.outlook(forecast.withMean(more), request.legs()));
    }

    /** Angle of each leg to the wind (rad), each once; equal ones of many laps are looked at together. */
    private static List<Double> angles(SetupRequest request) {
        return request.legs().stream()
                .map(leg -> angle(request, leg))
                .distinct()
                .toList();
    }

    private static double angle(SetupRequest request, RaceLeg leg) {
        return Math.abs(Angles.difference(leg.bearing(), request.forecast().from()));
    }

    /** One task: a wind and an angle of a leg. */
    private record Task(double wind, double angle) {}

    private static Map<RaceLeg, AimedLeg> aims(
            SetupRequest request, BoatFile file, WingSpec wing, TargetBook book, Progress progress)
            throws InterruptedException {
        Platform platform = TargetRun.platformOf(file.boat(), wing);
        List<Double> winds = request.gustWinds();
        List<Task> tasks = new ArrayList<>();
        for (double angle : angles(request)) {
            winds.forEach(wind -> tasks.add(new Task(wind, angle)));
        }
        List<AimedSailing> found = InParallel.map("gusts", tasks, task -> {
            AimedSailing one = AimedSailing.of(
                    platform, TargetRun.AIR, TargetRun.water(), book, task.wind(), task.angle(), request.day());
            progress.done(1);
            return one;
        });
        Map<Double, AimedLeg> byAngle = new LinkedHashMap<>();
        for (int i = 0; i < tasks.size() && !winds.isEmpty(); i += winds.size()) {
            byAngle.put(tasks.get(i).angle(), new AimedLeg(winds, found.subList(i, i + winds.size())));
        }
        Map<RaceLeg, AimedLeg> aims = new LinkedHashMap<>();
        for (RaceLeg leg : request.legs()) {
            AimedLeg line = byAngle.get(angle(request, leg));
            if (line != null) {
                aims.put(leg, line);
            }
        }
        return aims;
    }
}
