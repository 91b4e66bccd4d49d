package trimwright.ingest.csv;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import trimwright.ingest.IngestResult;
import trimwright.ingest.IssueKind;
import trimwright.track.BoatTrack;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;
import trimwright.track.Paths;
import trimwright.track.Quality;

class CsvReaderTest {
    private static final double KNOT = 1852.0 / 3600.0;
    private static final ZoneId UTC = ZoneId.of("UTC");

    @Test
    void unitsSignsAndAbsentCells() {
        CsvMapping mapping = mapping(
                ',',
                '.',
                "iso",
                UTC,
                column("speed", Paths.SOG, CsvUnit.KNOT),
                column("awa", Paths.AWA, CsvUnit.DEGREE),
                column("hdg", Paths.HEADING, CsvUnit.DEGREE),
                column("load", Paths.SHEET_LOAD, CsvUnit.KILONEWTON),
                column("air", Paths.AIR_TEMPERATURE, CsvUnit.CELSIUS),
                column("baro", Paths.AIR_PRESSURE, CsvUnit.HECTOPASCAL),
                new CsvColumn(CsvSelector.named("heel"), Paths.ROLL, CsvUnit.DEGREE, CsvColumn.Sense.OPPOSITE));
        IngestResult result = read(
                mapping,
                "time,speed,awa,hdg,load,air,baro,heel",
                "2026-05-09T12:00:00Z,10,350,-10,2.5,15,1013,4",
                "2026-05-09T12:00:01Z,NAN,,\"370\",-,n/a,1013.5,-2");
        assertValues(result, Paths.SOG, 10 * KNOT, Double.NaN);
        assertValues(result, Paths.AWA, -10 * Math.PI / 180, Double.NaN);
        assertValues(result, Paths.HEADING, 350 * Math.PI / 180, 10 * Math.PI / 180);
        assertValues(result, Paths.SHEET_LOAD, 2500, Double.NaN);
        assertValues(result, Paths.AIR_TEMPERATURE, 288.15, Double.NaN);
        assertValues(result, Paths.AIR_PRESSURE, 101_300, 101_350);
        assertValues(result, Paths.ROLL, -4 * Math.PI / 180, 2 * Math.PI / 180);
        assertEquals(0, result.report().issues().total());
    }

    @Test
    void decimalCommaSemicolonAndAccents() {
        CsvMapping latin = withCharset(
                mapping(';', ',', "iso", UTC, column("vitesse mesurée", Paths.SOG, CsvUnit.KNOT)),
                StandardCharsets.ISO_8859_1);
        byte[] table = "time;vitesse mesurée\r\n2026-05-09 12:00:00;7,25\r\n".getBytes(StandardCharsets.ISO_8859_1);
        assertValues(CsvReader.read(table, latin, "x", null), Paths.SOG, 7.25 * KNOT);
        // The same bytes taken for UTF-8 do not have that column, and the names that are there are told.
        IngestResult.NoColumn wrong = assertInstanceOf(
                IngestResult.NoColumn.class,
                CsvReader.read(table, withCharset(latin, StandardCharsets.UTF_8), "x", null));
        assertEquals("vitesse mesurée", wrong.wanted());
        assertEquals(2, wrong.present().size());
    }

    @Test
    void aByteOrderMarkIsNoPartOfTheFirstName() {
        CsvMapping mapping = mapping(',', '.', "iso", UTC, column("speed", Paths.SOG, CsvUnit.KNOT));
        IngestResult result = read(mapping, "\ufefftime,speed", "2026-05-09T12:00:00Z,10");
        assertValues(result, Paths.SOG, 10 * KNOT);
    }

