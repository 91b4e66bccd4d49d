package trimwright.cli;

import java.io.PrintStream;
import java.util.Locale;
import java.util.function.LongSupplier;
import trimwright.text.Progress;
import trimwright.text.Texts;

/** A plain line every few seconds where standard error is not a terminal; short work stays silent. */
final class ProgressLines implements Progress {
    private static final long EVERY_NANOS = 3_000_000_000L;

    private final PrintStream err;
    private final String task;
    private final long total;
    private final String unit;
    private final LongSupplier nanoTime;
    private final long start;
    private long nextLine;
    private long done;

    ProgressLines(PrintStream err, String task, long total, String unit, LongSupplier nanoTime) {
        this.err = err;
        this.task = task;
        this.total = total;
        this.unit = unit;
        this.nanoTime = nanoTime;
        start = nanoTime.getAsLong();
        nextLine = start + EVERY_NANOS;
    }

    @Override
    public synchronized void done(long more) {
        done += more;
        long now = nanoTime.getAsLong();
        if (now < nextLine || done <= 0) {
            return;
        }
        nextLine = now + EVERY_NANOS;
        double seconds = (now - start) / 1e9;
        double rate = done / seconds;
        String left = total <= 0 ? "?" : String.format(Locale.ROOT, "%.0f", Math.max(0, total - done) / rate);
        err.print(Texts.of("progress.line", task, done, total <= 0 ? "?" : Long.toString(total), unit, rate, left)
                + "\n");
        err.flush();
    }
}
