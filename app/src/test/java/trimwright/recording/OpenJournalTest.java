package trimwright.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.cli.CliRun;
import trimwright.ingest.journal.JournalSource;
import trimwright.ingest.journal.JournalSource.Framing;
import trimwright.ingest.journal.JournalSource.Protocol;

/** What is being recorded can be checked at the dock while it is written. */
class OpenJournalTest {
    private static final JournalSource BUS =
            new JournalSource(Protocol.NMEA0183, Framing.STREAM, "Dunlin", "udp://127.0.0.1:10110");
    private static final JournalSource GAUGES =
            new JournalSource(Protocol.SIGNALK, Framing.STREAM, "Dunlin", "tcp://127.0.0.1:8375");

    /** Rows of the gauges' table that have come so far: 200 s of the list. */
    private static final int ROWS = 2000;

    @Test
    void theListIsCheckedAsFarAsItCameOutOfAJournalThatEndsInHalfARecord(@TempDir Path home) throws IOException {
        Path morning = home.resolve("morning");
        assertEquals(
                0,
                CliRun.in(home, "simulate", "--dock", "--seed", "1", "--out", morning.toString())
                        .exit());
        Path library = home.resolve("library");
        Path file = Files.createDirectories(library.resolve("journals")).resolve("2027-03-06T11-30-00Z.journal");
        Disk disk = mine(Disk.lock(file));
        JournalFile journal = JournalFile.begin(disk);
        List<String> sentences = Files.readAllLines(morning.resolve("logs/dunlin.nmea"));
        List<String> rows = Files.readAllLines(morning.resolve("logs/dunlin-wing.csv"));
        long begin = Instant.parse("2027-03-06T11:30:00Z").toEpochMilli() * 1_000_000;
        int sentence = 0;
        for (int i = 1; i <= ROWS; i++) {
            long nanos = begin + (i - 1) * 100_000_000L;
            journal.data(GAUGES, nanos, delta(rows.get(i)).getBytes(StandardCharsets.US_ASCII));
            StringBuilder bus = new StringBuilder();
            do {
                bus.append(sentences.get(sentence++)).append("\r\n");
            } while (!sentences.get(sentence).startsWith("$GPRMC"));
            journal.data(BUS, nanos, bus.toString().getBytes(StandardCharsets.US_ASCII));
        }
        // Still open, and its last record half written.
        disk.append(Arrays.copyOf("D half".getBytes(StandardCharsets.US_ASCII), 4));
        CliRun run = CliRun.in(
                home, "dock-check", "--live", "--boat", "whimbrel14", "--library", library.toString(), "--json");
        assertEquals(0, run.exit(), run.err());
        JsonNode check = new ObjectMapper().readTree(run.out());
        assertEquals("sign", finding(check, "heel_side"));
        assertEquals("off", finding(check, "flap_foot_zero"));
        assertEquals("none", finding(check, "camber_starboard"));
        assertEquals("none", finding(check, "twist_starboard"));
        assertEquals("not_yet", finding(check, "camber_port"));
        assertEquals("not_yet", finding(check, "wind_turns"));
        journal.close();
    }

    private static Disk mine(@Nullable Disk disk) {
        if (disk == null) {
            throw new AssertionError("another program writes it");
        }
        return disk;
    }

    /** A row of the table as a gauge that speaks Signal K would send it. */
    private static String delta(String row) {
        String[] cells = row.split(",", -1);
        return String.format(
                Locale.ROOT,
                "{\"updates\":[{\"$source\":\"wing\",\"timestamp\":\"%s\",\"values\":[{\"path\":\"sails.wing.camber\",\"value\":%f},"
                        + "{\"path\":\"sails.wing.twist\",\"value\":%f},{\"path\":\"sails.wing.sheet\",\"value\":%f}]}]}\n",
                cells[0],
                radians(cells[1]),
                radians(cells[2]),
                radians(cells[3]));
    }

    private static double radians(String degrees) {
        return Math.toRadians(Double.parseDouble(degrees));
    }

    private static String finding(JsonNode check, String item) {
        for (JsonNode line : check.path("lines")) {
            if (line.path("item").asText().equals(item)) {
                return line.path("finding").asText();
            }
        }
        throw new AssertionError("no line " + item);
    }
}
