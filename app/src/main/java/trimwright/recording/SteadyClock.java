package trimwright.recording;

import java.util.function.LongSupplier;

/**
 * Time of arrival: the system's time at the start, and from then on the steady counter. When somebody sets the system's
 * clock the times of arrival go on evenly, and how far it was set is told.
 */
public final class SteadyClock {
    /** Chosen: far above the drift of a clock that is being disciplined. */
    private static final long NOTABLE = 500_000_000L;

    private final LongSupplier wallNanos;
    private final LongSupplier counter;
    private final long offset;
    private long toldStep;

    /**
     * @param wallNanos the system's time (ns since 1970 UTC)
     * @param counter a counter of nanoseconds that never steps
     */
    public SteadyClock(LongSupplier wallNanos, LongSupplier counter) {
        this.wallNanos = wallNanos;
        this.counter = counter;
        offset = wallNanos.getAsLong() - counter.getAsLong();
    }

    /** That of this machine. */
    public static SteadyClock ofSystem() {
        return new SteadyClock(() -> System.currentTimeMillis() * 1_000_000L, System::nanoTime);
    }

    /** ns since 1970 UTC. */
    public long nanos() {
        return counter.getAsLong() + offset;
    }

    /** How far the system's clock was set since this was last asked (ns), 0 where it was not. */
    long takeStep() {
        long step = wallNanos.getAsLong() - nanos();
        if (Math.abs(step - toldStep) < NOTABLE) {
            return 0;
        }
        long fresh = step - toldStep;
        toldStep = step;
        return fresh;
    }
}
