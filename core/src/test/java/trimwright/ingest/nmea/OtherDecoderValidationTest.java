package trimwright.ingest.nmea;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trimwright.ingest.nmea.NmeaText.channel;
import static trimwright.ingest.nmea.NmeaText.sentence;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.io.TempDir;
import trimwright.evidence.OutsideProgram;
import trimwright.evidence.ReferenceFiles;
import trimwright.evidence.ReferenceTest;
import trimwright.evidence.ValidatedAgainst;
import trimwright.track.BoatTrack;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;
import trimwright.track.Paths;

/** The same logs read by this program and by another one that is installed beside it. */
class OtherDecoderValidationTest {
    /** Half of the last digit that it prints, and rounding. */
    private static final double POSITION_DEG = 0.51e-9;

    private static final double SPEED = 0.51e-3;
    private static final double COURSE_DEG = 0.51e-4;

    /** It takes dates before its own making for such of an earlier count of weeks, which has 1024. */
    private static final long WEEKS_1024 = 1024L * 7 * 86_400 * 1_000_000_000L;

    @TempDir
    Path folder;

    @ReferenceTest
    @ValidatedAgainst(
            source = "gpsdecode",
            where = "600 drawn RMC, all quarters of the globe, over the full hour",
            tolerance = "times exact; half of the last digits printed: 1e-9 deg, 1 mm/s, 1e-4 deg")
    void positionsTimesSpeedsAndCourses() {
        StringBuilder log = new StringBuilder();
        Random random = new Random(3);
        for (int i = 0; i < 600; i++) {
            log.append(sentence("GPRMC," + time(12 * 36_000 + 59 * 600 + 7 * i) + ",A," + position(random) + ","
                            + text("%.2f", 50 * random.nextDouble()) + "," + text("%.1f", 360 * random.nextDouble())
                            + ",310827,,,A"))
                    .append("\r\n");
        }
        BoatTrack track = track(log);
        Map<Long, List<Fix>> fixes = otherReading(log.toString().getBytes(StandardCharsets.US_ASCII));
        // It keeps the last one back until the next has come.
        assertTrue(fixes.size() >= 599, fixes.size() + " reports");
        Channel speed = channel(track, Paths.SOG);
        Channel course = channel(track, Paths.COG);
        assertEquals(fixes.size(), comparePositions(track, fixes, 0));
        ChannelGroup group = group(track);
        for (int i = 0; i < group.size(); i++) {
            for (Fix fix : fixes.getOrDefault(group.timeNanos(i), List.of())) {
                assertEquals(fix.speed, speed.get(i), SPEED, "sentence " + i);
                // 360 and 0 are one.
                double turn = (Math.toDegrees(course.get(i)) - fix.courseDeg) % 360;
                assertEquals(0, Math.min(Math.abs(turn), 360 - Math.abs(turn)), COURSE_DEG, "sentence " + i);
            }
        }
    }

    @ReferenceTest
    @ValidatedAgainst(
            source = "gpsdecode",
            where = "300 drawn GGA dated by ZDA, from one day to the next",
            tolerance = "times exact; half of the last digit printed: 1e-9 deg")
    void fixesThatAnotherSentenceDates() {
        StringBuilder log = new StringBuilder();
        Random random = new Random(4);
        for (int i = 0; i < 300; i++) {
            int tenths = 23 * 36_000 + 59 * 600 + 4 * i;
            String clock = time(tenths % 864_000);
            String date = tenths < 864_000 ? "28,02,2028" : "29,02,2028";
            log.append(sentence("GPZDA," + clock + "," + date + ",00,00")).append("\r\n");
            log.append(sentence("GPGGA," + clock + "," + position(random) + ",1,10,0.9,1.0,M,,M,,"))
                    .append("\r\n");
        }
        BoatTrack track = track(log);
        Map<Long, List<Fix>> fixes = otherReading(log.toString().getBytes(StandardCharsets.US_ASCII));
        assertTrue(fixes.size() > 290, fixes.size() + " reports");
        assertEquals(fixes.size(), comparePositions(track, fixes, 0));
    }

