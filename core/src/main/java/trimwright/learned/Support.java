package trimwright.learned;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * What was sailed near a place.
 *
 * @param seconds within half a length of {@link Smooth} each way (s)
 * @param sessions of these
 */
record Support(double seconds, int sessions) {
    static Support of(List<SteadyBlock> blocks, double wind, double angle) {
        double seconds = 0;
        Set<Integer> sessions = new TreeSet<>();
        for (SteadyBlock block : blocks) {
            if (Math.abs(block.wind() - wind) <= Smooth.WIND_LENGTH / 2
                    && Math.abs(block.angle() - angle) <= Smooth.ANGLE_LENGTH / 2) {
                seconds += block.seconds();
                sessions.add(block.session());
            }
        }
        return new Support(seconds, sessions.size());
    }
}
