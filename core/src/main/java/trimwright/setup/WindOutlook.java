package trimwright.setup;

import java.util.Map;

/**
 * A race in one mean wind.
 *
 * @param wind mean over ground at 10 m (m/s)
 * @param weight how likely the forecast makes it among those looked at (-)
 * @param time from start to finish (s); NaN where the book does not cover this wind or the boat makes no way
 * @param foilingShare share of that time on the foils (-)
 * @param overLimit chance that in this race a gust passes the limit (-); NaN where not known
 */
public record WindOutlook(
        double wind, double weight, double time, double foilingShare, Map<GustLimit, Double> overLimit) {
    public WindOutlook {
        overLimit = Map.copyOf(overLimit);
    }

    /** The chance of one limit (-); NaN where not known. */
    public double overLimit(GustLimit limit) {
        return overLimit.getOrDefault(limit, Double.NaN);
    }

    /** Whether there is an answer. */
    public boolean isAnswered() {
        return !Double.isNaN(time);
    }
}
