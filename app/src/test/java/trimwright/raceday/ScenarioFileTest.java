package trimwright.raceday;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.sim.Scenario;
import trimwright.text.UserInputException;
import trimwright.weather.WeatherSpec;

class ScenarioFileTest {
    private static final String TEXT = ScenarioText.of(ScenarioFile.draw(7));

    @ParameterizedTest
    @ValueSource(ints = {0, 7, 101, Integer.MAX_VALUE})
    void aDrawnDayAndTheOneReadBackAreTheSame(int seed) {
        Scenario drawn = ScenarioFile.draw(seed);
        assertEquals(drawn, ScenarioFile.parse(ScenarioText.of(drawn), "scenario.toml"));
    }

    @Test
    void aRemovedCauseIsRemoved() {
        Scenario calm = ScenarioFile.parse(TEXT.replace("wakes = true", "wakes = false"), "scenario.toml");
        assertEquals(Scenario.Wakes.NONE, calm.wakes());
        assertEquals(ScenarioFile.draw(7).entries(), calm.entries());
    }

    @Test
    void aWindThatIsAlikeEverywhereIsReadBack() {
        Scenario drawn = ScenarioFile.draw(7);
        Scenario alike = new Scenario(
                drawn.seed(),
                drawn.weather().with(WeatherSpec.Unrest.EVERYWHERE_ALIKE),
                drawn.wakes(),
                drawn.entries());
        assertEquals(alike, ScenarioFile.parse(ScenarioText.of(alike), "scenario.toml"));
    }

    @ParameterizedTest
    @CsvSource({
        "seed = 7, seed = -7, seed",
        "spectrum = \"kaimal\", spectrum = \"pink\", weather.spectrum",
        "name = \"Curlew\", name = \"../x\", boat[1].name",
        "name = \"Curlew\", name = \"avocet\", boat[1].name",
        "wakes = true, waves = true, waves"
    })
    void aFaultNamesItsKey(String good, String bad, String key) {
        String text = TEXT.replaceAll("spectrum = .*", "spectrum = \"kaimal\"");
        assertTrue(text.contains(good), good);
        String broken = text.replace(good, bad);
        UserInputException fault = assertThrows(UserInputException.class, () -> ScenarioFile.parse(broken, "day.toml"));
        assertTrue(String.valueOf(fault.getMessage()).contains("day.toml"), fault.getMessage());
        assertTrue(String.valueOf(fault.getMessage()).contains(key), fault.getMessage());
    }

    @Test
    void aDayWithoutBoatsIsRefused() {
        String none = TEXT.substring(0, TEXT.indexOf("[[boat]]"));
        assertThrows(UserInputException.class, () -> ScenarioFile.parse(none, "day.toml"));
    }
}
