package trimwright.chance;

/**
 * Pseudo-random numbers by SplitMix64 (Steele, Lea, Flood: Fast splittable pseudorandom number generators, OOPSLA 2014).
 *
 * <p>Written out here because the platform's generators promise their distribution, not their numbers: the same seed must
 * give the same day on any Java. One stream is for one purpose and one thread; {@link #of} gives each purpose its own, so
 * that a draw more in one place moves nothing elsewhere.
 */
public final class RandomStream {
    private static final long GOLDEN_GAMMA = 0x9E3779B97F4A7C15L;
    private static final double TWO_TO_MINUS_53 = 0x1.0p-53;

    private long state;
    private double spare = Double.NaN;

    public RandomStream(long seed) {
        state = seed;
    }

    /** The stream of that seed for that purpose. */
    public static RandomStream of(long seed, String purpose) {
        long key = seed;
        for (int i = 0; i < purpose.length(); i++) {
            key = mix(key + GOLDEN_GAMMA) + purpose.charAt(i);
        }
        return new RandomStream(mix(key + GOLDEN_GAMMA));
    }

    /** The stream of that seed for one cell of a plane lattice. */
    public static RandomStream ofCell(long seed, long i, long j) {
        return new RandomStream(mix(mix(seed + GOLDEN_GAMMA * (2 * i + 1)) + GOLDEN_GAMMA * (2 * j + 1)));
    }

    public long nextLong() {
        state += GOLDEN_GAMMA;
        return mix(state);
    }

    /** Evenly spread over [0, 1). */
    public double uniform() {
        return (nextLong() >>> 11) * TWO_TO_MINUS_53;
    }

    /** Evenly spread over [from, to). */
    public double uniform(double from, double to) {
        return from + (to - from) * uniform();
    }

    /** Normal, mean 0, variance 1: Box and Muller 1958, both values used. */
    public double normal() {
        if (!Double.isNaN(spare)) {
            double value = spare;
            spare = Double.NaN;
            return value;
        }
        double radius = StrictMath.sqrt(-2 * StrictMath.log(1 - uniform()));
        double angle = 2 * Math.PI * uniform();
        spare = radius * StrictMath.sin(angle);
        return radius * StrictMath.cos(angle);
    }

    private static long mix(long value) {
        long z = (value ^ (value >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}
