package trimwright.docs;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import trimwright.boatfile.BoatFiles;
import trimwright.choice.ForecastKeys;
import trimwright.coursefile.CourseKeys;
import trimwright.intake.MapKeys;
import trimwright.keyfile.Key;
import trimwright.keyfile.KeyFile;
import trimwright.keyfile.KeyTable;
import trimwright.raceday.ScenarioKeys;

class FormatsDocTest {
    @Test
    void theListOfBoatKeysIsTheOneThatTheCheckerUses() {
        GeneratedBlock.check("docs/formats.md", BoatFiles.keys().schema(), tableOf(BoatFiles.keys()));
    }

    @Test
    void theListOfMappingKeysIsTheOneThatTheReaderUses() {
        GeneratedBlock.check("docs/formats.md", MapKeys.TABLE.schema(), tableOf(MapKeys.TABLE));
    }

    @Test
    void theListOfCourseKeysIsTheOneThatReaderAndWriterUse() {
        GeneratedBlock.check("docs/formats.md", CourseKeys.TABLE.schema(), tableOf(CourseKeys.TABLE));
    }

    @Test
    void theListOfScenarioKeysIsTheOneThatReaderAndWriterUse() {
        GeneratedBlock.check("docs/formats.md", ScenarioKeys.TABLE.schema(), tableOf(ScenarioKeys.TABLE));
    }

    @Test
    void theListOfForecastKeysIsTheOneThatTheReaderUses() {
        GeneratedBlock.check("docs/formats.md", ForecastKeys.TABLE.schema(), tableOf(ForecastKeys.TABLE));
    }

    private static String tableOf(KeyTable keys) {
        StringBuilder table = new StringBuilder("| key | what | needed | meaning |\n|---|---|---|---|\n");
        for (Key key : keys.keys()) {
            String what = switch (key.kind()) {
                case NUMBER -> KeyFile.rangeOf(key);
                case COUNT -> "whole number, " + KeyFile.rangeOf(key);
                case FLAG -> "true or false";
                case TEXT -> "text";
            };
            boolean inRow = !key.table().isEmpty() && !keys.isRequired(key.table());
            String needed = key.presence() != Key.Presence.REQUIRED ? "no" : inRow ? "in each row" : "yes";
            table.append(
                    String.format(Locale.ROOT, "| `%s` | %s | %s | %s |%n", key.path(), what, needed, key.meaning()));
        }
        return table.toString().replace("\r\n", "\n");
    }
}
