package trimwright.recording;

/** Waits between tries to connect: longer each time, short again after one that worked. Both times chosen. */
final class BackOff {
    private static final long FIRST_MILLIS = 250;
    private static final long LONGEST_MILLIS = 5_000;

    private long next = FIRST_MILLIS;

    /** How long to wait now (ms). */
    long nextMillis() {
        long now = next;
        next = Math.min(LONGEST_MILLIS, 2 * next);
        return now;
    }

    void worked() {
        next = FIRST_MILLIS;
    }
}
