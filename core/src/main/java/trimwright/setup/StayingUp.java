package trimwright.setup;

/**
 * Share of the time that a boat is up, when she takes off only above one wind and comes down only below a lower one, and the wind
 * wanders between as an Ornstein-Uhlenbeck process about its mean. Follows from that process's equation for the density in
 * either state (docs/theory/setup.md): up at y is the integral of exp(z^2/2) from the lower bound to y over that between the
 * bounds, whatever the process's memory.
 */
final class StayingUp {
    /** Standard deviations beyond which a wind does not come in a race; chosen: keeps exp(z^2/2) in range. */
    private static final double FAR = 8;

    private static final int STEPS = 200;

    private StayingUp() {}

    /**
     * Chance to be up in that wind (-).
     *
     * @param wind deviation from its mean over its standard deviation (-)
     * @param comesDown below this the boat comes down, on the same scale
     * @param takesOff above this she takes off by herself, on the same scale
     */
    static double share(double wind, double comesDown, double takesOff) {
        if (wind < comesDown) {
            return 0;
        }
        if (wind >= takesOff) {
            return 1;
        }
        double low = Math.max(-FAR, Math.min(FAR, comesDown));
        double high = Math.max(-FAR, Math.min(FAR, takesOff));
        double here = Math.max(low, Math.min(high, wind));
        if (!(high > low)) {
            // Both bounds lie beyond what the wind reaches: what it cannot fall below holds her up, what it cannot
            // reach does not.
            return high <= -FAR ? 1 : 0;
        }
        return integral(low, here) / integral(low, high);
    }

    /** Of exp(z^2/2), by Simpson's rule. */
    private static double integral(double low, double high) {
        double step = (high - low) / STEPS;
        double sum = 0;
        for (int i = 0; i <= STEPS; i++) {
            double z = low + i * step;
            double weight = i == 0 || i == STEPS ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight * StrictMath.exp(0.5 * z * z);
        }
        return sum * step / 3;
    }
}
