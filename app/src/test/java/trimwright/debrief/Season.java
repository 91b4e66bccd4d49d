package trimwright.debrief;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import trimwright.crew.Habits;
import trimwright.crew.Temper;
import trimwright.raceday.LongLegs;
import trimwright.raceday.ScenarioFile;
import trimwright.sim.Entry;
import trimwright.sim.Perturbation;
import trimwright.sim.Scenario;
import trimwright.target.TargetBook;
import trimwright.weather.WeatherSpec;

/**
 * Short days of three boats without habits that both differ from their boat file in the same way all season; they sail long legs,
 * so that they settle. Wind, noise, tempers and faults of the instruments are drawn anew each day.
 */
final class Season {
    /** Each way (s). */
    private static final double LENGTH = 480;

    /** Lighter, with less windage and more to right her, by about twice what days of the other studies draw at most. */
    static final Perturbation HIDDEN = new Perturbation(-0.06, -0.10, 0.05);

    private static final int BOATS = 3;

    /** Header on which all tack, lift on which all gybe (rad): small, so that boats are seen on both tacks. */
    private static final double SHIFT = Math.toRadians(2.5);

    private Season() {}

    /** Sails the day where it is not there yet, and reads it as one session. */
    static SimulatedDay.Logged day(int seed, Path folder, TargetBook book) throws IOException, InterruptedException {
        List<Path> ways = new ArrayList<>();
        for (LongLegs.Way way : LongLegs.Way.values()) {
            Path place = folder.resolve(seed + "-" + way.name().toLowerCase(Locale.ROOT));
            if (!Files.exists(place.resolve("course.toml"))) {
                LongLegs.sail(scenario(seed), way, LENGTH, SimulatedDay.BOAT.boat(), SimulatedDay.wing(), book, place);
            }
            ways.add(place);
        }
        return SimulatedDay.read(ways);
    }

    private static Scenario scenario(int seed) {
        Scenario drawn = ScenarioFile.draw(seed);
        List<Entry> entries = drawn.entries().stream()
                .limit(BOATS)
                .map(entry -> new Entry(
                        entry.name(),
                        Habits.NONE,
                        new Temper(
                                SHIFT,
                                entry.temper().overstand(),
                                entry.temper().startShare(),
                                entry.temper().gateShare(),
                                entry.temper().startMargin()),
                        entry.faults(),
                        HIDDEN))
                .toList();
        return new Scenario(
                drawn.seed(),
                drawn.weather().with(WeatherSpec.Unrest.EVERYWHERE_ALIKE),
                Scenario.Wakes.NONE,
                drawn.turning(),
                entries);
    }
}
