package trimwright.debrief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.compare.Cause;
import trimwright.crew.Habits;
import trimwright.crew.Temper;
import trimwright.crew.Turning;
import trimwright.raceday.BranchedLegs;
import trimwright.raceday.LongLegs;
import trimwright.raceday.Pulse;
import trimwright.sim.Entry;
import trimwright.sim.Perturbation;
import trimwright.sim.Scenario;
import trimwright.sim.SensorFaults;
import trimwright.target.TargetBook;
import trimwright.units.Units;
import trimwright.weather.TurbulenceSpectrum;
import trimwright.weather.WeatherSpec;

/** Lines of two boats without faults in their instruments against branches of their day; whole seeds: {@link TwinStudyTest}. */
class LinesTest {
    private static final int LEGS = 3;

    /** Of a leg (s): what costs as little is not told closer, see the table of twins in docs/validation.md. */
    private static final double HALF_A_SECOND = 0.5;

    @Test
    void linesAreAsLongAsWhatTheirCauseTakes(@TempDir Path folder) throws IOException {
        TargetBook book = SimulatedDayTest.BOOK;
        for (LongLegs.Way way : LongLegs.Way.values()) {
            LongLegs.make(
                    scenario(),
                    way,
                    TwinLegs.FROM,
                    TwinLegs.to(LEGS),
                    SimulatedDay.BOAT.boat(),
                    SimulatedDay.wing(),
                    book,
                    TwinLegs.of(folder, way));
        }
        List<TwinLegs.Judged> legs = new TwinLegs(folder, book, LEGS, Map.of()).judge();
        for (LongLegs.Way way : LongLegs.Way.values()) {
            List<TwinLegs.Judged> on =
                    legs.stream().filter(leg -> leg.way() == way).toList();
            List<Pulse> pulses = new ArrayList<>(LongLegs.pulses(TwinLegs.of(folder, way)));
            pulses.removeIf(pulse -> on.stream().noneMatch(leg -> leg.has(pulse.from())));
            double turns = saved(pulses, BranchedLegs.TURNS);
            assertTrue(turns > 5, "turns truly cost " + turns);
            assertEquals(turns, sum(on, Cause.TURNS_FREE), Math.max(2 * LEGS, 0.15 * turns), way + " turns");
            // Against the boat without the habit. Up the wind part of what either habit costs shows in tacks, and
            // stands there.
            double height = saved(pulses, "ride height");
            double higher = sum(of(on, 0), Cause.HEEL_HEIGHT) - sum(of(on, 1), Cause.HEEL_HEIGHT);
            assertTrue(height > 1, way + ": flying high truly costs " + height);
            assertTrue(
                    higher > (way == LongLegs.Way.UPWIND ? 0.2 : 0.4) * height
                            && higher < height + Math.max(0.5 * height, HALF_A_SECOND * LEGS),
                    way + ": " + higher + " of " + height);
            double moment = saved(pulses, "moment");
            double less = sum(of(on, 1), Cause.TRIM) - sum(of(on, 0), Cause.TRIM);
            assertTrue(moment > 1, way + ": less moment truly costs " + moment);
            assertTrue(less > 0.2 * moment && less < 4 * moment, way + ": " + less + " of " + moment);
        }
    }

    private static List<TwinLegs.Judged> of(List<TwinLegs.Judged> legs, int boat) {
        return legs.stream().filter(leg -> leg.boat() == boat).toList();
    }

    private static double sum(List<TwinLegs.Judged> legs, Cause cause) {
        return legs.stream()
                .mapToDouble(leg -> leg.lines().getOrDefault(cause, 0.0))
                .sum();
    }

    private static double saved(List<Pulse> pulses, String cause) {
        return pulses.stream()
                .filter(pulse -> pulse.cause().equals(cause))
                .mapToDouble(Pulse::direct)
                .sum();
    }

    private static Scenario scenario() {
        WeatherSpec weather = new WeatherSpec(
                        Units.fromKnots(13.5), 0, 10, 0.05, TurbulenceSpectrum.KAIMAL, Math.toRadians(3), 0.02, 0.05)
                .with(WeatherSpec.Unrest.EVERYWHERE_ALIKE);
        return new Scenario(
                7,
                weather,
                Scenario.Wakes.NONE,
                Turning.SAILED,
                List.of(
                        entry("Avocet", new Habits(1, 0, 0, 0.18, 0), 0.2),
                        entry("Curlew", new Habits(0.91, 0, 0, 0, 0), 0.8)));
    }

    private static Entry entry(String name, Habits habits, double lane) {
        Temper temper = new Temper(Math.toRadians(2.5), Math.toRadians(1), lane, 0.5, 1);
        return new Entry(name, habits, temper, SensorFaults.NONE, Perturbation.NONE);
    }
}
