package trimwright.recording;

import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.ingest.journal.JournalSource;
import trimwright.ingest.journal.JournalText;
import trimwright.ingest.journal.RecordKind;

/**
 * The journal being written. It always ends with a whole record: where the disk refuses one, what was written of it is cut
 * off, the bytes are counted as lost, and writing goes on as soon as the disk takes bytes again, with a note of the loss.
 */
final class JournalFile {
    private final Disk disk;
    private final Map<JournalSource, Integer> numbers = new HashMap<>();
    private long length;
    private boolean dirty;
    private boolean torn;
    private long lost;
    private @Nullable String fault;

    private JournalFile(Disk disk) {
        this.disk = disk;
    }

    /** Begins a journal on an empty disk. */
    static JournalFile begin(Disk disk) throws IOException {
        JournalFile journal = new JournalFile(disk);
        byte[] first = JournalText.firstLine();
        disk.append(first);
        disk.force();
        journal.length = first.length;
        return journal;
    }

    /** Keeps bytes of a source. */
    void data(JournalSource source, long nanos, byte[] bytes) {
        Integer known = numbers.get(source);
        int number = known == null ? numbers.size() : known;
        if (known == null) {
            byte[] told = source.toBytes();
            if (!write(
                    JournalText.entry(RecordKind.SOURCE, number, nanos, told, 0, told.length), bytes.length, nanos)) {
                return;
            }
            numbers.put(source, number);
        }
        write(JournalText.entry(RecordKind.DATA, number, nanos, bytes, 0, bytes.length), bytes.length, nanos);
    }

    /** Keeps a note or mark. */
    void say(RecordKind kind, long nanos, byte[] bytes) {
        write(JournalText.entry(kind, 0, nanos, bytes, 0, bytes.length), 0, nanos);
    }

    private boolean write(byte[] entry, int payload, long nanos) {
        try {
            mend();
            if (lost > 0) {
                byte[] note = Notes.lost(lost);
                put(JournalText.entry(RecordKind.NOTE, 0, nanos, note, 0, note.length));
                lost = 0;
            }
            put(entry);
            fault = null;
            return true;
        } catch (IOException e) {
            lost += payload;
            fault = String.valueOf(e.getMessage());
            return false;
        }
    }

    private void put(byte[] entry) throws IOException {
        torn = true;
        disk.append(entry);
        torn = false;
        length += entry.length;
        dirty = true;
    }

    /** Cuts off what a refused record left. */
    private void mend() throws IOException {
        if (torn) {
            disk.truncate(length);
            torn = false;
        }
    }

    /** Returns when everything kept so far is on the disk, or the fault is known. */
    void sync() {
        if (dirty) {
            try {
                disk.force();
                dirty = false;
            } catch (IOException e) {
                fault = String.valueOf(e.getMessage());
            }
        }
    }

    long length() {
        return length;
    }

    /** Bytes refused since the disk last took some. */
    long lost() {
        return lost;
    }

    /** Why the disk refuses bytes now, or null while it takes them. */
    @Nullable
    String fault() {
        return fault;
    }

    void close() throws IOException {
        try {
            mend();
        } finally {
            sync();
            disk.close();
        }
    }
}
