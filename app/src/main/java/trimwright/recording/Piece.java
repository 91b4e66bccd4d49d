package trimwright.recording;

import trimwright.ingest.journal.JournalSource;

/** Bytes of a source that came at one time. */
record Piece(long nanos, JournalSource source, byte[] bytes) {}
