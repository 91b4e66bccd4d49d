package trimwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LiveCommandTest {
    @Test
    void whatCannotBeRecordedIsSaidBeforeAnythingStarts(@TempDir Path folder) throws IOException {
        CliRun none = CliRun.in(folder, "live");
        assertEquals(2, none.exit());
        assertEquals(
                "No stream to record. Give one with --nmea or --signalk, for example --nmea udp://127.0.0.1:10110,"
                        + " or a session with --replay.\n",
                none.err());
        CliRun mode = CliRun.in(folder, "live", "--nmea", "udp://:0", "--event", "regatta");
        assertEquals(2, mode.exit());
        assertEquals("--event is regatta; it is practice, racing or racing-fleet.\n", mode.err());
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            String address = "tcp-listen://:" + taken.getLocalPort();
            CliRun busy = CliRun.in(folder, "live", "--nmea", address, "--library", folder.toString(), "--port", "0");
            assertEquals(2, busy.exit());
            assertEquals(address, busy.err().split(" ", 2)[0]);
        }
    }
}
