package trimwright.debrief;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import trimwright.compare.Cause;
import trimwright.crew.Habits;
import trimwright.crew.Temper;
import trimwright.crew.Turning;
import trimwright.prepare.BookCache;
import trimwright.prepare.TargetBooks;
import trimwright.prepare.TargetRequest;
import trimwright.raceday.LongLegs;
import trimwright.raceday.ScenarioFile;
import trimwright.sim.Entry;
import trimwright.sim.Scenario;
import trimwright.sim.SensorFaults;
import trimwright.target.TargetBook;
import trimwright.text.Progress;
import trimwright.weather.WeatherSpec;
import trimwright.wind.WindCorrection;

/**
 * Lines of the ledger against twins: the same boats, wind, instruments and turns, one cause removed. It takes some minutes a
 * seed, so it runs only where {@code -Dtrimwright.twins=101,102} names seeds; it prints the table of docs/validation.md.
 */
@EnabledIfSystemProperty(named = "trimwright.twins", matches = "[0-9,]+")
class TwinStudyTest {
    /** Whether instruments read what is, to tell what the ledger itself gets wrong. */
    private static final boolean PERFECT = Boolean.getBoolean("trimwright.twins.perfect");

    /** The race from which wind sensors are known, as of any day (min). */
    private static final int RACE_MINUTES = 25;

    /** Header on which all tack, lift on which all gybe (rad): small, so that a leg has turns without a boundary. */
    private static final double SHIFT = Math.toRadians(2.5);

    private final Map<String, WindCorrection> corrections = new HashMap<>();
    private final Map<String, TwinCount> counts = new LinkedHashMap<>();
    private final Map<Cause, Double> sizes = new EnumMap<>(Cause.class);
    private final Map<Cause, Double> sums = new EnumMap<>(Cause.class);
    private double totals;
    private double truths;
    private int legs;

    @Test
    void linesOfTheSeedsAskedFor() throws IOException, InterruptedException {
        Path folder = Path.of(System.getProperty("trimwright.root", "."), "target", "twins");
        Files.createDirectories(folder);
        TargetBook book = new TargetBooks(new BookCache(folder.resolve("books"), note -> {}))
                .of(TargetRequest.of(SimulatedDay.BOAT, SimulatedDay.wing()), Progress.NONE);
        for (String seed : System.getProperty("trimwright.twins", "").split(",", -1)) {
            compare(
                    ScenarioFile.draw(Integer.parseInt(seed)),
                    folder.resolve(PERFECT ? seed + "-perfect" : seed),
                    book);
            System.out.println("up to seed " + seed);
            print();
        }
        assertTrue(legs > 0);
    }

    private void compare(Scenario drawn, Path folder, TargetBook book) throws IOException {
        corrections.clear();
        if (!PERFECT) {
            SimulatedDay.of(drawn, RACE_MINUTES, folder.resolve("race"), book)
                    .debrief(null)
                    .boats()
                    .forEach(boat -> corrections.put(boat.boat(), boat.wind().correction()));
        }
        Path base = folder.resolve("base");
        List<List<TwinLegs.Judged>> with =
                judge(with(drawn, Scenario.Wakes.NONE, Turning.SAILED, true), base, base, book);
        List<List<TwinLegs.Judged>> clean =
                judge(with(drawn, Scenario.Wakes.NONE, Turning.SAILED, false), folder.resolve("clean"), base, book);
        List<List<TwinLegs.Judged>> atOnce =
                judge(with(drawn, Scenario.Wakes.NONE, Turning.AT_ONCE, true), folder.resolve("at-once"), base, book);
        List<List<TwinLegs.Judged>> wakes =
                judge(with(drawn, Scenario.Wakes.FELT, Turning.SAILED, true), folder.resolve("wakes"), base, book);
        for (int boat = 0; boat < with.size(); boat++) {
            add(habit(drawn.entries().get(boat).habits()), with.get(boat), clean.get(boat));
            add("turns", with.get(boat), atOnce.get(boat));
            add("wakes", wakes.get(boat), with.get(boat));
            for (TwinLegs.Judged leg : with.get(boat)) {
                legs++;
                totals += leg.total();
                truths += leg.trueLoss();
                leg.lines().forEach((cause, loss) -> {
                    sums.merge(cause, loss, Double::sum);
                    sizes.merge(cause, Math.abs(loss), Double::sum);
                });
            }
        }
    }

