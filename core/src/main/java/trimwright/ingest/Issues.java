package trimwright.ingest;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** What was found wrong while reading: a count for each kind, and the first few of each with their place. */
public final class Issues {
    /** Chosen: enough to see what is the matter. */
    public static final int KEPT_OF_EACH_KIND = 20;

    private static final int LONGEST_DETAIL = 100;

    private final long[] counts = new long[IssueKind.values().length];
    private final List<Issue> first = new ArrayList<>();

    public void add(IssueKind kind, long line, String detail) {
        if (counts[kind.ordinal()]++ < KEPT_OF_EACH_KIND) {
            first.add(new Issue(line, kind, detail));
        }
    }

    /** As above; the text is made of the bytes only if it is kept, so that a bad stream costs no memory. */
    public void add(IssueKind kind, long line, byte[] bytes, int from, int to) {
        if (counts[kind.ordinal()] < KEPT_OF_EACH_KIND) {
            add(kind, line, printable(bytes, from, Math.min(to, from + LONGEST_DETAIL)));
        } else {
            counts[kind.ordinal()]++;
        }
    }

    /** Adds what another reader found. */
    public void addAll(Issues others) {
        for (Issue issue : others.first) {
            if (counts[issue.kind().ordinal()]++ < KEPT_OF_EACH_KIND) {
                first.add(issue);
            }
        }
        for (IssueKind kind : IssueKind.values()) {
            counts[kind.ordinal()] += others.count(kind) - Math.min(KEPT_OF_EACH_KIND, others.count(kind));
        }
    }

    public long count(IssueKind kind) {
        return counts[kind.ordinal()];
    }

    public long total() {
        long total = 0;
        for (long count : counts) {
            total += count;
        }
        return total;
    }

    /** Counts of the kinds that occurred. */
    public Map<IssueKind, Long> counts() {
        Map<IssueKind, Long> found = new EnumMap<>(IssueKind.class);
        for (IssueKind kind : IssueKind.values()) {
            if (counts[kind.ordinal()] > 0) {
                found.put(kind, counts[kind.ordinal()]);
            }
        }
        return found;
    }

    /** The first of each kind, in the order in which they were found. */
    public List<Issue> first() {
        return Collections.unmodifiableList(first);
    }

    private static String printable(byte[] bytes, int from, int to) {
        StringBuilder text = new StringBuilder();
        for (int i = from; i < to; i++) {
            char c = (char) (bytes[i] & 0xff);
            text.append(c >= 0x20 && c < 0x7f ? c : '?');
        }
        return text.toString();
    }
}
