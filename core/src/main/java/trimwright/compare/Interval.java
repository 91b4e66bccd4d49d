package trimwright.compare;

/**
 * A mean with its interval of 95 % confidence.
 *
 * @param independent number of independent stretches that the samples are worth
 */
public record Interval(double mean, double low, double high, double independent) {}
