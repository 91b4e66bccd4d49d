package trimwright.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.DatagramPacket;
import java.net.DatagramSocket;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.ingest.journal.JournalSource;
import trimwright.ingest.journal.JournalSource.Protocol;
import trimwright.store.SessionInfo;
import trimwright.store.StoredTracks;
import trimwright.track.BoatTrack;
import trimwright.track.Channel;
import trimwright.track.Paths;

class RecordingTest {
    private static final int SENTENCES = 40;

    private static Recording begin(Path library, Follower follower, String... addresses) {
        List<InputAddress> all = Stream.of(addresses)
                .map(text -> InputAddress.of(Protocol.NMEA0183, text, "boat"))
                .toList();
        return begin(library, follower, all);
    }

    private static Recording begin(Path library, Follower follower, List<InputAddress> all) {
        return Recording.begin(new Journals(library), all, SteadyClock.ofSystem(), EventMode.PRACTICE, follower);
    }

    private static byte[] fix(int second, double knots) {
        return NmeaBytes.of(String.format(
                java.util.Locale.ROOT,
                "GPRMC,1200%02d.00,A,4000.000,N,02000.000,W,%.1f,90.0,090526,,,A",
                second,
                knots));
    }

    private static void await(BooleanSupplier condition) throws InterruptedException {
        long end = System.nanoTime() + 20_000_000_000L;
        while (!condition.getAsBoolean()) {
            assertTrue(System.nanoTime() < end, "not within 20 s");
            Thread.sleep(5);
        }
    }

    /** Counts what the recorder hands on. */
    private static final class Counter implements Follower {
        private final AtomicLong bytes = new AtomicLong();

        @Override
        public void take(JournalSource source, long arrivalNanos, byte[] taken) {
            bytes.addAndGet(taken.length);
        }

        @Override
        public void tick(long nowNanos) {}
    }

    private static int samples(Path library, SessionInfo session, String boat, String path) {
        for (BoatTrack track : StoredTracks.of(library, session)) {
            Channel channel = track.find(path);
            if (track.boat().equals(boat) && channel != null) {
                return channel.size();
            }
        }
        return 0;
    }

    @Test
    void eachRaceBecomesASessionWhileRecordingGoesOn(@TempDir Path folder) throws Exception {
        Counter counter = new Counter();
        try (DatagramSocket udp = new DatagramSocket()) {
            Recording run = begin(folder, counter, "Dunlin=udp://127.0.0.1:0");
            assertNull(run.cut(), "nothing came yet");
            long sent = 0;
            for (int i = 0; i < 30; i++) {
                sent += send(udp, run, fix(i, 20));
            }
            long first = sent;
            await(() -> counter.bytes.get() == first);
            Journals.Closed race = run.cut();
            assertNotNull(race);
            SessionInfo one = race.session();
            assertNotNull(one, race.fault());
            assertEquals(30, samples(folder, one, "Dunlin", Paths.SOG));
            for (int i = 30; i < 50; i++) {
                sent += send(udp, run, fix(i, 20));
            }
            long all = sent;
            await(() -> counter.bytes.get() == all);
            Journals.Closed rest = run.close();
            assertNotNull(rest);
            SessionInfo other = rest.session();
            assertNotNull(other, rest.fault());
            assertEquals(20, samples(folder, other, "Dunlin", Paths.SOG));
            assertTrue(!one.id().equals(other.id()), other.id());
        }
    }

    private static int send(DatagramSocket udp, Recording run, byte[] bytes) throws IOException {
        udp.send(new DatagramPacket(
                bytes,
                bytes.length,
                InetAddress.getLoopbackAddress(),
                run.ports().get(0)));
        return bytes.length;
    }

    @Test
    void packetsConnectionsAndListenersOfSeveralBoatsAllComeIntoOneSession(@TempDir Path folder) throws Exception {
        Counter counter = new Counter();
        long sent = 0;
        try (ServerSocket server = new ServerSocket(0, 1, InetAddress.getLoopbackAddress());
                DatagramSocket udp = new DatagramSocket()) {
            Recording run = begin(
                    folder,
                    counter,
                    "Dunlin=udp://127.0.0.1:0",
                    "Godwit=tcp://127.0.0.1:" + server.getLocalPort(),
                    "Plover=tcp-listen://:0");
            try (Socket godwit = server.accept();
                    Socket plover = new Socket(
                            InetAddress.getLoopbackAddress(), run.ports().get(2))) {
                for (int i = 0; i < SENTENCES; i++) {
                    byte[] fix = fix(i, 20);
                    udp.send(new DatagramPacket(
                            fix,
                            fix.length - 2,
                            InetAddress.getLoopbackAddress(),
                            run.ports().get(0)));
                    godwit.getOutputStream().write(fix);
                    plover.getOutputStream().write(fix, 0, 10);
                    plover.getOutputStream().write(fix, 10, fix.length - 10);
                    sent += 3L * fix.length - 2;
                }
                run.recorder().mark(20, "");
                long all = sent;
                await(() -> counter.bytes.get() == all);
            }
            Journals.Closed closed = run.close();
            assertNotNull(closed);
            SessionInfo session = closed.session();
            assertNotNull(session, closed.fault());
            assertEquals("2026-05-09-fleet", session.id());
            for (String boat : new String[] {"Dunlin", "Godwit", "Plover"}) {
                assertEquals(SENTENCES, samples(folder, session, boat, Paths.SOG), boat);
            }
        }
        try (Stream<Path> left = Files.list(folder.resolve("journals"))) {
            assertEquals(0, left.count());
        }
    }

