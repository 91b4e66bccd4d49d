package trimwright.magnetic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import trimwright.evidence.ReferenceFiles;
import trimwright.evidence.ReferenceTest;
import trimwright.evidence.ValidatedAgainst;

class MagneticFieldValidationTest {
    @ReferenceTest
    @ValidatedAgainst(
            source = "WMM-2025",
            where = "the model's own table of test values: twelve places, heights and years",
            tolerance = "half of the last digit: 0.05 nT, 0.005 degrees")
    void publishedTestValues() {
        int rows = 0;
        String table = new String(
                ReferenceFiles.bytes("oracles/WMM2025_TEST_VALUE_TABLE_FOR_REPORT.txt"), StandardCharsets.UTF_8);
        for (String line : table.split("\n")) {
            String[] cells = line.strip().split("\\s+");
            if (line.startsWith("#") || cells.length < 19) {
                continue;
            }
            double year = Double.parseDouble(cells[0]);
            MagneticField field = MagneticField.at(
                    Math.toRadians(Double.parseDouble(cells[2])),
                    Math.toRadians(Double.parseDouble(cells[3])),
                    1000 * Double.parseDouble(cells[1]),
                    year);
            assertEquals(Double.parseDouble(cells[4]), field.north(), 0.0501, line);
            assertEquals(Double.parseDouble(cells[5]), field.east(), 0.0501, line);
            assertEquals(Double.parseDouble(cells[6]), field.down(), 0.0501, line);
            assertEquals(Double.parseDouble(cells[10]), Math.toDegrees(field.variation()), 0.00501, line);
            rows++;
        }
        assertEquals(12, rows);
    }

    @Test
    void outsideItsYearsThereIsNoField() {
        assertTrue(MagneticField.isValid(2029.99));
        assertFalse(MagneticField.isValid(2030));
        assertThrows(IllegalArgumentException.class, () -> MagneticField.at(0.5, 0, 0, 2024.9));
    }
}
