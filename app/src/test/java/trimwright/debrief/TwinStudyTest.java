package trimwright.debrief;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import trimwright.compare.Cause;
import trimwright.crew.Habits;
import trimwright.crew.Temper;
import trimwright.crew.Turning;
import trimwright.prepare.BookCache;
import trimwright.prepare.TargetBooks;
import trimwright.prepare.TargetRequest;
import trimwright.raceday.BranchedLegs;
import trimwright.raceday.LongLegs;
import trimwright.raceday.Pulse;
import trimwright.raceday.ScenarioFile;
import trimwright.sim.Entry;
import trimwright.sim.Scenario;
import trimwright.sim.SensorFaults;
import trimwright.target.TargetBook;
import trimwright.text.Progress;
import trimwright.weather.WeatherSpec;
import trimwright.wind.WindCorrection;

/**
 * Lines of the ledger against branches of the same day in which one cause is taken away for a while. It takes some minutes a
 * seed, so it runs only where {@code -Dtrimwright.twins=101,102} names seeds; it prints the table of docs/validation.md.
 */
@EnabledIfSystemProperty(named = "trimwright.twins", matches = "[0-9,]+")
class TwinStudyTest {
    /** Whether instruments read what is, to tell what the ledger itself gets wrong. */
    private static final boolean PERFECT = Boolean.getBoolean("trimwright.twins.perfect");

    /** The race from which wind sensors are known, a day of the other study (min). */
    private static final int RACE_MINUTES = 25;

    private static final int EACH_WAY = 4;

    private final Path races = Path.of(System.getProperty("trimwright.root", "."), "target", "study");

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
            SimulatedDay.of(drawn, RACE_MINUTES, races.resolve(Long.toString(drawn.seed())), book)
                    .debrief(null)
                    .boats()
                    .forEach(boat -> corrections.put(boat.boat(), boat.wind().correction()));
        }
        Scenario with = with(drawn, true);
        Scenario without = with(drawn, false);
        List<TwinLegs.Judged> base = judge(with, folder.resolve("base"), TwinLegs.FROM, TwinLegs.to(EACH_WAY), book);
        // Of this only the lines are wanted: nothing is branched.
        List<TwinLegs.Judged> clean =
                judge(without, folder.resolve("clean"), TwinLegs.to(EACH_WAY), TwinLegs.to(EACH_WAY), book);
        for (LongLegs.Way way : LongLegs.Way.values()) {
            List<Pulse> pulses = LongLegs.pulses(TwinLegs.of(folder.resolve("base"), way));
            for (int i = 0; i < base.size(); i++) {
                TwinLegs.Judged leg = base.get(i);
                if (leg.way() == way) {
                    Habits habits = drawn.entries().get(leg.boat()).habits();
                    count(BranchedLegs.WAKES, leg, null, pulses);
                    if (!leg.has(TwinLegs.FROM)) {
                        // Turns from before the first leg are not known.
                        count(BranchedLegs.TURNS, leg, null, pulses);
                    }
                    if (!habits.equals(Habits.NONE)) {
                        count(BranchedLegs.name(habits), leg, clean.get(i), pulses);
                    }
                }
            }
        }
        for (TwinLegs.Judged leg : base) {
            legs++;
            totals += leg.total();
            truths += leg.trueLoss();
            leg.lines().forEach((cause, loss) -> {
                sums.merge(cause, loss, Double::sum);
                sizes.merge(cause, Math.abs(loss), Double::sum);
            });
        }
    }

    private void count(String name, TwinLegs.Judged leg, TwinLegs.@Nullable Judged twin, List<Pulse> pulses) {
        double saved = 0;
        double direct = 0;
        for (Pulse pulse : pulses) {
            if (pulse.boat() != leg.boat() || !pulse.cause().equals(name)) {
                continue;
            }
            if (name.equals(BranchedLegs.TURNS)) {
                // A line has a turn's seconds where they are lost, be it on the next leg.
                for (int k = 0; k < pulse.saved().size(); k++) {
                    saved += leg.has(pulse.from() + k) ? pulse.saved().get(k) : 0;
                }
                direct = saved;
            } else if (leg.has(pulse.from())) {
                saved += pulse.sum();
                direct += pulse.direct();
            }
        }
        double line = 0;
        double less = 0;
        for (Cause cause : causes(name)) {
            line += leg.lines().getOrDefault(cause, 0.0);
            less += leg.lines().getOrDefault(cause, 0.0)
                    - (twin == null ? 0 : twin.lines().getOrDefault(cause, 0.0));
        }
        counts.computeIfAbsent(name + " " + leg.way().name().toLowerCase(Locale.ROOT), TwinCount::new)
                .add(saved, direct, line, less);
    }

    private static Cause[] causes(String name) {
        return switch (name) {
            case BranchedLegs.WAKES -> new Cause[] {Cause.OTHER_AIR};
            case BranchedLegs.TURNS, "late inversion" -> new Cause[] {Cause.TURNS_FREE, Cause.TURNS_FORCED};
            case "ride height" -> new Cause[] {Cause.HEEL_HEIGHT};
            default -> new Cause[] {Cause.TRIM};
        };
    }

    private List<TwinLegs.Judged> judge(Scenario scenario, Path folder, int from, int to, TargetBook book)
            throws IOException {
        for (LongLegs.Way way : LongLegs.Way.values()) {
            Path place = TwinLegs.of(folder, way);
            if (!Files.exists(place.resolve("course.toml"))) {
                LongLegs.make(scenario, way, from, to, SimulatedDay.BOAT.boat(), SimulatedDay.wing(), book, place);
            }
        }
        return new TwinLegs(folder, book, EACH_WAY, corrections).judge();
    }

    private static Scenario with(Scenario drawn, boolean habits) {
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
                drawn.seed(),
                drawn.weather().with(WeatherSpec.Unrest.EVERYWHERE_ALIKE),
                Scenario.Wakes.FELT,
                Turning.SAILED,
                entries);
    }

    private void print() {
        counts.values().forEach(count -> System.out.print(count.row()));
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
