package trimwright.sim;

import java.util.ArrayList;
import java.util.List;
import trimwright.chance.RandomStream;
import trimwright.crew.Habits;
import trimwright.crew.Temper;
import trimwright.crew.Turning;
import trimwright.units.Units;
import trimwright.weather.TurbulenceSpectrum;
import trimwright.weather.WeatherSpec;

/**
 * Draws a day from a seed. Every boat has some of everything; each habit has one boat that has it plainly, and one boat has
 * none. Sizes are chosen so that they cost from a tenth of a knot to about one; faults are of the size of good instruments
 * carelessly fitted.
 */
public final class ScenarioDraw {
    /** The six boats of Saltmere Week. */
    public static final List<String> BOATS = List.of("Avocet", "Curlew", "Dunlin", "Godwit", "Plover", "Turnstone");

    private ScenarioDraw() {}

    public static Scenario of(long seed) {
        RandomStream random = RandomStream.of(seed, "scenario");
        WeatherSpec weather = weather(random);
        List<Integer> lanes = shuffled(random);
        List<Integer> habits = shuffled(random);
        Perturbation hidden =
                new Perturbation(random.uniform(-0.03, 0.03), random.uniform(-0.05, 0.05), random.uniform(-0.03, 0.03));
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < BOATS.size(); i++) {
            String name = BOATS.get(i);
            entries.add(new Entry(
                    name,
                    habits(habits.get(i), random),
                    temper(lanes.get(i), random),
                    faults(RandomStream.of(seed, "faults of " + name)),
                    hidden));
        }
        return new Scenario(seed, weather, Scenario.Wakes.FELT, Turning.SAILED, entries);
    }

    private static WeatherSpec weather(RandomStream random) {
        return new WeatherSpec(
                Units.fromKnots(random.uniform(13.5, 16.5)),
                random.uniform(0, 2 * Math.PI),
                10,
                random.uniform(0.05, 0.08),
                random.uniform() < 0.5 ? TurbulenceSpectrum.KAIMAL : TurbulenceSpectrum.VON_KARMAN,
                Math.toRadians(random.uniform(2.5, 4.5)),
                random.uniform(0.03, 0.06),
                random.uniform(0.08, 0.14));
    }

    /** @param kind 0 none, 1 moment, 2 late ease, 3 twist, 4 ride height, 5 late inversion */
    private static Habits habits(int kind, RandomStream random) {
        double moment = random.uniform(0.05, 0.09);
        double ease = random.uniform(0.3, 0.6);
        double twist = Math.toRadians(random.uniform(5, 8)) * (random.uniform() < 0.5 ? -1 : 1);
        double height = random.uniform(0.1, 0.18);
        double inversion = random.uniform(1.2, 2.2);
        return new Habits(
                kind == 1 ? 1 - moment : 1,
                kind == 2 ? ease : 0,
                kind == 3 ? twist : 0,
                kind == 4 ? height : 0,
                kind == 5 ? inversion : 0);
    }

    private static Temper temper(int lane, RandomStream random) {
        return new Temper(
                Math.toRadians(random.uniform(4.5, 8)),
                Math.toRadians(random.uniform(0.5, 4)),
                (lane + 0.5) / BOATS.size(),
                random.uniform(0.3, 0.7),
                random.uniform(0.6, 2.5));
    }

    private static SensorFaults faults(RandomStream random) {
        return new SensorFaults(
                new SensorFaults.WindFault(
                        Math.toRadians(1.5) * random.normal(),
                        1 + 0.02 * random.normal(),
                        Math.toRadians(random.uniform(1.5, 4)),
                        random.uniform(0.2, 0.6)),
                new SensorFaults.AttitudeFault(
                        Math.toRadians(1.2) * random.normal(),
                        Math.toRadians(0.4) * random.normal(),
                        Math.toRadians(0.4) * random.normal()),
                new SensorFaults.WingFault(
                        Math.toRadians(0.7) * random.normal(),
                        Math.toRadians(0.7) * random.normal(),
                        Math.toRadians(0.5) * random.normal(),
                        1 + 0.04 * random.normal(),
                        0.03 * random.normal()),
                random.uniform(4, 12));
    }

    private static List<Integer> shuffled(RandomStream random) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < BOATS.size(); i++) {
            order.add((int) Math.floor(random.uniform() * (i + 1)), i);
        }
        return order;
    }
}
