package trimwright.debrief;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import trimwright.calibration.Calibration;
import trimwright.calibration.Calibrations;
import trimwright.calibration.Estimate;
import trimwright.calibration.Unknown;
import trimwright.prepare.BookCache;
import trimwright.prepare.TargetBooks;
import trimwright.prepare.TargetRequest;
import trimwright.raceday.ScenarioFile;
import trimwright.sim.Entry;
import trimwright.sim.Scenario;
import trimwright.sim.SensorFaults;
import trimwright.target.TargetBook;
import trimwright.text.Progress;
import trimwright.track.BoatTrack;
import trimwright.wind.Quantity;
import trimwright.wind.SailedWind;
import trimwright.wind.SessionClock;
import trimwright.wind.WindOptions;
import trimwright.wind.WindTrack;

/**
 * Calibrations of simulated days of twelve minutes against the faults that were drawn, where {@code
 * -Dtrimwright.study.calibration=1,2} names seeds; days stay in {@code target/study-calibration} and are used again. It
 * prints the table of docs/validation.md.
 */
@EnabledIfSystemProperty(named = "trimwright.study.calibration", matches = "[0-9,]+")
class CalibrationStudyTest {
    private static final int MINUTES = 12;

    /** What came of one unknown over all boats. */
    private static final class Count {
        private int all;
        private int within;
        private int told;
        private double off;
        private double square;
        private double error;

        void add(Estimate estimate, double truth) {
            double miss = estimate.value() - truth;
            all++;
            within += Math.abs(miss) <= 2 * estimate.standardError() ? 1 : 0;
            told += estimate.isTold() ? 1 : 0;
            off += miss;
            square += miss * miss;
            error += estimate.standardError() * estimate.standardError();
        }

        String row(Unknown unknown) {
            double unit = unknown.isRatio() ? 100 : Math.toDegrees(1);
            return String.format(
                    Locale.ROOT,
                    "| %s | %d | %d | %.0f %% | %.2f | %.2f | %.2f |%n",
                    unknown.name().toLowerCase(Locale.ROOT),
                    all,
                    told,
                    100.0 * within / all,
                    unit * Math.sqrt(square / all),
                    unit * off / all,
                    unit * Math.sqrt(error / all));
        }
    }

    private final Map<Unknown, Count> counts = new EnumMap<>(Unknown.class);

    @Test
    void tableOfTheSeedsAskedFor() throws IOException, InterruptedException {
        Path folder = Path.of(System.getProperty("trimwright.root", "."), "target", "study-calibration");
        Files.createDirectories(folder);
        TargetBook book = new TargetBooks(new BookCache(folder.resolve("books"), note -> {}))
                .of(TargetRequest.of(SimulatedDay.BOAT, SimulatedDay.wing()), Progress.NONE);
        for (String seed :
                System.getProperty("trimwright.study.calibration", "").split(",", -1)) {
            Scenario scenario = ScenarioFile.draw(Integer.parseInt(seed));
            Path day = folder.resolve(seed);
            SimulatedDay.of(scenario, MINUTES, day, book);
            add(scenario, SimulatedDay.read(List.of(day)).tracks());
        }
        counts.forEach((unknown, count) -> System.out.print(count.row(unknown)));
        assertTrue(counts.values().stream().anyMatch(count -> count.all > 0));
    }

    private void add(Scenario scenario, List<BoatTrack> tracks) {
        long from = tracks.stream().mapToLong(BoatTrack::startNanos).min().orElseThrow();
        long to = tracks.stream().mapToLong(BoatTrack::endNanos).max().orElseThrow();
        SessionClock clock = SessionClock.covering(from, to, 10);
        WindOptions options = new WindOptions(WindOptions.DEFAULT.longestGap(), null, WindOptions.Sensors.AS_LOGGED);
        List<Calibrations.Given> given = new ArrayList<>();
        for (BoatTrack track : tracks) {
            WindTrack wind = SailedWind.of(track, clock, SimulatedDay.BOAT.boat(), options);
            given.add(new Calibrations.Given(wind, SimulatedDay.BOAT.boat(), SimulatedDay.wing(), List.of()));
        }
        List<Calibration> answers = Calibrations.of(given);
        for (int i = 0; i < answers.size(); i++) {
            if (!(answers.get(i) instanceof Calibration.Found found)) {
                System.out.println(scenario.seed() + " " + answers.get(i));
                continue;
            }
            SensorFaults faults = faults(scenario, found.boat());
            for (Estimate estimate : found.estimates()) {
                double truth = truth(faults, estimate.unknown());
                if (!Double.isNaN(truth)) {
                    counts.computeIfAbsent(estimate.unknown(), unknown -> new Count())
                            .add(estimate, truth);
                }
            }
            assertTrue(given.get(i).track().has(Quantity.CAMBER));
        }
    }

    private static SensorFaults faults(Scenario scenario, String boat) {
        return scenario.entries().stream()
                .filter(entry -> entry.name().equalsIgnoreCase(boat))
                .map(Entry::faults)
                .findFirst()
                .orElseThrow();
    }

    /** NaN where the scenario has none: upwash and leeway follow from the boat. */
    private static double truth(SensorFaults faults, Unknown unknown) {
        return switch (unknown) {
            case WIND_ANGLE -> faults.wind().angle();
            case WIND_SPEED -> faults.wind().speedFactor() - 1;
            case COMPASS -> faults.attitude().compass();
            case CAMBER -> faults.wing().camber();
            case SHEET -> faults.wing().sheet();
            case TWIST -> faults.wing().twist();
            case VEER -> 0;
            case UPWASH, LEEWAY, BOAT_SPEED -> Double.NaN;
        };
    }
}
