package trimwright.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import trimwright.ingest.journal.JournalScanner;
import trimwright.ingest.journal.JournalSource;
import trimwright.ingest.journal.RecordKind;

class JournalFileTest {
    private static final JournalSource SOURCE = new JournalSource(
            JournalSource.Protocol.NMEA0183, JournalSource.Framing.STREAM, "Dunlin", "tcp://somewhere:1");

    /** A disk with so much room, which writes as much as fits before it refuses. */
    private static final class SmallDisk implements Disk {
        private byte[] bytes = new byte[0];
        private int room;

        SmallDisk(int room) {
            this.room = room;
        }

        @Override
        public void append(byte[] more) throws IOException {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            out.writeBytes(bytes);
            out.write(more, 0, Math.min(more.length, room - bytes.length));
            bytes = out.toByteArray();
            if (bytes.length == room) {
                throw new IOException("No space left on device");
            }
        }

        @Override
        public void force() {}

        @Override
        public void truncate(long length) {
            bytes = Arrays.copyOf(bytes, (int) length);
        }

        @Override
        public void close() {}
    }

    private static List<String> read(byte[] bytes) {
        List<String> found = new ArrayList<>();
        JournalScanner scanner = new JournalScanner((kind, source, nanos, held, from, to) ->
                found.add(kind + " " + new String(held, from, to - from, StandardCharsets.US_ASCII)));
        scanner.accept(bytes, 0, bytes.length);
        assertEquals(0, scanner.unread());
        return found;
    }

    private static void put(JournalFile journal, String text) {
        journal.data(SOURCE, 5, text.getBytes(StandardCharsets.US_ASCII));
    }

    @Test
    void onAFullDiskTheJournalStaysWholeAndWhenThereIsRoomAgainItGoesOnAndSaysWhatIsLost() throws IOException {
        SmallDisk disk = new SmallDisk(150);
        JournalFile journal = JournalFile.begin(disk);
        put(journal, "first");
        assertNull(journal.fault());
        put(journal, "second, which is longer than the room that is left on the disk");
        put(journal, "third");
        assertEquals("No space left on device", journal.fault());
        disk.room = 400;
        put(journal, "fourth");
        assertNull(journal.fault());
        put(journal, "fifth");
        journal.close();
        List<String> found = read(disk.bytes);
        assertEquals("SOURCE NMEA0183\tSTREAM\tDunlin\ttcp://somewhere:1", found.get(0));
        assertEquals(
                List.of("DATA first", "NOTE lost\t67 bytes that the disk did not take", "DATA fourth", "DATA fifth"),
                found.subList(1, found.size()));
    }

    @Test
    void aJournalClosedOnAFullDiskEndsWithAWholeRecord() throws IOException {
        SmallDisk disk = new SmallDisk(120);
        JournalFile journal = JournalFile.begin(disk);
        put(journal, "first");
        put(journal, "second, which is longer than the room that is left on the disk");
        journal.close();
        assertEquals(2, read(disk.bytes).size());
    }

    @Test
    void aSourceThatTheDiskRefusedIsDeclaredWhenThereIsRoom() throws IOException {
        SmallDisk disk = new SmallDisk(40);
        JournalFile journal = JournalFile.begin(disk);
        put(journal, "first");
        assertEquals(5, journal.lost());
        disk.room = 400;
        put(journal, "second");
        journal.close();
        List<String> found = read(disk.bytes);
        assertEquals("NOTE lost\t5 bytes that the disk did not take", found.get(0));
        assertEquals("DATA second", found.get(2));
        assertEquals(RecordKind.SOURCE.name(), found.get(1).substring(0, 6));
    }
}
