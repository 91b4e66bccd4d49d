package trimwright.wind;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.List;
import trimwright.evidence.ReferenceFiles;
import trimwright.evidence.ReferenceTest;
import trimwright.evidence.ValidatedAgainst;

class LocalLevelValidationTest {
    private static final LocalLevel NILE = new LocalLevel(15099, 1469.1);

    @ReferenceTest
    @ValidatedAgainst(
            source = "NILE-LOCAL-LEVEL",
            where = "filtered and smoothed level and variance, all 100 years",
            tolerance = "1e-6 relative: the reference inverts the same recurrences in double precision")
    void nileFlowsAreFilteredAndSmoothedAsByAnIndependentProgram() {
        List<double[]> rows = new String(
                        ReferenceFiles.bytes("oracles/nile_local_level_reference.csv"), StandardCharsets.UTF_8)
                .lines()
                .filter(line -> !line.startsWith("#") && !line.isBlank())
                .map(LocalLevelValidationTest::numbers)
                .toList();
        assertEquals(100, rows.size());
        double[] flows = rows.stream().mapToDouble(row -> row[1]).toArray();
        LocalLevel.Estimate filtered = NILE.filter(flows);
        LocalLevel.Estimate smoothed = NILE.smooth(flows);
        for (int t = 0; t < flows.length; t++) {
            double[] row = rows.get(t);
            assertEquals(row[2], filtered.level()[t], 1e-6 * row[2]);
            assertEquals(row[3], filtered.variance()[t], 1e-6 * row[3]);
            assertEquals(row[4], smoothed.level()[t], 1e-6 * row[4]);
            assertEquals(row[5], smoothed.variance()[t], 1e-6 * row[5]);
        }
    }

    private static double[] numbers(String line) {
        String[] fields = line.split(",");
        double[] numbers = new double[fields.length];
        for (int i = 0; i < fields.length; i++) {
            numbers[i] = Double.parseDouble(fields[i]);
        }
        return numbers;
    }
}
