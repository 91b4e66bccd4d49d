package trimwright.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.File;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.ingest.journal.JournalText;
import trimwright.store.SessionInfo;
import trimwright.store.StoredTracks;
import trimwright.track.BoatTrack;
import trimwright.track.ChannelGroup;
import trimwright.track.Paths;

/** Kills recordings at random instants: {@code -Dtrimwright.kills=100} for many. */
class CrashTest {
    private static final int KILLS = Integer.getInteger("trimwright.kills", 2);

    @Test
    void aRecordingThatIsKilledLosesAtMostItsLastSecondAndIsClosedAtTheNextStart(@TempDir Path folder)
            throws Exception {
        Random random = new Random(11);
        for (int kill = 0; kill < KILLS; kill++) {
            Path library = folder.resolve("library-" + kill);
            int mustBeThere = sentBeforeTheLastSecond(library, 1_200 + random.nextInt(1_000));
            List<Journals.Closed> closed = new Journals(library).closeLeftovers();
            assertEquals(1, closed.size());
            SessionInfo session = closed.get(0).session();
            assertNotNull(session, closed.get(0).fault());
            BoatTrack track = StoredTracks.of(library, session).get(0);
            ChannelGroup group = track.findGroupOf(Paths.SOG);
            assertNotNull(group);
            // Nothing but the end may be missing.
            assertTrue(group.size() >= mustBeThere, group.size() + " of " + mustBeThere);
            long first = group.timeNanos(0);
            for (int i = 0; i < group.size(); i++) {
                assertEquals(first + i * 100_000_000L, group.timeNanos(i));
            }
            assertEquals(List.of(), new Journals(library).closeLeftovers());
        }
    }

    /** Sends a sentence each 5 ms, and kills; gives how many were sent a second before that. */
    private static int sentBeforeTheLastSecond(Path library, long millis) throws Exception {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        classPath(),
                        KilledRecording.class.getName(),
                        library.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        int sent = 0;
        int before = 0;
        try (BufferedReader out = process.inputReader();
                Socket socket = new Socket(InetAddress.getLoopbackAddress(), Integer.parseInt(out.readLine()))) {
            OutputStream to = socket.getOutputStream();
            long end = System.nanoTime() + millis * 1_000_000L;
            while (System.nanoTime() < end) {
                to.write(NmeaBytes.of(String.format(
                        Locale.ROOT,
                        "GPRMC,12%02d%02d.%d0,A,4000.000,N,02000.000,W,20.0,90.0,090526,,,A",
                        sent / 600,
                        sent / 10 % 60,
                        sent % 10)));
                sent++;
                before += System.nanoTime() < end - 1_000_000_000L ? 1 : 0;
                Thread.sleep(5);
            }
            process.destroyForcibly().waitFor();
        } finally {
            process.destroyForcibly();
        }
        return before;
    }

    private static String classPath() throws URISyntaxException {
        List<String> places = new ArrayList<>();
        for (Class<?> one : List.of(KilledRecording.class, Recording.class, JournalText.class)) {
            places.add(Path.of(one.getProtectionDomain()
                            .getCodeSource()
                            .getLocation()
                            .toURI())
                    .toString());
        }
        return String.join(File.pathSeparator, places);
    }
}
