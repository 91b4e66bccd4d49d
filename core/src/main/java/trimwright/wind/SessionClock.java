package trimwright.wind;

/**
 * The one clock onto which all channels of a session are brought.
 *
 * @param startNanos first instant (UTC, ns since 1970), a whole multiple of the step
 * @param stepNanos time between two instants (ns)
 * @param size number of instants
 */
public record SessionClock(long startNanos, long stepNanos, int size) {
    private static final long SECOND = 1_000_000_000L;

    /** Instants that a clock may have: four days at 10 Hz. A longer span is a log with wrong times, not a session. */
    public static final int LARGEST_SIZE = 3_456_000;

    public SessionClock {
        if (stepNanos <= 0 || size < 1) {
            throw new IllegalArgumentException("a clock needs a step and an instant: " + stepNanos + " ns, " + size);
        }
    }

    /**
     * The clock that covers a stretch of time; throws {@link IllegalArgumentException} where it would be larger than
     * {@link #LARGEST_SIZE}.
     *
     * @param rate instants a second, one of 1, 2, 5, 10
     */
    public static SessionClock covering(long fromNanos, long toNanos, int rate) {
        if (rate < 1 || rate > 10 || SECOND % rate != 0 || toNanos < fromNanos) {
            throw new IllegalArgumentException("clock of " + rate + " Hz from " + fromNanos + " to " + toNanos);
        }
        long step = SECOND / rate;
        long start = Math.floorDiv(fromNanos, step) * step;
        long size = (toNanos - start) / step + 1;
        if (size > LARGEST_SIZE) {
            throw new IllegalArgumentException("a session of " + (toNanos - fromNanos) / SECOND / 86_400
                    + " days; Maybe time stamps of the log are wrong.");
        }
        return new SessionClock(start, step, (int) size);
    }

    public long timeNanos(int i) {
        return startNanos + i * stepNanos;
    }

    /** Time since the clock's start (s). */
    public double seconds(int i) {
        return i * step();
    }

    /** Time between two instants (s). */
    public double step() {
        return stepNanos / 1e9;
    }

    /** Number of steps nearest to a duration (s), at least one. */
    public int steps(double duration) {
        return Math.max(1, (int) Math.round(duration / step()));
    }
}
