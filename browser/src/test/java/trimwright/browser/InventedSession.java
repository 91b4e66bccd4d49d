package trimwright.browser;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Random;
import trimwright.store.Library;
import trimwright.store.LibraryWriter;
import trimwright.store.SessionInfo;
import trimwright.store.SourceInfo;
import trimwright.track.BoatTrack;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;
import trimwright.track.Paths;
import trimwright.track.Quality;

/**
 * A long invented day in a library, written by the store itself: two boats, ten hours, five samples a second. In the
 * second hour the speed of each stands frozen for ten minutes, and at the third hour's begin it jumps once.
 */
final class InventedSession {
    private static final int RATE = 5;
    private static final int HOURS = 10;
    private static final long START = 1_790_000_000_000_000_000L;

    private InventedSession() {}

    static SessionInfo write(Path folder) {
        byte[] bytes = "nothing".getBytes(StandardCharsets.US_ASCII);
        String hash = hash(bytes);
        SourceInfo source = new SourceInfo(hash, "invented.csv", "csv", 7, 1, Map.of("bad_number", 3L), List.of());
        try (Library library = Library.openOrCreate(folder);
                LibraryWriter writer = library.writer()) {
            return writer.add(
                    "invented",
                    List.of(
                            new LibraryWriter.SourcedTrack(track("Dunlin", 1), hash),
                            new LibraryWriter.SourcedTrack(track("Avocet", 2), hash)),
                    List.of(new LibraryWriter.RawSource(source, () -> new ByteArrayInputStream(bytes), null)));
        }
    }

    private static String hash(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    private static BoatTrack track(String boat, int seed) {
        Random random = new Random(seed);
        int n = HOURS * 3600 * RATE;
        long[] times = new long[n];
        double[] speed = new double[n];
        double[] heading = new double[n];
        double[] latitude = new double[n];
        double[] longitude = new double[n];
        double lat = 10;
        double lon = -35;
        for (int i = 0; i < n; i++) {
            double s = i / (double) RATE;
            times[i] = START + i * (1_000_000_000L / RATE);
            speed[i] = 10 + 3 * Math.sin(s / 700) + 0.3 * random.nextGaussian();
            heading[i] = Math.toRadians((3600 + (((long) s / 240) % 2 == 0 ? 45 : -45) + random.nextGaussian()) % 360);
            lat += speed[i] / RATE * Math.cos(heading[i]) / 111_000 * (((long) s / 3000) % 2 == 0 ? 1 : -1);
            lon += speed[i] / RATE * Math.sin(heading[i]) / 109_000;
            latitude[i] = Math.toRadians(lat);
            longitude[i] = Math.toRadians(lon);
        }
        ChannelGroup group = new ChannelGroup(
                "gnss",
                times,
                List.of(
                        new Channel(Paths.SOG, speed, marks(n)),
                        Channel.of(Paths.HEADING, heading),
                        Channel.of(Paths.LATITUDE, latitude),
                        Channel.of(Paths.LONGITUDE, longitude)));
        return new BoatTrack(boat, List.of(group));
    }

    private static byte[] marks(int n) {
        byte[] marks = new byte[n];
        Arrays.fill(marks, 3600 * RATE, (3600 + 600) * RATE, (byte) Quality.FROZEN.ordinal());
        marks[7200 * RATE] = (byte) Quality.JUMP.ordinal();
        return marks;
    }
}
