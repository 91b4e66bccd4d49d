package trimwright.dock;

import trimwright.compare.Interval;

/** From what was read and what is known to be so to a verdict: the interval decides, not the mean alone. */
final class Judge {
    /** Beyond so many tolerances, interval and all, nobody should sail on it (-): chosen. */
    private static final double STOP = 4;

    private Judge() {}

    static double half(Interval interval) {
        return (interval.high() - interval.low()) / 2;
    }

    static DockLine line(DockItem item, Interval read, double expected, double tolerance) {
        return line(item, read.mean(), half(read), expected, tolerance);
    }

    static DockLine line(DockItem item, double read, double half, double expected, double tolerance) {
        double off = Math.abs(read - expected);
        DockFinding finding = off + half <= tolerance
                ? DockFinding.NONE
                : off - half > tolerance ? DockFinding.OFF : DockFinding.UNSURE;
        DockFinding.Verdict verdict = off - half > STOP * tolerance ? DockFinding.Verdict.STOP : finding.usual();
        return new DockLine(item, read, half, expected, tolerance, verdict, finding, null);
    }

    /** A line with a number that nothing is expected of. */
    static DockLine alive(DockItem item, double read, double half) {
        return new DockLine(item, read, half, Double.NaN, Double.NaN, DockFinding.Verdict.PASS, DockFinding.NONE, null);
    }
}