    @Test
    void everyTimeFormat() {
        long noon = nanos("2026-05-09T12:00:00Z");
        assertEquals(noon + 50_000_000, firstTime("iso", UTC, "2026-05-09 12:00:00.05", null));
        assertEquals(noon, firstTime("iso", ZoneId.of("Europe/Madrid"), "2026-05-09T14:00:00", null));
        assertEquals(noon, firstTime("iso", ZoneId.of("Europe/Madrid"), "2026-05-09T08:00:00-04:00", null));
        assertEquals(noon + 250_000_000, firstTime("epoch_s", UTC, noon / 1_000_000_000L + ".25", null));
        assertEquals(noon + 5_000_000, firstTime("epoch_ms", UTC, noon / 1_000_000L + 5 + "", null));
        assertEquals(noon + 7_000, firstTime("epoch_us", UTC, noon / 1_000L + 7 + "", null));
        assertEquals(noon + 9, firstTime("epoch_ns", UTC, noon + 9 + "", null));
        assertEquals(noon + 1_500_000_000L, firstTime("elapsed_s", UTC, "1.5", noon));
        assertEquals(noon, firstTime("dd/MM/yyyy HH:mm:ss", UTC, "09/05/2026 12:00:00", null));
        assertEquals(noon, firstTime("d.M.yy H:mm:ss", UTC, "9.5.26 12:00:00", null));
        assertEquals(noon + 20_000_000, firstTime("yyyyMMdd HHmmss", UTC, "20260509 120000.02", null));
        assertEquals(noon, firstTime("HH:mm:ss", UTC, "12:00:00", nanos("2026-05-09T11:00:00Z")));
        assertInstanceOf(IngestResult.NoDate.class, timeOnly("HH:mm:ss", UTC, "12:00:00", null));
        assertInstanceOf(IngestResult.NoDate.class, timeOnly("elapsed_s", UTC, "12", null));
        for (String bad : List.of("2026-02-30 12:00:00", "yesterday", "2026-05-09", "")) {
            IngestResult result = timeOnly("iso", UTC, bad, null);
            assertInstanceOf(IngestResult.Nothing.class, result);
            assertEquals(1, result.report().issues().count(IssueKind.BAD_TIME), bad);
        }
    }

    @Test
    void dayAndTimeInTwoColumns() {
        CsvMapping one = mapping(',', '.', "yyyy-MM-dd HH:mm:ss", UTC, column("v", Paths.SOG, CsvUnit.KNOT));
        CsvMapping mapping = new CsvMapping(
                one.text(),
                1,
                1,
                List.of(CsvSelector.named("day"), CsvSelector.named("clock")),
                one.timeFormat(),
                UTC,
                null,
                one.columns());
        IngestResult result = read(mapping, "clock,v,day", "12:00:00,5,2026-05-09");
        assertEquals(nanos("2026-05-09T12:00:00Z"), track(result).startNanos());
    }

    @Test
    void columnsByPlaceWithoutHeader() {
        CsvMapping mapping = new CsvMapping(
                new CsvMapping.TextForm(StandardCharsets.UTF_8, '\t', '.', "wing"),
                0,
                0,
                List.of(CsvSelector.at(2)),
                "iso",
                UTC,
                null,
                List.of(new CsvColumn(CsvSelector.at(1), Paths.CAMBER, CsvUnit.DEGREE, CsvColumn.Sense.SAME)));
        IngestResult result = read(mapping, "18\t2026-05-09T12:00:00Z", "19\t2026-05-09T12:00:01Z");
        assertValues(result, Paths.CAMBER, Math.toRadians(18), Math.toRadians(19));
        assertEquals("wing", track(result).groups().get(0).name());
    }

    @Test
    void aColumnOfBoatsGivesATrackForEach() {
        CsvMapping one = mapping(',', '.', "iso", UTC, column("v", Paths.SOG, CsvUnit.METRE_PER_SECOND));
        CsvMapping mapping = new CsvMapping(
                one.text(), 1, 1, one.timeColumns(), "iso", UTC, CsvSelector.named("boat"), one.columns());
        IngestResult result = read(
                mapping,
                "time,boat,v",
                "2026-05-09T12:00:00Z,Avocet,1",
                "2026-05-09T12:00:00Z,Curlew,2",
                "2026-05-09T12:00:01Z,Avocet,3",
                "2026-05-09T12:00:01Z,Curlew,4");
        List<BoatTrack> tracks =
                assertInstanceOf(IngestResult.Tracks.class, result).tracks();
        assertEquals(
                List.of("Avocet", "Curlew"),
                tracks.stream().map(BoatTrack::boat).toList());
        assertArrayEquals(new double[] {2, 4}, channel(tracks.get(1), Paths.SOG).toArray());
    }

