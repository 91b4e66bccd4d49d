package trimwright.ingest.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.nio.charset.StandardCharsets;
import java.time.ZoneId;
import java.util.List;
import trimwright.evidence.ReferenceFiles;
import trimwright.evidence.ReferenceTest;
import trimwright.evidence.ValidatedAgainst;
import trimwright.ingest.IngestResult;
import trimwright.track.BoatTrack;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;

/** Fifteen minutes of a sonic anemometer at 20 Hz, as a data logger wrote them. */
class SonicTableValidationTest {
    @ReferenceTest
    @ValidatedAgainst(
            source = "sonic-20hz",
            where = "18,000 rows: mean, spread and largest horizontal speed",
            tolerance = "half of the last digit of the figures given")
    void meanSpreadAndLargestSpeed() {
        CsvMapping mapping = new CsvMapping(
                new CsvMapping.TextForm(StandardCharsets.UTF_8, ',', '.', "sonic"),
                2,
                4,
                List.of(CsvSelector.named("TIMESTAMP")),
                "iso",
                ZoneId.of("UTC"),
                null,
                List.of(
                        column("Ux", "extra.sonic.x", CsvUnit.METRE_PER_SECOND),
                        column("Uy", "extra.sonic.y", CsvUnit.METRE_PER_SECOND),
                        column("Ts", "extra.sonic.temperature", CsvUnit.CELSIUS),
                        column("press", "environment.outside.pressure", CsvUnit.KILOPASCAL)));
        byte[] table = ReferenceFiles.bytes("data/sonic-20Hz-TOA5-2012-06-07-1245.dat.gz");
        IngestResult result = CsvReader.read(table, mapping, "mast", null);
        assertEquals(0, result.report().issues().total());
        assertEquals(18_000, result.report().usable());
        BoatTrack track =
                assertInstanceOf(IngestResult.Tracks.class, result).tracks().get(0);
        ChannelGroup group = track.groups().get(0);
        Channel x = group.channels().get(0);
        Channel y = group.channels().get(1);
        double sum = 0;
        double squares = 0;
        double most = 0;
        for (int i = 0; i < group.size(); i++) {
            double speed = Math.hypot(x.get(i), y.get(i));
            sum += speed;
            squares += speed * speed;
            most = Math.max(most, speed);
        }
        int n = group.size();
        assertEquals(18_000, n);
        assertEquals(1.77, sum / n, 0.005);
        assertEquals(0.98, Math.sqrt((squares - sum * sum / n) / (n - 1)), 0.005);
        assertEquals(5.87, most, 0.005);
        for (int i = 1; i < n; i++) {
            assertEquals(0.05, (group.timeNanos(i) - group.timeNanos(i - 1)) / 1e9, 1e-9);
        }
        // First row of the file: 27.65771 degrees Celsius, 100.2198 kPa.
        assertEquals(27.65771 + 273.15, group.channels().get(2).get(0), 1e-9);
        assertEquals(100_219.8, group.channels().get(3).get(0), 1e-6);
    }

    private static CsvColumn column(String name, String path, CsvUnit unit) {
        return new CsvColumn(CsvSelector.named(name), path, unit, CsvColumn.Sense.SAME);
    }
}
