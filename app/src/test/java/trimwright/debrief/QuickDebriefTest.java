package trimwright.debrief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.cli.CliRun;
import trimwright.text.JsonOut;
import trimwright.text.UserInputException;

/** Six lines of a debrief written by hand: what they say is what stands there, and nothing smaller than its interval. */
class QuickDebriefTest {
    private static final String DEBRIEF = """
            {"schema": "debrief/1", "session": "one", "start_utc": "2027-03-06T13:00:00Z", "caution": "Rules stand above.",
             "boats": [
              {"boat": "ours", "reference": "target", "foiling_told_by": "ride_height",
               "start": {"crossed_s": 1.25, "early": false, "distance_m": 14, "speed_kn": 24, "target_ratio": 0.8, "gun_s": 60},
               "legs": [{"start_s": 60, "duration_s": 120}, {"start_s": 180, "duration_s": 120}],
               "off_foil": [{"start_s": 40, "duration_s": 32}, {"start_s": 200, "duration_s": 12}],
               "turns": [{"kind": "gybe", "touched_down": false, "lost_m": 40, "start_s": 100, "duration_s": 8},
                         {"kind": "tack", "touched_down": true, "lost_m": 90, "start_s": 205, "duration_s": 11},
                         {"kind": "bear_away", "touched_down": true, "lost_m": null, "start_s": 230, "duration_s": 9}],
               "ledger": [{"lines": [
                 {"cause": "trim", "loss_s": 9.8, "least_s": 9.8, "most_s": 9.8, "pieces": [{"start_s": 70, "duration_s": 20, "loss_s": 6}]},
                 {"cause": "angle", "loss_s": 1.2, "least_s": 1, "most_s": 1.4, "pieces": []},
                 {"cause": "remaining", "loss_s": 50, "least_s": 50, "most_s": 50, "pieces": []}]},
                {"lines": [{"cause": "trim", "loss_s": 2.0, "least_s": 2, "most_s": 2, "pieces": []}]}],
               "quality": {"channels": [
                 {"channel": "attitude.roll", "samples": 100, "coverage_ratio": 0.5, "frozen": 0, "jump": 0, "out_of_range": 0},
                 {"channel": "good", "samples": 100, "coverage_ratio": 1, "frozen": 0, "jump": 1, "out_of_range": 0}]}},
              {"boat": "theirs"}],
             "fleet": {"findings": [
               {"boat": "slow", "kind": "upwind", "sentence": "slow had more twist", "start_s": 5, "duration_s": 9},
               {"boat": "theirs", "kind": "upwind", "sentence": "theirs flew higher", "start_s": 300, "duration_s": 20}],
              "differences": [
               {"boat": "slow", "kind": "upwind", "question": "progress", "value_kn": -0.5},
               {"boat": "theirs", "kind": "upwind", "question": "progress", "value_kn": 0.4}]}}
            """;

