package trimwright.wind;

import java.util.Arrays;
import java.util.Set;
import trimwright.magnetic.MagneticField;
import trimwright.track.BoatTrack;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;
import trimwright.track.Paths;
import trimwright.units.Angles;
import trimwright.units.Circular;

/**
 * The boat's true heading: as logged, or magnetic plus the log's own variation (one vector mean for the session: it
 * changes by a degree in some sixty miles) or that of the earth's field in its years, or what is left, with a caveat. Of a true and a magnetic heading the one that
 * comes more than twice as often is taken.
 */
final class Headings {
    private static final double CLEARLY_FASTER = 0.5;
    /** Chosen: near the poles a compass is of no use. */
    private static final double FARTHEST = Math.toRadians(75);
    /** Of the Gregorian calendar's mean year; the field moves by less than a second of arc in what this is off. */
    private static final double NANOS_PER_YEAR = 365.2425 * 86_400e9;

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
                variation = modelled(track);
                caveats.add(Double.isNaN(variation) ? WindCaveat.HEADING_IS_MAGNETIC : WindCaveat.VARIATION_FROM_MODEL);
                variation = Double.isNaN(variation) ? 0 : variation;
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

    /** Variation of the earth's field in the middle of the track (rad); NaN without a place or outside its years. */
    private static double modelled(BoatTrack track) {
        Channel latitude = track.find(Paths.LATITUDE);
        ChannelGroup group = track.findGroupOf(Paths.LATITUDE);
        Channel longitude = group == null ? null : group.find(Paths.LONGITUDE);
        if (latitude == null || group == null || longitude == null) {
            return Double.NaN;
        }
        int middle = group.size() / 2;
        for (int i = middle; i < group.size(); i++) {
            double year = year(group.timeNanos(i));
            boolean known = latitude.isGood(i)
                    && longitude.isGood(i)
                    && Math.abs(latitude.get(i)) < FARTHEST
                    && MagneticField.isValid(year);
            if (known) {
                return MagneticField.at(latitude.get(i), longitude.get(i), 0, year)
                        .variation();
            }
        }
        return Double.NaN;
    }

    private static double year(long nanos) {
        return 1970 + nanos / NANOS_PER_YEAR;
    }

    private static double[] turned(double[] heading, double by) {
        return Arrays.stream(heading)
                .map(angle -> Double.isNaN(angle) ? angle : Angles.compass(angle + by))
                .toArray();
    }
}
