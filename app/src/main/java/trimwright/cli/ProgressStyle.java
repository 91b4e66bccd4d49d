package trimwright.cli;

/** How progress is shown on standard error. */
public enum ProgressStyle {
    /** Not at all. */
    NONE,
    /** A plain line every few seconds: a file or a pipe. */
    LINES,
    /** One bar that is redrawn: a terminal. */
    BAR
}
