package trimwright.ingest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Sorts the times of a log into those that the clock is built on and those that cannot be right.
 *
 * <p>A time up to {@value #LAG_SECONDS} s behind the clock is another sentence of an earlier moment. A time further back,
 * or more than {@value #LEAP_SECONDS} s ahead, is an outlier if one of the next {@value #WITNESSES} agrees with the clock
 * as it was; otherwise it is a pause (ahead) or a step of the clock (back). All four numbers chosen.
 */
final class ClockCheck {
    private static final int LAG_SECONDS = 10;
    private static final int LEAP_SECONDS = 60;
    private static final int WITNESSES = 3;
    private static final long LAG = LAG_SECONDS * 1_000_000_000L;
    private static final long LEAP = LEAP_SECONDS * 1_000_000_000L;

    private final ClockMarks marks;
    private final long[] times;
    private final Issues issues;
    private final boolean[] outlier;
    private final List<Stretch> stretches = new ArrayList<>();
    private LongList positions = new LongList();
    private LongList anchors = new LongList();
    private long begin = Long.MIN_VALUE;

    /** @param times of the marks, ns since 1970 UTC */
    ClockCheck(ClockMarks marks, long[] times, Issues issues) {
        this.marks = marks;
        this.times = times;
        this.issues = issues;
        outlier = new boolean[times.length];
        run();
    }

    private void run() {
        for (int i = 0; i < times.length; i++) {
            if (anchors.size() == 0) {
                anchor(i);
                continue;
            }
            long clock = anchors.get(anchors.size() - 1);
            long ahead = times[i] - clock;
            if (ahead < -LAG || ahead > LEAP) {
                if (isContradicted(i, clock)) {
                    outlier[i] = true;
                    issues.add(IssueKind.CLOCK_OUTLIER, marks.line(i), shown(ahead));
                    continue;
                }
                if (ahead < 0) {
                    issues.add(IssueKind.CLOCK_STEP, marks.line(i), shown(ahead));
                    closeStretch();
                    begin = marks.position(i);
                    anchor(i);
                    continue;
                }
            }
            if (ahead > 0) {
                anchor(i);
            }
        }
        closeStretch();
        settleOverlaps();
    }

    private boolean isContradicted(int i, long clock) {
        for (int next = i + 1; next <= i + WITNESSES && next < times.length; next++) {
            long ahead = times[next] - clock;
            if (ahead >= -LAG && ahead <= LEAP) {
                return true;
            }
        }
        return false;
    }

    private static String shown(long nanos) {
        return String.format(java.util.Locale.ROOT, "%+.3f s", nanos / 1e9);
    }

    private void anchor(int i) {
        int last = positions.size() - 1;
        if (last >= 0 && positions.get(last) == marks.position(i)) {
            anchors.set(last, times[i]);
            return;
        }
        positions.add(marks.position(i));
        anchors.add(times[i]);
    }

    private void closeStretch() {
        if (anchors.size() > 0) {
            stretches.add(new Stretch(begin, positions.toArray(), anchors.toArray()));
        }
        positions = new LongList();
        anchors = new LongList();
    }

    private void settleOverlaps() {
        List<Stretch> byLength = new ArrayList<>(stretches);
        byLength.sort(Comparator.comparingInt(Stretch::size).reversed());
        for (int longer = 0; longer < byLength.size(); longer++) {
            for (int shorter = longer + 1; shorter < byLength.size(); shorter++) {
                Stretch a = byLength.get(longer);
                Stretch b = byLength.get(shorter);
                if (a.firstTime() <= b.lastTime() && b.firstTime() <= a.lastTime()) {
                    b.cede(a.firstTime(), a.lastTime());
                }
            }
        }
    }

    boolean isOutlier(int mark) {
        return outlier[mark];
    }

    List<Stretch> stretches() {
        return stretches;
    }
}
