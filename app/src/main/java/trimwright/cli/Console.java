package trimwright.cli;

import java.io.PrintStream;
import java.util.Locale;
import trimwright.prepare.TargetBooks;
import trimwright.prepare.TargetRequest;
import trimwright.prepare.TargetRun;
import trimwright.target.TargetBook;
import trimwright.text.JsonOut;
import trimwright.text.Progress;
import trimwright.text.Texts;

/** The two standard streams: answers on the first, progress and notes on the second. */
public final class Console {
    private final PrintStream out;
    private final PrintStream err;
    private final ProgressStyle style;

    public Console(PrintStream out, PrintStream err, ProgressStyle style) {
        this.out = out;
        this.err = err;
        this.style = style;
    }

    /** An answer, one line. */
    public void line(String text) {
        text(text + "\n");
    }

    /** An answer, one line, formatted alike in every locale. */
    public void line(String format, Object... args) {
        line(String.format(Locale.ROOT, format, args));
    }

    /** An answer as it stands, line feeds included. */
    public void text(String text) {
        out.print(text);
        out.flush();
    }

    /** The one JSON document of this command. */
    public void json(Object document) {
        text(JsonOut.text(document));
    }

    /** A note for the person who waits, on standard error. */
    public void note(String text) {
        err.print(text + "\n");
        err.flush();
    }

    /** A console whose answers go elsewhere; notes and progress stay. */
    public Console answeringTo(PrintStream elsewhere) {
        return new Console(elsewhere, err, style);
    }

    /** A console whose answers are notes. */
    public Console answeringInNotes() {
        return answeringTo(err);
    }

    PrintStream out() {
        return out;
    }

    PrintStream err() {
        return err;
    }

    /** Shows how far long work has come, with rate and time left, on standard error; close it at the end. */
    public Progress progress(String task, long total, String unit) {
        return switch (style) {
            case NONE -> Progress.NONE;
            case BAR -> new ProgressBarLine(err, task, total, unit);
            case LINES -> new ProgressLines(err, task, total, unit, System::nanoTime);
        };
    }

    /** The book of all targets of a wing, with its progress where it has to be computed. */
    TargetBook book(TargetBooks books, TargetRequest request) throws InterruptedException {
        try (Progress progress = targetProgress(TargetRun.steps(request))) {
            return books.of(request, progress);
        }
    }

    /** The same for the targets of so many winds, or of whatever else is computed with them. */
    public Progress targetProgress(long steps) {
        return progress(Texts.of("targets.progress"), steps, Texts.of("targets.progress_unit"));
    }
}
