package trimwright.cli;

import java.io.PrintStream;
import me.tongfei.progressbar.ConsoleProgressBarConsumer;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;
import trimwright.text.Progress;

/** A bar on a terminal. */
final class ProgressBarLine implements Progress {
    /** Fits the narrowest usual terminal; given here so that the library does not open one to ask. */
    private static final int WIDTH = 79;

    private final ProgressBar bar;

    ProgressBarLine(PrintStream err, String task, long total, String unit) {
        bar = new ProgressBarBuilder()
                .setTaskName(task)
                .setInitialMax(total)
                .setUnit(" " + unit, 1)
                .setStyle(ProgressBarStyle.ASCII)
                .setUpdateIntervalMillis(200)
                .showSpeed()
                .setConsumer(new ConsoleProgressBarConsumer(err, WIDTH))
                .build();
    }

    @Override
    public void done(long more) {
        bar.stepBy(more);
    }

    @Override
    public void close() {
        bar.close();
    }
}
