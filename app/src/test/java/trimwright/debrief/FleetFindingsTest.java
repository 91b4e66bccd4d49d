package trimwright.debrief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.crew.Habits;
import trimwright.crew.Temper;
import trimwright.fleet.Difference;
import trimwright.fleet.Question;
import trimwright.segment.PointOfSail;
import trimwright.sim.Entry;
import trimwright.sim.Perturbation;
import trimwright.sim.Scenario;
import trimwright.sim.SensorFaults;
import trimwright.store.UtcOffset;
import trimwright.text.JsonOut;
import trimwright.units.Units;
import trimwright.weather.TurbulenceSpectrum;
import trimwright.weather.WeatherSpec;

/** A planted difference of trim is told, of the right boat and size; and nothing is said to be its effect. */
class FleetFindingsTest {
    /** Some five standard errors of the question over the three or four minutes that a race has of the same wind. */
    private static final double MORE = Math.toRadians(8);

    @Test
    void aTwistHabitIsToldOfTheBoatThatHasIt(@TempDir Path folder) throws IOException {
        WeatherSpec weather = new WeatherSpec(
                Units.fromKnots(15), 0, 10, 0.05, TurbulenceSpectrum.KAIMAL, Math.toRadians(3), 0.02, 0.05);
        List<Entry> entries = List.of(
                entry("Avocet", 0, 0.2), entry("Curlew", MORE, 0.4), entry("Dunlin", 0, 0.6), entry("Godwit", 0, 0.8));
        Scenario scenario = new Scenario(11, weather, Scenario.Wakes.NONE, entries);
        DebriefReport report =
                SimulatedDay.of(scenario, 36, folder, SimulatedDayTest.BOOK).debrief(null);

        List<Difference> twist = report.fleet().differences().stream()
                .filter(one -> one.question() == Question.TWIST && one.on() == PointOfSail.UPWIND)
                .toList();
        assertEquals(4, twist.size());
        for (Difference one : twist) {
            assertEquals(one.boat().equals("curlew"), one.isTold() && one.value() > Math.toRadians(2), one.toString());
            assertTrue(one.low() <= one.value() && one.value() <= one.high(), one.toString());
        }
        JsonNode fleet = FleetJson.of(report);
        assertTrue(fleet != null && fleet.path("differences").size() > 20);
        String text = JsonOut.text(fleet);
        assertTrue(text.contains("Upwind") && text.contains("curlew had") && text.contains("more twist"), text);
        String all = DebriefText.of("A day", report, UtcOffset.NONE);
        assertTrue(all.contains("A trim that differs is not thereby the cause"), all);
    }

    private static Entry entry(String name, double twist, double lane) {
        Temper temper = new Temper(Math.toRadians(4), Math.toRadians(1), lane, 0.5, 1);
        return new Entry(name, new Habits(1, 0, twist, 0, 0), temper, SensorFaults.NONE, Perturbation.NONE);
    }
}
