package trimwright.target;

/** From {@code low} to {@code high}, both included. */
public record Band(double low, double high) {
    public Band {
        if (!(low <= high)) {
            throw new IllegalArgumentException("a band needs low <= high, got " + low + " and " + high);
        }
    }

    public double width() {
        return high - low;
    }

    public boolean contains(double value) {
        return value >= low && value <= high;
    }
}
