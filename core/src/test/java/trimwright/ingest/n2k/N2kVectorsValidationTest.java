package trimwright.ingest.n2k;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import trimwright.evidence.ReferenceFiles;
import trimwright.evidence.ReferenceTest;
import trimwright.evidence.ValidatedAgainst;
import trimwright.ingest.TimeText;
import trimwright.track.Paths;

/** Messages with the values that the open description of them gives. */
class N2kVectorsValidationTest {
    /** Fields of the reference by layout and path, with the last digit they are given to. */
    private static final Map<N2kLayout, List<String>> FIELDS = Map.ofEntries(
            Map.entry(N2kLayout.RUDDER, List.of("position")),
            Map.entry(N2kLayout.HEADING_TRUE, List.of("heading", "variation")),
            Map.entry(N2kLayout.HEADING_MAGNETIC, List.of("heading", "deviation", "variation")),
            Map.entry(N2kLayout.TURN, List.of("rate")),
            Map.entry(N2kLayout.ATTITUDE, List.of("roll", "pitch")),
            Map.entry(N2kLayout.VARIATION, List.of("variation")),
            Map.entry(N2kLayout.SPEED, List.of("speedWaterReferenced", "speedGroundReferenced")),
            Map.entry(N2kLayout.POSITION, List.of("latitude", "longitude")),
            Map.entry(N2kLayout.FIX, List.of("latitude", "longitude")),
            Map.entry(N2kLayout.COURSE_TRUE, List.of("sog", "cog")),
            Map.entry(N2kLayout.WIND_BOAT, List.of("windAngle", "windSpeed")),
            Map.entry(N2kLayout.TIME, List.of()));

    @ReferenceTest
    @ValidatedAgainst(
            source = "CANBOAT",
            where = "32 messages with the values of their fields: rudder, heading, turn, attitude, variation, speed,"
                    + " position, course, fix, time, wind",
            tolerance = "half of the last digit given; two values of a message without a fix are absent here")
    void messagesAsDescribed() {
        int values = 0;
        int messages = 0;
        for (String row :
                new String(ReferenceFiles.bytes("oracles/n2k_vectors.tsv"), StandardCharsets.UTF_8).split("\n")) {
            String[] cells = row.split("\t");
            if (row.startsWith("#") || cells.length != 3) {
                continue;
            }
            Frame frame = new Frame();
            byte[] line = cells[1].getBytes(StandardCharsets.ISO_8859_1);
            assertTrue(new FrameText().read(line, 0, line.length, frame), row);
            N2kDecoder message = new N2kDecoder();
            assertTrue(message.decode(frame), row);
            values += compare(message, fields(cells[2]), row);
            messages++;
        }
        assertEquals(32, messages);
        assertTrue(values >= 45, values + " values compared");
    }

    private static int compare(N2kDecoder message, Map<String, String> expected, String row) {
        List<String> names = FIELDS.getOrDefault(message.layout(), List.of());
        assertEquals(message.layout().paths().size(), names.size(), row);
        for (int i = 0; i < names.size(); i++) {
            String text = expected.getOrDefault(names.get(i), "null");
            double value = message.value(i);
            if (text.equals("null") || text.startsWith("922.")) {
                assertTrue(Double.isNaN(value), row + ": " + names.get(i) + " is " + value);
                continue;
            }
            boolean degrees = message.layout().paths().get(i).equals(Paths.LATITUDE)
                    || message.layout().paths().get(i).equals(Paths.LONGITUDE);
            int decimals = text.length() - text.indexOf('.') - 1;
            double shown = degrees ? Math.toDegrees(value) : value;
            assertEquals(
                    Double.parseDouble(text), shown, 0.5000001 * Math.pow(10, -decimals), row + ": " + names.get(i));
        }
        compareClock(message, expected, row);
        return names.size();
    }

    private static void compareClock(N2kDecoder message, Map<String, String> expected, String row) {
        String date = expected.getOrDefault("date", "null");
        if (date.equals("null")) {
            assertEquals(TimeText.NONE, message.clock(), row);
            return;
        }
        long day = LocalDate.ofEpochDay(Long.parseLong(date)).atStartOfDay().toEpochSecond(ZoneOffset.UTC);
        double second = Double.parseDouble(expected.getOrDefault("time", "0"));
        assertEquals(day * 1_000_000_000L + Math.round(second * 1e9), message.clock(), row);
    }

    private static Map<String, String> fields(String text) {
        Map<String, String> fields = new HashMap<>();
        for (String field : text.strip().split(";")) {
            int equals = field.indexOf('=');
            fields.put(field.substring(0, equals), field.substring(equals + 1));
        }
        return fields;
    }
}