    private void add(String name, List<TwinLegs.Judged> of, List<TwinLegs.Judged> twin) {
        for (int i = 0; i < of.size(); i++) {
            String on = " " + of.get(i).way().name().toLowerCase(Locale.ROOT);
            counts.computeIfAbsent(name + on, TwinCount::new).add(of.get(i), twin.get(i));
        }
    }

    private static String habit(Habits habits) {
        List<String> names = new ArrayList<>();
        if (habits.momentShare() < 1) {
            names.add("moment");
        }
        if (habits.twist() != 0) {
            names.add("twist");
        }
        if (habits.rideHeight() != 0) {
            names.add("ride height");
        }
        if (habits.lateEase() > 0) {
            names.add("late ease");
        }
        if (habits.lateInversion() > 0) {
            names.add("late inversion");
        }
        return names.isEmpty() ? "no habit" : String.join(" and ", names);
    }

    private static Cause[] causes(String name) {
        if (name.startsWith("moment") || name.startsWith("twist") || name.startsWith("late ease")) {
            return new Cause[] {Cause.TRIM};
        }
        if (name.startsWith("ride height")) {
            return new Cause[] {Cause.HEEL_HEIGHT};
        }
        return name.startsWith("wakes")
                ? new Cause[] {Cause.OTHER_AIR}
                : new Cause[] {Cause.TURNS_FREE, Cause.TURNS_FORCED};
    }

    private List<List<TwinLegs.Judged>> judge(Scenario scenario, Path folder, Path winds, TargetBook book)
            throws IOException {
        for (LongLegs.Way way : LongLegs.Way.values()) {
            Path place = TwinLegs.of(folder, way);
            if (!Files.exists(place.resolve("course.toml"))) {
                LongLegs.make(
                        scenario, way, TwinLegs.SECONDS, SimulatedDay.BOAT.boat(), SimulatedDay.wing(), book, place);
            }
        }
        return new TwinLegs(folder, winds, book, corrections, scenario.wakes()).judge();
    }

    private static Scenario with(Scenario drawn, Scenario.Wakes wakes, Turning turning, boolean habits) {
        List<Entry> entries = drawn.entries().stream()
                .map(entry -> new Entry(
                        entry.name(),
                        habits ? entry.habits() : Habits.NONE,
                        new Temper(
                                SHIFT,
                                entry.temper().overstand(),
                                entry.temper().startShare(),
                                entry.temper().gateShare(),
                                entry.temper().startMargin()),
                        PERFECT ? SensorFaults.NONE : entry.faults(),
                        entry.perturbation()))
                .toList();
        return new Scenario(
                drawn.seed(), drawn.weather().with(WeatherSpec.Unrest.EVERYWHERE_ALIKE), wakes, turning, entries);
    }

    private void print() {
        for (Map.Entry<String, TwinCount> count : counts.entrySet()) {
            System.out.print(count.getValue().row(causes(count.getKey())));
            System.out.print(count.getValue().moved());
        }
        double all = 0;
        for (Cause cause : Cause.values()) {
            double size = cause == Cause.UNJUDGED ? 0 : sizes.getOrDefault(cause, 0.0);
            all += size;
            System.out.printf(
                    Locale.ROOT,
                    "%s %.2f, without sign %.2f%n",
                    cause,
                    sums.getOrDefault(cause, 0.0) / legs,
                    size / legs);
        }
        System.out.printf(
                Locale.ROOT,
                "%d legs, total %.2f s, truly %.2f s, remaining %.2f of all without sign%n",
                legs,
                totals / legs,
                truths / legs,
                sizes.getOrDefault(Cause.REMAINING, 0.0) / all);
    }
}
