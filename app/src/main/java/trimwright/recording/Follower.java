package trimwright.recording;

import trimwright.ingest.journal.JournalSource;

/** Reads what was kept; called on the recorder's one thread. */
public interface Follower {
    /** Nobody follows. */
    Follower NONE = new Follower() {
        @Override
        public void take(JournalSource source, long arrivalNanos, byte[] bytes) {}

        @Override
        public void tick(long nowNanos) {}
    };

    /** Bytes of a source that arrived at that time (ns since 1970 UTC by a clock that never steps). */
    void take(JournalSource source, long arrivalNanos, byte[] bytes);

    /** Time goes on, also while nothing comes. */
    void tick(long nowNanos);
}
