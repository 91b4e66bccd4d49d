package trimwright.recording;

import trimwright.ingest.journal.JournalSource;

/** Takes what the inputs bring; called on their threads. */
interface Arrivals {
    /** Bytes came; may wait while the recorder is behind. */
    void arrived(JournalSource source, byte[] bytes, int length) throws InterruptedException;

    /** An input changed its state, for a reason that may be empty. */
    void changed(InputAddress input, InputState state, String reason) throws InterruptedException;
}
