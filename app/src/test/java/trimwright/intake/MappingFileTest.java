package trimwright.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import trimwright.ingest.csv.CsvColumn;
import trimwright.ingest.csv.CsvSelector;
import trimwright.ingest.csv.CsvUnit;
import trimwright.text.UserInputException;
import trimwright.track.Paths;

class MappingFileTest {
    private static final String GOOD = """
            schema = "csv-map/1"
            encoding = "iso-8859-1"
            delimiter = "tab"
            decimal = ","
            header_row = 2
            skip_rows = 4
            group = "wing"
            boat_file_suffix = "-wing"
            boat = { name = "boat" }
            [time]
            format = "dd/MM/yyyy HH:mm:ss"
            zone = "Europe/Madrid"
            column = [{ name = "day" }, { index = 2 }]
            [[column]]
            name = "camber"
            channel = "sails.wing.camber"
            unit = "deg"
            [[column]]
            index = 7
            channel = "extra.flap.pressure"
            unit = "kPa"
            negate = true
            """;

    @Test
    void everyKeyArrives() {
        MappingFile file = MappingFile.parse(GOOD, "m.toml");
        assertEquals(StandardCharsets.ISO_8859_1, file.encoding());
        assertEquals('\t', file.mapping().text().delimiter());
        assertEquals(',', file.mapping().text().point());
        assertEquals("wing", file.mapping().text().group());
        assertEquals(2, file.mapping().headerRow());
        assertEquals(4, file.mapping().skipRows());
        assertEquals("-wing", file.boatFileSuffix());
        assertEquals(CsvSelector.named("boat"), file.mapping().boat());
        assertEquals(
                List.of(CsvSelector.named("day"), CsvSelector.at(2)),
                file.mapping().timeColumns());
        assertEquals("Europe/Madrid", file.mapping().zone().getId());
        assertEquals(
                List.of(
                        new CsvColumn(CsvSelector.named("camber"), Paths.CAMBER, CsvUnit.DEGREE, CsvColumn.Sense.SAME),
                        new CsvColumn(
                                CsvSelector.at(7),
                                "extra.flap.pressure",
                                CsvUnit.KILOPASCAL,
                                CsvColumn.Sense.OPPOSITE)),
                file.mapping().columns());
    }

    @Test
    void everyFaultIsNamedAtOnceWithItsLine() {
        String text = GOOD.replace("iso-8859-1", "latin-99")
                .replace("\"tab\"", "\"tabs\"")
                .replace("Europe/Madrid", "Europe/Atlantis")
                .replace("sails.wing.camber", "sails.wing.cambre")
                .replace("\"kPa\"", "\"psi\"");
        String message = String.valueOf(assertThrows(UserInputException.class, () -> MappingFile.parse(text, "m.toml"))
                .getMessage());
        List<String> lines = message.lines().toList();
        assertEquals(5, lines.size(), message);
        assertTrue(lines.get(0).startsWith("m.toml:2: encoding: "), message);
        assertTrue(message.contains("maybe sails.wing.camber is meant"), message);
        assertTrue(message.contains("psi"), message);
    }

    @Test
    void keysThatAreNotKnownOrMissingAreFaults() {
        assertFault(GOOD.replace("[time]", "delimeter = \";\"\n[time]"), "maybe delimiter is meant");
        assertFault(GOOD.replace("unit = \"deg\"", ""), "column[0].unit: missing");
        assertFault(GOOD.replace("index = 7", "index = 7\nname = \"x\""), "either the name or the index");
        assertFault(GOOD.replace("header_row = 2", "header_row = 0"), "without a header");
        assertFault(GOOD.replace("skip_rows = 4", "skip_rows = 1"), "header is row 2");
        assertFault(GOOD.replace("dd/MM/yyyy HH:mm:ss", "HH:mm:ss"), "depends on the date");
        assertFault(GOOD.replace("dd/MM/yyyy HH:mm:ss", "whenever"), "whenever");
        assertFault(GOOD.replace("csv-map/1", "csv-map/2"), "csv-map/2");
        assertFault("column = [", "not TOML");
        String head = GOOD.substring(0, GOOD.indexOf("[[column]]"));
        assertFault(head, "column: missing");
        assertFault("column = []\n" + head, "expected one or more");
        assertFault(head.replace("column = [{ name = \"day\" }, { index = 2 }]", "column = []"), "column");
    }

    private static void assertFault(String text, String part) {
        String message = String.valueOf(assertThrows(UserInputException.class, () -> MappingFile.parse(text, "m.toml"))
                .getMessage());
        assertTrue(message.contains(part), message);
    }
}
