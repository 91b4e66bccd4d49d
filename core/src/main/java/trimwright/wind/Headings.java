package trimwright.wind;

import java.util.Arrays;
import java.util.Set;
import trimwright.track.BoatTrack;
import trimwright.track.Paths;
import trimwright.units.Angles;
import trimwright.units.Circular;

/**
 * The boat's true heading: as logged, or magnetic plus the log's own variation (one vector mean for the session: it
 * changes by a degree in some sixty miles), or what is left, with a caveat. Of a true and a magnetic heading the one that
 * comes more than twice as often is taken.
 */
final class Headings {
    private static final double CLEARLY_FASTER = 0.5;

    private Headings() {}

    static double[] of(SessionClock clock, BoatTrack track, double longestGap, Set<WindCaveat> caveats) {
        double interval = Resampling.interval(track, Paths.HEADING);
        double magneticInterval = Resampling.interval(track, Paths.HEADING_MAGNETIC);
        boolean hasTrue = !Double.isNaN(interval);
        boolean hasMagnetic = !Double.isNaN(magneticInterval);
        double variation = hasMagnetic ? variation(track) : Double.NaN;
        boolean magneticIsFaster = magneticInterval < CLEARLY_FASTER * interval;
        if (hasTrue && (Double.isNaN(variation) || !magneticIsFaster)) {
            return Resampling.onto(clock, track, Paths.HEADING, Quantity.Kind.COMPASS, longestGap);
        }
        if (hasMagnetic) {
            if (Double.isNaN(variation)) {
                caveats.add(WindCaveat.HEADING_IS_MAGNETIC);
                variation = 0;
            }
            return turned(
                    Resampling.onto(clock, track, Paths.HEADING_MAGNETIC, Quantity.Kind.COMPASS, longestGap),
                    variation);
        }
        caveats.add(WindCaveat.HEADING_FROM_COURSE);
        return Resampling.onto(clock, track, Paths.COG, Quantity.Kind.COMPASS, longestGap);
    }

    private static double variation(BoatTrack track) {
        var channel = track.find(Paths.VARIATION);
        if (channel == null) {
            return Double.NaN;
        }
        double[] good = channel.toArray();
        for (int i = 0; i < good.length; i++) {
            if (!channel.isGood(i)) {
                good[i] = Double.NaN;
            }
        }
        return Circular.mean(good, 0, good.length);
    }

    private static double[] turned(double[] heading, double by) {
        return Arrays.stream(heading)
                .map(angle -> Double.isNaN(angle) ? angle : Angles.compass(angle + by))
                .toArray();
    }
}