    @Test
    void rowsOfOneStampAreSpreadToTheNext() {
        List<String> lines = new ArrayList<>(List.of("time,v"));
        for (int i = 0; i < 40; i++) {
            lines.add("2026-05-09T12:00:0" + i / 10 + "Z," + i);
        }
        IngestResult result = read(
                mapping(',', '.', "iso", UTC, column("v", Paths.SOG, CsvUnit.METRE_PER_SECOND)),
                lines.toArray(String[]::new));
        ChannelGroup group = track(result).groups().get(0);
        long noon = nanos("2026-05-09T12:00:00Z");
        for (int i = 0; i < 40; i++) {
            assertTrue(Math.abs(group.timeNanos(i) - noon - i * 100_000_000L) < 10, "row " + i);
        }
    }

    @Test
    void badRowsAreCountedWithTheirPlace() {
        IngestResult result = read(
                mapping(
                        ',',
                        '.',
                        "iso",
                        UTC,
                        column("v", Paths.SOG, CsvUnit.METRE_PER_SECOND),
                        column("w", Paths.AWS, CsvUnit.METRE_PER_SECOND)),
                "time,v,w",
                "2026-05-09T12:00:00Z,1,1",
                "2026-05-09T12:00:01Z,zwei,2",
                "when,3,3",
                "2026-05-09T12:00:03Z,4",
                "",
                "2026-05-09T12:00:02Z,5,5",
                "2026-05-09T12:00:04Z,6,6");
        assertEquals(
                Map.of(
                        IssueKind.BAD_NUMBER, 1L,
                        IssueKind.BAD_TIME, 1L,
                        IssueKind.SHORT_ROW, 1L,
                        IssueKind.TIME_NOT_RISING, 1L),
                result.report().issues().counts());
        assertEquals(8, result.report().lines());
        assertEquals(
                List.of(3L, 4L, 5L, 7L),
                result.report().issues().first().stream().map(i -> i.line()).toList());
        assertValues(result, Paths.SOG, 1, Double.NaN, 4, 6);
        assertEquals(Quality.ABSENT, channel(track(result), Paths.AWS).quality(2));
    }

    @Test
    void hugeRowsAndLostQuotesCostOneRow() {
        CsvMapping mapping = mapping(',', '.', "iso", UTC, column("v", Paths.SOG, CsvUnit.METRE_PER_SECOND));
        CsvReader reader = new CsvReader(mapping, "x", null);
        accept(reader, "time,v\n\"2026-05-09T12:00:00Z,1\n");
        byte[] chunk = new byte[1 << 16];
        java.util.Arrays.fill(chunk, (byte) '7');
        for (int i = 0; i < 100; i++) {
            reader.accept(chunk, 0, chunk.length);
        }
        accept(reader, "\n2026-05-09T12:00:05Z,2\n");
        IngestResult result = reader.finish();
        assertEquals(1, result.report().issues().count(IssueKind.TOO_LONG));
        assertEquals(1, result.report().issues().count(IssueKind.BAD_TIME));
        assertValues(result, Paths.SOG, 2);
    }

    @Test
    void noMutationOfATableMakesTheReaderFail() {
        Random random = new Random(20260511);
        CsvMapping mapping = mapping(
                ',', '.', "iso", UTC, column("v", Paths.SOG, CsvUnit.KNOT), column("w", Paths.AWA, CsvUnit.DEGREE));
        for (int lines = 0; lines < 20_000; ) {
            StringBuilder table = new StringBuilder("time,\"v\",w\n");
            for (int i = 0; i < 20; i++, lines++) {
                table.append("2026-05-09T12:00:")
                        .append(10 + i)
                        .append("Z,")
                        .append(i)
                        .append(",\"-1.5\"\r\n");
            }
            byte[] bytes = table.toString().getBytes(StandardCharsets.UTF_8);
            for (int i = 0; i < 20; i++) {
                int at = random.nextInt(bytes.length);
                bytes[at] = random.nextBoolean()
                        ? (byte) random.nextInt(256)
                        : (byte) ",;\"\n\r\0-.0123456789:TZ+".charAt(random.nextInt(22));
            }
            CsvReader reader = new CsvReader(mapping, "x", null);
            int cut = random.nextInt(bytes.length);
            reader.accept(bytes, 0, cut);
            reader.accept(bytes, cut, bytes.length);
            assertNotNull(reader.finish());
        }
    }

