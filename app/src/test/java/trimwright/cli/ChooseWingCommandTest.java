package trimwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ChooseWingCommandTest {
    @TempDir
    Path home;

    private CliRun run(String... more) {
        String[] all = new String[more.length + 3];
        all[0] = "choose-wing";
        all[1] = "--boat";
        all[2] = "whimbrel14";
        System.arraycopy(more, 0, all, 3, more.length);
        return CliRun.in(home, all);
    }

    /** The forecast from a file, its gusts from an option that stands above it. */
    @Test
    void theDocumentSaysWhatTheSetupTakesAndWhetherItIsRecommended() throws IOException {
        Path forecast = home.resolve("saltmere.toml");
        Files.writeString(
                forecast,
                "schema = \"forecast/1\"\nwind_kn = 14\nwind_spread_kn = 0.3\nshift_deg = 8\ngust_factor_ratio = 2\n");
        CliRun run = run(
                "--wing",
                "tall",
                "--foils",
                "standard",
                "--forecast",
                forecast.toString(),
                "--gust-factor",
                "1.2",
                "--laps",
                "1",
                "--json");
        assertEquals(0, run.exit(), run.err());
        JsonNode document = new ObjectMapper().readTree(run.out());
        assertEquals("setup-choice/1", document.path("schema").asText());
        assertEquals(1.2, document.path("forecast").path("gust_factor_ratio").asDouble(), 1e-9);
        assertEquals(8, document.path("forecast").path("shift_deg").asDouble(), 1e-9);
        assertEquals(2, document.path("legs").size());
        assertTrue(document.path("caution").asText().length() > 20);
        JsonNode setup = document.path("setups").path(0);
        JsonNode now = setup.path("outlooks").path(1);
        // 1.5 km up and down at VMGs of some 15 and 27 kn take 300 s, some more for the turns and for gusts; 200 to 450
        // s is any such
        // boat.
        double time = now.path("time_s").asDouble();
        assertTrue(time > 200 && time < 450, now.toString());
        assertTrue(now.path("time_low_s").asDouble() < time
                && time < now.path("time_high_s").asDouble());
        assertEquals(time, meanOf(setup.path("winds")), 0.01);
        assertTrue(setup.path("outlooks").path(0).path("time_s").asDouble() > time);
        assertTrue(setup.path("outlooks").path(2).path("time_s").asDouble() < time);
        // The only setup is the fastest everywhere.
        assertEquals(0, now.path("regret_s").asDouble(), 1e-9);
    }

    /** In fresh wind targets stand at the sheet's limit: sailed at her aims a boat is recommended, unless next to no chance is allowed. */
    @Test
    void inFreshWindASetupIsRecommendedByItsAims() throws IOException {
        String[] question = {
            "--wing", "short", "--foils", "standard", "--wind", "20", "--wind-spread", "0.3", "--laps", "1", "--json"
        };
        CliRun run = run(question);
        assertEquals(0, run.exit(), run.err());
        JsonNode setup = new ObjectMapper().readTree(run.out()).path("setups").path(0);
        assertTrue(setup.path("recommended").asBoolean(), setup.toString());
        double chance =
                setup.path("outlooks").path(1).path("sheet_load_passed_ratio").asDouble();
        assertTrue(chance > 0 && chance < 0.1, setup.toString());
        Path strict = home.resolve("strict.toml");
        String file = CliRun.in(home, "boat", "export", "whimbrel14").out();
        assertTrue(file.contains("[limits]\n"), file);
        Files.writeString(strict, file.replace("[limits]\n", "[limits]\ngust_chance_max_ratio = 0.00001\n"));
        String[] all = new String[question.length + 3];
        all[0] = "choose-wing";
        all[1] = "--boat";
        all[2] = strict.toString();
        System.arraycopy(question, 0, all, 3, question.length);
        CliRun refused = CliRun.in(home, all);
        assertEquals(0, refused.exit(), refused.err());
        JsonNode other =
                new ObjectMapper().readTree(refused.out()).path("setups").path(0);
        assertFalse(other.path("recommended").asBoolean());
        assertEquals("gust_passes_limit", other.path("reason").asText());
        assertTrue(other.path("verdict").asText().contains("of races"), other.toString());
    }

    /** The larger foils are for light air: each set by the winds it is meant for, each crew with each set. */
    @Test
    void foilSetsAndCrewsAreComparedAndEachHasItsWind() throws IOException {
        JsonNode light = setups("--wind", "9");
        assertEquals(2, light.size());
        assertEquals("standard", light.path(0).path("foils").asText());
        assertEquals("light", light.path(1).path("foils").asText());
        assertTrue(time(light.path(1)) < time(light.path(0)), light.toString());
        JsonNode fresh = setups("--wind", "20", "--crew-mass", "480,540");
        assertEquals(4, fresh.size());
        assertTrue(time(fresh.path(0)) < time(fresh.path(2)), fresh.toString());
        assertTrue(time(fresh.path(1)) < time(fresh.path(0)), "the heavier crew: " + fresh);
    }

    private JsonNode setups(String... question) throws IOException {
        String[] all = new String[question.length + 7];
        System.arraycopy(question, 0, all, 0, question.length);
        System.arraycopy(
                new String[] {"--wing", "tall", "--wind-spread", "0.3", "--laps", "1", "--json"},
                0,
                all,
                question.length,
                7);
        CliRun run = run(all);
        assertEquals(0, run.exit(), run.err());
        return new ObjectMapper().readTree(run.out()).path("setups");
    }

    private static double time(JsonNode setup) {
        return setup.path("outlooks").path(1).path("time_s").asDouble();
    }

    private static double meanOf(JsonNode winds) {
        double all = 0;
        double sum = 0;
        for (JsonNode wind : winds) {
            if (wind.path("time_s").isNumber()) {
                all += wind.path("weight_ratio").asDouble();
                sum += wind.path("weight_ratio").asDouble()
                        * wind.path("time_s").asDouble();
            }
        }
        return sum / all;
    }

    @Test
    void whatIsWrongInTheQuestionIsSaidBeforeAnythingIsComputed() throws IOException {
        assertRefused("--wind", run());
        assertRefused("--gust-factor", run("--wind", "14", "--gust-factor", "0.9"));
        assertRefused("--turbulence", run("--wind", "14", "--turbulence", "0.08"));
        assertRefused("turbulence and a gust factor", run("--wind", "14", "--turbulence", "8", "--gust-factor", "1.2"));
        assertRefused("--crew-mass", run("--wind", "14", "--crew-mass", "450,9"));
        assertRefused("no crew of 6", run("--wind", "14", "--crew-mass", "100"));
        assertRefused("28 setups", run("--wind", "14", "--crew-mass", "480:540:10"));
        assertRefused("no such foil set", run("--wind", "14", "--foils", "light,heavy"));
        assertRefused("no such wing", run("--wind", "14", "--wing", "tall,middling"));
        assertRefused("--from", run("--wind", "14", "--course", "course.toml"));
        Path forecast = home.resolve("odd.toml");
        Files.writeString(forecast, "schema = \"forecast/1\"\nwind_kn = 14\nwaves_m = 1\n");
        assertRefused("waves_m", run("--forecast", forecast.toString()));
        assertRefused(
                "forecast file", run("--forecast", home.resolve("none.toml").toString()));
    }

    private static void assertRefused(String says, CliRun run) {
        assertEquals(2, run.exit(), run.out() + run.err());
        assertTrue(run.err().contains(says), run.err());
    }
}
