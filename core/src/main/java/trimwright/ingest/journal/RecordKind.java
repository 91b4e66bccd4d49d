package trimwright.ingest.journal;

import org.jspecify.annotations.Nullable;

/** What a record of a journal holds. */
public enum RecordKind {
    /** Declares the source of that number: a {@link JournalSource} as text. */
    SOURCE('S'),
    /** Bytes of a source as they came. */
    DATA('D'),
    /** What happened to the recording: a word, then a text. */
    NOTE('N'),
    /** A stretch of time that somebody marked, ending at the record's time: its length in seconds, then a text. */
    MARK('M');

    private final byte letter;

    RecordKind(char letter) {
        this.letter = (byte) letter;
    }

    byte letter() {
        return letter;
    }

    static @Nullable RecordKind find(byte letter) {
        for (RecordKind kind : values()) {
            if (kind.letter == letter) {
                return kind;
            }
        }
        return null;
    }
}
