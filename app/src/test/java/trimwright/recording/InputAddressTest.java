package trimwright.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import trimwright.ingest.journal.JournalSource.Protocol;
import trimwright.text.UserInputException;

class InputAddressTest {
    private static String read(Protocol protocol, String given) {
        InputAddress read = InputAddress.of(protocol, given, "boat");
        return read.boat() + " " + read.transport() + " " + read.host() + " " + read.port() + " " + read.text();
    }

    @Test
    void anAddressNamesBoatTransportHostAndPort() {
        assertEquals(
                "boat UDP 127.0.0.1 10110 udp://127.0.0.1:10110", read(Protocol.NMEA0183, "udp://127.0.0.1:10110"));
        assertEquals(
                "Dunlin TCP 10.0.0.7 2000 tcp://10.0.0.7:2000", read(Protocol.NMEA0183, "Dunlin=tcp://10.0.0.7:2000"));
        assertEquals("boat TCP_LISTEN  2000 tcp-listen://:2000", read(Protocol.NMEA0183, "tcp-listen://:2000"));
        assertEquals("boat UDP ::1 5 udp://[::1]:5", read(Protocol.NMEA0183, "udp://[::1]:5"));
        assertEquals("Godwit TCP host 8375 tcp://host:8375", read(Protocol.SIGNALK, "Godwit=tcp://host:8375"));
    }

    @Test
    void anAddressThatCannotBeIsOneLineThatSaysHowToWriteIt() {
        for (String bad : new String[] {
            "",
            "udp",
            "udp://127.0.0.1",
            "udp://127.0.0.1:x",
            "udp://127.0.0.1:70000",
            "tcp://:2000",
            "tcp://h:0",
            "http://h:1",
            " =udp://h:1",
            "udp:h:1",
            "tcp://h h:1"
        }) {
            UserInputException fault =
                    assertThrows(UserInputException.class, () -> InputAddress.of(Protocol.NMEA0183, bad, "boat"), bad);
            assertEquals(
                    bad + " is no address of an NMEA stream; write BOAT=udp://127.0.0.1:10110, tcp://HOST:PORT or"
                            + " tcp-listen://:PORT.",
                    fault.getMessage());
        }
        assertThrows(UserInputException.class, () -> InputAddress.of(Protocol.SIGNALK, "udp://h:1", "boat"));
    }
}
