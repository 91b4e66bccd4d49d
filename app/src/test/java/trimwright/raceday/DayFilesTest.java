package trimwright.raceday;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import trimwright.boat.Boat;
import trimwright.boatfile.BoatFiles;
import trimwright.sim.Race;
import trimwright.sim.Scenario;
import trimwright.text.Progress;

/** The first minutes of a day with six boats. */
class DayFilesTest {
    private static final double SECONDS = 110;

    @Test
    void sameSeedSameBytesOnAnyNumberOfThreads() throws InterruptedException {
        Map<String, String> one = day(ScenarioFile.draw(5), 1);
        assertEquals(one, day(ScenarioFile.draw(5), 4));
        assertNotEquals(
                one.get("logs/dunlin.nmea"), day(ScenarioFile.draw(6), 4).get("logs/dunlin.nmea"));
    }

    @Test
    void everyBoatHasItsLogsAndItsTruth() throws InterruptedException {
        Map<String, String> day = day(ScenarioFile.draw(5), 2);
        assertEquals(3 + 6 * 5, day.size());
        String log = String.valueOf(day.get("logs/avocet.nmea"));
        assertTrue(log.startsWith("$GPRMC,130000.00,A,"), log.substring(0, 40));
        // Five sentences a tenth of a second, less what fell silent.
        long lines = log.lines().count();
        assertTrue(lines > 0.97 * 50 * SECONDS && lines <= 50 * SECONDS + 5, lines + " lines");
        assertTrue(String.valueOf(day.get("truth/avocet-spans.csv")).contains("straight,direct"));
    }

    private static Map<String, String> day(Scenario scenario, int threads) throws InterruptedException {
        Boat boat = BoatFiles.find("whimbrel14").boat();
        DayPlan plan = DayPlan.of(scenario, 25);
        Race race = new Race(scenario, plan.venue(boat, boat.wings().get(0), AimsCard.of(LoneBoat.targets())));
        return DayFiles.of(plan, RaceDay.sail(race, SECONDS, threads, Progress.NONE));
    }
}
