package trimwright.wind;

import java.util.Arrays;
import trimwright.track.BoatTrack;
import trimwright.track.Paths;
import trimwright.units.Angles;

/**
 * True wind that another device computed, for logs without apparent wind.
 *
 * @param speed (m/s), NaN where absent
 * @param direction where it comes from (rad), NaN where absent
 * @param interval between its samples (s), NaN where absent
 */
record LoggedWind(double[] speed, double[] direction, double interval) {
    /** Direction as logged, or heading plus the logged angle from the bow. */
    static LoggedWind of(SessionClock clock, BoatTrack track, double[] heading, double longestGap) {
        double[] speed = Resampling.onto(clock, track, Paths.TWS, Quantity.Kind.PLAIN, longestGap);
        double[] direction = Resampling.onto(clock, track, Paths.TWD, Quantity.Kind.COMPASS, longestGap);
        if (Arrays.stream(direction).allMatch(Double::isNaN)) {
            double[] angle = Resampling.onto(clock, track, Paths.TWA_WATER, Quantity.Kind.SIGNED, longestGap);
            for (int i = 0; i < direction.length; i++) {
                direction[i] = Angles.compass(heading[i] + angle[i]);
            }
        }
        for (int i = 0; i < speed.length; i++) {
            if (Double.isNaN(speed[i]) || Double.isNaN(direction[i])) {
                speed[i] = Double.NaN;
                direction[i] = Double.NaN;
            }
        }
        return new LoggedWind(speed, direction, Resampling.interval(track, Paths.TWS));
    }

    boolean isAbsent() {
        return Arrays.stream(speed).allMatch(Double::isNaN);
    }
}
