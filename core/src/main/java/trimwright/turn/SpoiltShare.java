package trimwright.turn;

import org.hipparchus.distribution.continuous.BetaDistribution;

/**
 * A chance as so many turns show it, with the interval of Clopper and Pearson (Biometrika 26, 1934), which is never too narrow.
 *
 * @param share of the turns (-)
 * @param low end of the interval (-)
 * @param high end of the interval (-)
 * @param most what the chance surely is no more than (-): bound on one side, passed once in twenty
 */
public record SpoiltShare(double share, double low, double high, double most) {
    /** Chance with which each end of the interval is passed (-): an interval of 95 %. */
    private static final double OUTSIDE = 0.025;

    /** Chance with which the bound on one side is passed (-). */
    private static final double ABOVE = 0.05;

    /** So many of all. */
    public static SpoiltShare of(int spoilt, int turns) {
        int sound = turns - spoilt;
        double low = spoilt == 0 ? 0 : new BetaDistribution(spoilt, sound + 1).inverseCumulativeProbability(OUTSIDE);
        return new SpoiltShare(
                (double) spoilt / turns, low, above(spoilt, sound, OUTSIDE), above(spoilt, sound, ABOVE));
    }

    private static double above(int spoilt, int sound, double chance) {
        return sound == 0 ? 1 : new BetaDistribution(spoilt + 1, sound).inverseCumulativeProbability(1 - chance);
    }
}
