package trimwright.setup;

import java.util.List;

/**
 * {@link GustRises} of one leg over the winds of a book.
 *
 * @param winds the book's (m/s), rising
 * @param rises one a wind
 */
public record RiseLine(List<Double> winds, List<GustRises> rises) {
    public RiseLine {
        winds = List.copyOf(winds);
        rises = List.copyOf(rises);
        if (winds.isEmpty() || winds.size() != rises.size()) {
            throw new IllegalArgumentException(rises.size() + " rises for " + winds.size() + " winds");
        }
    }

    /** The rise that passes a limit in any wind (m/s): between two winds on a line, or the lesser where one is endless. */
    public double at(GustLimit limit, double wind) {
        int i = 0;
        while (i < winds.size() - 2 && wind >= winds.get(i + 1)) {
            i++;
        }
        int next = Math.min(i + 1, winds.size() - 1);
        double low = rises.get(i).of(limit);
        double high = rises.get(next).of(limit);
        if (Double.isInfinite(low) || Double.isInfinite(high)) {
            return Math.min(low, high);
        }
        double width = winds.get(next) - winds.get(i);
        double part = width == 0 ? 0 : Math.max(0, Math.min(1, (wind - winds.get(i)) / width));
        return low + part * (high - low);
    }
}