    private static JsonNode debrief(String text) {
        try {
            return JsonOut.mapper().readTree(text);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static QuickDebrief.Line line(JsonNode debrief, QuickDebrief.Subject subject) {
        return QuickDebrief.of(debrief, "ours").get(subject.ordinal());
    }

    @Test
    void eachLineSaysWhatTheDebriefSays() {
        JsonNode debrief = debrief(DEBRIEF);
        QuickDebrief.Line start = line(debrief, QuickDebrief.Subject.START);
        assertTrue(start.sentence().contains("14 m") && start.sentence().contains("80 %"), start.sentence());
        assertEquals(60, start.start());
        // 12 s of either spell lie in the 240 s of legs.
        QuickDebrief.Line foils = line(debrief, QuickDebrief.Subject.FOILS);
        assertTrue(foils.sentence().startsWith("90 %"), foils.sentence());
        QuickDebrief.Line turns = line(debrief, QuickDebrief.Subject.TURNS);
        assertTrue(
                turns.sentence().startsWith("1 dry, 1 wet") && turns.sentence().contains("90 m"), turns.sentence());
        assertEquals(205, turns.start());
        assertTrue(line(debrief, QuickDebrief.Subject.SENSORS).sentence().contains("attitude.roll"));
    }

    /** As the document has it where neither ride height nor speed tells: no kind and no spells. */
    @Test
    void foilingThatIsNotToldIsNotAllOfTheLegs() {
        String untold = DEBRIEF.replace("\"ride_height\"", "null")
                .replace(
                        "\"off_foil\": [{\"start_s\": 40, \"duration_s\": 32}, {\"start_s\": 200, \"duration_s\": 12}]",
                        "\"off_foil\": []");
        QuickDebrief.Line foils = line(debrief(untold), QuickDebrief.Subject.FOILS);
        assertTrue(foils.sentence().contains("not told"), foils.sentence());
        String all = untold.replace("\"foiling_told_by\": null", "\"foiling_told_by\": \"ride_height\"");
        assertEquals(
                "all of the legs.",
                line(debrief(all), QuickDebrief.Subject.FOILS).sentence());
    }

    /** Trim loses 11.8 s in two legs, told to two seconds a leg, 2.8 s in all; an angle of 1.2 s is too small to tell. */
    @Test
    void onlyWhatExceedsItsIntervalIsTold() {
        QuickDebrief.Line lost = line(debrief(DEBRIEF), QuickDebrief.Subject.LOST);
        assertEquals("trim 12.0 s (+-3.0).", lost.sentence());
        assertEquals(70, lost.start());
        QuickDebrief.Line none = line(debrief(DEBRIEF.replace("9.8", "0.1")), QuickDebrief.Subject.LOST);
        assertTrue(none.sentence().contains("cannot tell"), none.sentence());
        assertNull(none.start());
    }

    @Test
    void nothingIsLearntFromABoatThatMadeGoodLess() {
        assertEquals(
                "theirs flew higher",
                line(debrief(DEBRIEF), QuickDebrief.Subject.OTHERS).sentence());
        QuickDebrief.Line none =
                line(debrief(DEBRIEF.replace("\"value_kn\": 0.4", "\"value_kn\": -0.1")), QuickDebrief.Subject.OTHERS);
        assertTrue(none.sentence().contains("cannot tell"), none.sentence());
    }

    @Test
    void whatTheCrewSaysIsJudgedByTheNextRace(@TempDir Path library) {
        CrewLines lines = new CrewLines(library);
        JsonNode first = debrief(DEBRIEF);
        lines.keep(CrewLine.of(first, "ours", "trim", " head less twisted "));
        assertEquals(
                "head less twisted",
                new QuickDocument(first, "ours", lines).json().path("next").asText());
        assertTrue(new QuickDocument(first, "ours", lines)
                .json()
                .path("said_before")
                .isNull());
        String later = DEBRIEF.replace("T13:", "T14:").replace("\"one\"", "\"two\"");
        String better = new QuickDocument(debrief(later.replace("9.8", "-1.9")), "ours", lines).text();
        assertTrue(better.contains("head less twisted") && better.contains("better by"), better);
        String open = new QuickDocument(debrief(later.replace("9.8", "9.0")), "ours", lines).text();
        assertTrue(open.contains("cannot tell (+-"), open);
        lines.keep(CrewLine.of(first, "ours", "angle", "lower"));
        assertEquals(
                "lower",
                new QuickDocument(first, "ours", lines).json().path("next").asText());
    }

    @Test
    void whatIsNotThereIsSaidInOneLine(@TempDir Path folder) throws IOException {
        JsonNode debrief = debrief(DEBRIEF);
        assertThrows(UserInputException.class, () -> QuickDebrief.of(debrief, "nobody"));
        assertThrows(UserInputException.class, () -> CrewLine.of(debrief, "ours", "luck", "more"));
        Files.writeString(folder.resolve("crew-lines.json"), "{");
        assertThrows(UserInputException.class, () -> new CrewLines(folder).before("ours", "2027"));
        for (List<String> wrong : List.of(List.of("--own", "ours"), List.of("--quick", "--say=x"))) {
            String[] args = {"debrief", "latest", wrong.get(0), wrong.get(1)};
            CliRun run = CliRun.in(folder, args);
            assertEquals(2, run.exit(), run.err());
            assertEquals(1, run.err().strip().lines().count(), run.err());
        }
    }
}
