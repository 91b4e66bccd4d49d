package trimwright.browser;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import trimwright.store.Library;
import trimwright.store.LibraryWriter;
import trimwright.store.SessionInfo;
import trimwright.store.SourceInfo;
import trimwright.track.BoatTrack;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;
import trimwright.track.Paths;

/**
 * A short race of three boats in a steady wind from north, one beat with a tack and one run with a gybe, made here from
 * waypoints alone: the second and third boat sail the same way at 95 and 90 % of the first one's speed.
 */
final class InventedRace {
    static final List<String> BOATS = List.of("Avocet", "Curlew", "Dunlin");

    private static final long START = 1_790_000_000_000_000_000L;
    private static final int RATE = 5;
    private static final int SECONDS = 600;
    private static final double WIND = 8;
    private static final double LATITUDE = 31.2;
    private static final double LONGITUDE = -41.5;
    private static final double METRES_A_DEGREE = 110_900;
    private static final double METRES_A_DEGREE_EAST = 95_300;
    /** North and east of the middle of the start line (m). */
    private static final double[][] WAY = {{0, 0}, {765, 765}, {1545, -15}, {772, -664}, {100, -100}, {-900, 739}};

    private InventedRace() {}

    static SessionInfo write(Path folder) {
        byte[] course = course().getBytes(StandardCharsets.UTF_8);
        byte[] logs = "nothing".getBytes(StandardCharsets.UTF_8);
        SourceInfo log = new SourceInfo(hash(logs), "race.csv", "csv", 7, 1, Map.of(), List.of());
        SourceInfo plan =
                new SourceInfo(hash(course), "course.toml", SourceInfo.COURSE, course.length, 1, Map.of(), List.of());
        try (Library library = Library.openOrCreate(folder);
                LibraryWriter writer = library.writer()) {
            return writer.add(
                    "race",
                    BOATS.stream()
                            .map(boat -> new LibraryWriter.SourcedTrack(
                                    track(boat, 1 - 0.05 * BOATS.indexOf(boat)), hash(logs)))
                            .toList(),
                    List.of(
                            new LibraryWriter.RawSource(log, () -> new ByteArrayInputStream(logs), null),
                            new LibraryWriter.RawSource(plan, () -> new ByteArrayInputStream(course), null)));
        }
    }

    private static String course() {
        return String.join(
                "\n",
                "schema = \"course/1\"",
                "name = \"Short race\"",
                "gun_utc = \"2026-09-21T14:14:00Z\"",
                "order = \"windward\"",
                "[start]",
                end("port", 0, -150),
                end("starboard", 0, 150),
                "[finish]",
                end("port", 100, 50),
                end("starboard", 100, -250),
                "[[mark]]",
                "id = \"windward\"",
                place(1500, 0),
                "leave = \"port\"",
                "");
    }

    private static String end(String side, double north, double east) {
        return place(north, east).replace("lat_deg", side + "_lat_deg").replace("lon_deg", side + "_lon_deg");
    }

    private static String place(double north, double east) {
        return String.format(Locale.ROOT, "lat_deg = %.7f\nlon_deg = %.7f", latitude(north), longitude(east));
    }

    private static double latitude(double north) {
        return LATITUDE + north / METRES_A_DEGREE;
    }

    private static double longitude(double east) {
        return LONGITUDE + east / METRES_A_DEGREE_EAST;
    }

    private static BoatTrack track(String boat, double share) {
        int n = SECONDS * RATE;
        long[] times = new long[n];
        double[][] columns = new double[7][n];
        double north = -400;
        double east = -400;
        double heading = 45;
        double slow = 0;
        int next = 0;
        for (int i = 0; i < n; i++) {
            while (next < WAY.length - 1 && Math.hypot(WAY[next][0] - north, WAY[next][1] - east) < 25) {
                next++;
            }
            double wanted = Math.toDegrees(Math.atan2(WAY[next][1] - east, WAY[next][0] - north));
            double off = Math.IEEEremainder(wanted - heading, 360);
            heading += Math.max(-12.0 / RATE, Math.min(12.0 / RATE, off));
            // Half the speed is lost in a turn and comes back within some twelve seconds.
            slow = Math.abs(off) > 5 ? Math.min(0.5, slow + 0.2 / RATE) : Math.max(0, slow - 0.04 / RATE);
            double speed = share * (Math.abs(Math.IEEEremainder(heading, 360)) < 90 ? 10 : 12) * (1 - slow);
            double radians = Math.toRadians(heading);
            north += speed * Math.cos(radians) / RATE;
            east += speed * Math.sin(radians) / RATE;
            double ahead = WIND * Math.cos(radians) + speed;
            double side = -WIND * Math.sin(radians);
            times[i] = START + i * (1_000_000_000L / RATE);
            columns[0][i] = speed;
            columns[1][i] = Math.toRadians((heading % 360 + 360) % 360);
            columns[2][i] = columns[1][i];
            columns[3][i] = Math.toRadians(latitude(north));
            columns[4][i] = Math.toRadians(longitude(east));
            columns[5][i] = Math.atan2(side, ahead);
            columns[6][i] = Math.hypot(side, ahead);
        }
        List<String> paths =
                List.of(Paths.SOG, Paths.HEADING, Paths.COG, Paths.LATITUDE, Paths.LONGITUDE, Paths.AWA, Paths.AWS);
        List<Channel> channels = paths.stream()
                .map(path -> Channel.of(path, Arrays.copyOf(columns[paths.indexOf(path)], n)))
                .toList();
        return new BoatTrack(boat, List.of(new ChannelGroup("all", times, channels)));
    }

    private static String hash(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
