package trimwright.text;

/** Told by long work how far it has come. Safe to call from several threads. */
public interface Progress extends AutoCloseable {
    /** Silent. */
    Progress NONE = more -> {};

    /** That many more units of the work are done. */
    void done(long more);

    @Override
    default void close() {}
}
