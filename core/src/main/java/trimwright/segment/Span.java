package trimwright.segment;

/** Instants {@code [from, to)} of a session clock. */
public record Span(int from, int to) {
    public Span {
        if (from < 0 || to <= from) {
            throw new IllegalArgumentException("empty span " + from + " to " + to);
        }
    }

    public int length() {
        return to - from;
    }

    public boolean contains(int i) {
        return i >= from && i < to;
    }

    public boolean overlaps(Span other) {
        return from < other.to && other.from < to;
    }
}