    @Test
    void theSameBytesGiveTheSameResultHoweverTheyAreCut() {
        CsvMapping mapping = mapping(',', '.', "iso", UTC, column("v \"q\"", Paths.SOG, CsvUnit.KNOT));
        byte[] table = "time,\"v \"\"q\"\"\"\r\n2026-05-09T12:00:00Z,\"1\"\r\n\r\n2026-05-09T12:00:01Z,2"
                .getBytes(StandardCharsets.UTF_8);
        IngestResult whole = CsvReader.read(table, mapping, "x", null);
        assertValues(whole, Paths.SOG, KNOT, 2 * KNOT);
        for (int cut = 0; cut <= table.length; cut++) {
            CsvReader reader = new CsvReader(mapping, "x", null);
            reader.accept(table, 0, cut);
            reader.accept(table, cut, table.length);
            IngestResult parts = reader.finish();
            assertEquals(whole.report().lines(), parts.report().lines());
            assertValues(parts, Paths.SOG, KNOT, 2 * KNOT);
        }
    }

    private static void accept(CsvReader reader, String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        reader.accept(bytes, 0, bytes.length);
    }

    private static IngestResult timeOnly(String format, ZoneId zone, String time, @Nullable Long start) {
        CsvMapping mapping = mapping(',', '.', format, zone, column("v", Paths.SOG, CsvUnit.KNOT));
        byte[] table = ("time,v\n" + time + ",1\n").getBytes(StandardCharsets.UTF_8);
        return CsvReader.read(table, mapping, "x", start);
    }

    private static long firstTime(String format, ZoneId zone, String time, @Nullable Long start) {
        return track(timeOnly(format, zone, time, start)).startNanos();
    }

    private static CsvColumn column(String name, String path, CsvUnit unit) {
        return new CsvColumn(CsvSelector.named(name), path, unit, CsvColumn.Sense.SAME);
    }

    private static CsvMapping mapping(char delimiter, char point, String time, ZoneId zone, CsvColumn... columns) {
        return new CsvMapping(
                new CsvMapping.TextForm(StandardCharsets.UTF_8, delimiter, point, "csv"),
                1,
                1,
                List.of(CsvSelector.named("time")),
                time,
                zone,
                null,
                List.of(columns));
    }

    private static CsvMapping withCharset(CsvMapping m, Charset charset) {
        CsvMapping.TextForm text = new CsvMapping.TextForm(
                charset, m.text().delimiter(), m.text().point(), m.text().group());
        return new CsvMapping(text, 1, 1, m.timeColumns(), m.timeFormat(), m.zone(), null, m.columns());
    }

    private static IngestResult read(CsvMapping mapping, String... lines) {
        byte[] table = String.join("\r\n", lines).getBytes(StandardCharsets.UTF_8);
        return CsvReader.read(table, mapping, "x", null);
    }

    private static BoatTrack track(IngestResult result) {
        return assertInstanceOf(IngestResult.Tracks.class, result).tracks().get(0);
    }

    private static Channel channel(BoatTrack track, String path) {
        Channel channel = track.find(path);
        if (channel == null) {
            throw new AssertionError(path);
        }
        return channel;
    }

    private static void assertValues(IngestResult result, String path, double... expected) {
        assertArrayEquals(expected, channel(track(result), path).toArray(), 1e-9);
    }

    private static long nanos(String utc) {
        Instant instant = Instant.parse(utc);
        assertTrue(instant.getNano() == 0);
        return instant.getEpochSecond() * 1_000_000_000L;
    }
}
