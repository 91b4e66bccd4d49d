package trimwright.setup;

import trimwright.weather.FilteredGusts;

/**
 * What a turbulence means at a place on the water, past which gusts are carried by the wind itself: the gust factor that a forecast
 * names, and the wander that a boat's speed follows. What a crew aboard feels of the same gusts is {@code aim}'s.
 */
public final class GustProcess {
    /** Length of a gust (s): World Meteorological Organization, TD-1555, 2010. */
    private static final double GUST = 3;

    /** Over which the largest gust is taken (s): the same. */
    private static final double PERIOD = 600;

    /** Mean of the wind that a boat's speed follows (s); chosen: about what she takes to gather most of her speed. */
    private static final double FOLLOWED = 20;

    private GustProcess() {}

    /** Means of 3 s of the wind at a place: turbulence (-) and mean wind at 10 m (m/s), both above 0. */
    static FilteredGusts gusts(double turbulence, double meanWind) {
        return means(turbulence, meanWind, GUST);
    }

    /** Largest mean of 3 s in 10 min over the mean wind (-), above 1. */
    public static double gustFactor(double turbulence, double meanWind) {
        return 1 + gusts(turbulence, meanWind).largestIn(PERIOD) / meanWind;
    }

    /** The turbulence (-) of a gust factor (-, above 1): gusts grow with it, all else alike. */
    public static double turbulence(double gustFactor, double meanWind) {
        if (!(gustFactor > 1) || !(meanWind > 0)) {
            throw new IllegalArgumentException("no gusts of factor " + gustFactor + " in a wind of " + meanWind);
        }
        return (gustFactor - 1) / (gustFactor(1, meanWind) - 1);
    }

    /** Standard deviation of the wind that a boat's speed follows (m/s). */
    public static double followedSigma(double turbulence, double meanWind) {
        return means(turbulence, meanWind, FOLLOWED).sigma();
    }

    private static FilteredGusts means(double turbulence, double meanWind, double seconds) {
        return FilteredGusts.of(turbulence * meanWind, meanWind, f -> FilteredGusts.mean(f, seconds));
    }
}