    @ReferenceTest
    @ValidatedAgainst(
            source = "gpsdecode",
            where = "passage of 2010-11-21, a real boat's log",
            tolerance = "times exact but for 1024 weeks; half of the last digit printed: 1e-9 deg")
    void aRealPassage() {
        byte[] log = ReferenceFiles.bytes("data/rob-passage-2010-11-21.nmea.gz");
        BoatTrack track = NmeaText.track(NmeaReader.read(log, NmeaOptions.of("x")));
        Map<Long, List<Fix>> fixes = otherReading(log);
        int compared = comparePositions(track, fixes, WEEKS_1024);
        // Counted in the file: its RMC name 904 different seconds; the other reports are of GLL.
        assertTrue(compared > 900, compared + " of " + fixes.size() + " reports compared");
    }

    /** How many positions of the track have reports of the same time; each must be one of them. */
    private static int comparePositions(BoatTrack track, Map<Long, List<Fix>> fixes, long later) {
        ChannelGroup group = group(track);
        Channel latitude = channel(track, Paths.LATITUDE);
        Channel longitude = channel(track, Paths.LONGITUDE);
        int compared = 0;
        for (int i = 0; i < group.size(); i++) {
            List<Fix> same = fixes.getOrDefault(group.timeNanos(i) + later, List.of());
            if (!same.isEmpty()) {
                double latitudeDeg = Math.toDegrees(latitude.get(i));
                double longitudeDeg = Math.toDegrees(longitude.get(i));
                assertTrue(
                        same.stream().anyMatch(fix -> fix.isAt(latitudeDeg, longitudeDeg)),
                        "position " + i + ": " + latitudeDeg + ", " + longitudeDeg + ", not in " + same);
                compared++;
            }
        }
        return compared;
    }

    private static BoatTrack track(CharSequence log) {
        return NmeaText.track(NmeaReader.read(log.toString().getBytes(StandardCharsets.US_ASCII), NmeaOptions.of("x")));
    }

    private static ChannelGroup group(BoatTrack track) {
        ChannelGroup group = track.findGroupOf(Paths.LATITUDE);
        if (group == null) {
            throw new AssertionError("no positions");
        }
        return group;
    }

    /** Its reports with position, by time; a log may say several of one time. */
    private Map<Long, List<Fix>> otherReading(byte[] log) {
        byte[] answer = OutsideProgram.get("gpsdecode", "gpsd-clients").run(folder, log, "-j");
        Pattern report = Pattern.compile("\"class\":\"TPV\".*?\"time\":\"([^\"]+)\".*?\"lat\":([-0-9.]+),"
                + "\"lon\":([-0-9.]+)(?:.*?\"track\":([-0-9.]+))?(?:.*?\"speed\":([-0-9.]+))?");
        Map<Long, List<Fix>> fixes = new TreeMap<>();
        for (String line : new String(answer, StandardCharsets.UTF_8).split("\n", -1)) {
            Matcher matcher = report.matcher(line);
            if (matcher.find()) {
                Instant time = Instant.parse(matcher.group(1));
                fixes.computeIfAbsent(time.getEpochSecond() * 1_000_000_000L + time.getNano(), t -> new ArrayList<>())
                        .add(new Fix(number(matcher, 2), number(matcher, 3), number(matcher, 4), number(matcher, 5)));
            }
        }
        return fixes;
    }

    private static double number(Matcher matcher, int group) {
        String digits = matcher.group(group);
        return digits == null ? Double.NaN : Double.parseDouble(digits);
    }

    private static String position(Random random) {
        int latitude = random.nextInt(90);
        int longitude = random.nextInt(180);
        return text("%02d%07.4f,", latitude, Math.min(59.9999, 60 * random.nextDouble()))
                + (random.nextBoolean() ? "N," : "S,")
                + text("%03d%07.4f,", longitude, Math.min(59.9999, 60 * random.nextDouble()))
                + (random.nextBoolean() ? "E" : "W");
    }

    private static String time(int tenths) {
        return text("%02d%02d%02d.%d0", tenths / 36_000, tenths / 600 % 60, tenths / 10 % 60, tenths % 10);
    }

    private static String text(String form, Object... values) {
        return String.format(Locale.ROOT, form, values);
    }

    private record Fix(double latitudeDeg, double longitudeDeg, double courseDeg, double speed) {
        boolean isAt(double otherLatitudeDeg, double otherLongitudeDeg) {
            return Math.abs(latitudeDeg - otherLatitudeDeg) < POSITION_DEG
                    && Math.abs(longitudeDeg - otherLongitudeDeg) < POSITION_DEG;
        }
    }
}
