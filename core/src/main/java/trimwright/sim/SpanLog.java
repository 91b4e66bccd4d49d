package trimwright.sim;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Notes when something begins and ends to be so. Shorter than a second is not noted: chosen. */
final class SpanLog {
    private static final double LEAST = 1;

    private final List<TrueSpan> spans = new ArrayList<>();
    private @Nullable TrueSpan open;

    /** @param now what is so at this time, its own times ignored; null where nothing is */
    void note(double time, @Nullable TrueSpan now) {
        if (open != null && (now == null || !isSame(open, now))) {
            close(time);
        }
        if (open == null && now != null) {
            open = at(now, time, time);
        }
    }

    /** What was noted; what is still so ends at this time (s). */
    List<TrueSpan> until(double time) {
        List<TrueSpan> all = new ArrayList<>(spans);
        if (open != null && time - open.start() >= LEAST) {
            all.add(at(open, open.start(), time));
        }
        return all;
    }

    private void close(double time) {
        if (open != null && time - open.start() >= LEAST) {
            spans.add(at(open, open.start(), time));
        }
        open = null;
    }

    private static boolean isSame(TrueSpan a, TrueSpan b) {
        return a.kind().equals(b.kind()) && a.leg() == b.leg() && a.tack() == b.tack();
    }

    private static TrueSpan at(TrueSpan span, double start, double end) {
        return new TrueSpan(start, end, span.what(), span.kind(), span.cause(), span.leg(), span.tack());
    }
}
