package trimwright.ingest;

/** Reads one log, given in pieces of any size: pieces, then the result, once. */
public interface LogReader {
    /** Reads on with {@code bytes[from, to)}. */
    void accept(byte[] bytes, int from, int to);

    /** The log is at its end: what it holds. */
    IngestResult finish();
}