    @Test
    void aConnectionThatBreaksIsMadeAgainAndSignalKIsAskedForItsValues(@TempDir Path folder) throws Exception {
        Counter counter = new Counter();
        String delta = "{\"updates\":[{\"values\":[{\"path\":\"sails.wing.camber\",\"value\":0.25}]}]}\n";
        try (ServerSocket server = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            Recording run = begin(
                    folder,
                    counter,
                    List.of(InputAddress.of(
                            Protocol.SIGNALK, "Dunlin=tcp://127.0.0.1:" + server.getLocalPort(), "boat")));
            for (int i = 1; i <= 3; i++) {
                try (Socket socket = server.accept()) {
                    byte[] asked = socket.getInputStream().readNBytes(20);
                    assertEquals("{\"context\":\"vessels.", new String(asked, StandardCharsets.US_ASCII));
                    socket.getOutputStream().write(delta.getBytes(StandardCharsets.US_ASCII));
                    int soFar = i;
                    await(() -> counter.bytes.get() == (long) soFar * delta.length());
                }
            }
            Journals.Closed closed = run.close();
            assertNotNull(closed);
            SessionInfo session = closed.session();
            assertNotNull(session, closed.fault());
            assertEquals(3, samples(folder, session, "Dunlin", Paths.CAMBER));
        }
    }

    @Test
    void garbageAtLineRateIsKeptAndTheSentencesInItAreRead(@TempDir Path folder) throws Exception {
        Counter counter = new Counter();
        byte[] noise = new byte[1 << 22];
        new Random(5).nextBytes(noise);
        Recording run = begin(folder, counter, "Dunlin=tcp-listen://:0");
        long sent = 0;
        try (Socket socket =
                new Socket(InetAddress.getLoopbackAddress(), run.ports().get(0))) {
            for (int i = 0; i < 10; i++) {
                socket.getOutputStream().write(noise, i * 400_000, 400_000);
                socket.getOutputStream().write('\n');
                byte[] fix = fix(i, 20);
                socket.getOutputStream().write(fix);
                sent += 400_001 + fix.length;
            }
            long all = sent;
            await(() -> counter.bytes.get() == all);
        }
        Journals.Closed closed = run.close();
        assertNotNull(closed);
        SessionInfo session = closed.session();
        assertNotNull(session, closed.fault());
        assertEquals(10, samples(folder, session, "Dunlin", Paths.SOG));
        assertTrue(session.sources().get(0).bytes() > sent);
    }

    @Test
    void aRecordingInWhichNothingCameLeavesNothing(@TempDir Path folder) throws IOException {
        Recording run = begin(folder, Follower.NONE, "udp://127.0.0.1:0");
        assertNull(run.close());
        try (Stream<Path> left = Files.list(folder.resolve("journals"))) {
            assertEquals(0, left.count());
        }
    }

    @Test
    void aRecordingWithNothingReadableIsSetAsideAndNotTriedAgain(@TempDir Path folder) throws Exception {
        Counter counter = new Counter();
        Recording run = begin(folder, counter, "tcp-listen://:0");
        try (Socket socket =
                new Socket(InetAddress.getLoopbackAddress(), run.ports().get(0))) {
            socket.getOutputStream().write("nothing of use\n".getBytes(StandardCharsets.US_ASCII));
            await(() -> counter.bytes.get() == 15);
        }
        Journals.Closed closed = run.close();
        assertNotNull(closed);
        assertNull(closed.session());
        assertTrue(closed.journal().toString().endsWith(".journal.unread"));
        assertEquals(List.of(), new Journals(folder).closeLeftovers());
    }

    @Test
    void timesOfArrivalGoOnEvenlyWhenTheClockIsSet() {
        AtomicLong wall = new AtomicLong(1_000_000_000_000L);
        AtomicLong counter = new AtomicLong(7);
        SteadyClock clock = new SteadyClock(wall::get, counter::get);
        assertEquals(1_000_000_000_000L, clock.nanos());
        assertEquals(0, clock.takeStep());
        counter.addAndGet(1_000_000_000L);
        wall.addAndGet(-3_599_000_000_000L);
        assertEquals(1_001_000_000_000L, clock.nanos());
        assertEquals(-3_600_000_000_000L, clock.takeStep());
        assertEquals(0, clock.takeStep());
    }

    @Test
    void triesToConnectGetRarerAndAreQuickAgainAfterOneThatWorked() {
        BackOff backOff = new BackOff();
        assertEquals(250, backOff.nextMillis());
        assertEquals(500, backOff.nextMillis());
        for (int i = 0; i < 10; i++) {
            backOff.nextMillis();
        }
        assertEquals(5_000, backOff.nextMillis());
        backOff.worked();
        assertEquals(250, backOff.nextMillis());
    }
}
