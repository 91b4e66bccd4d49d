package trimwright.learned;

/**
 * Half a minute of steady foiling.
 *
 * @param session its number within the season
 * @param wind mean true wind (m/s)
 * @param angle mean true wind angle from the course (rad), in [0, pi]
 * @param logRatio logarithm of speed sailed over reachable speed (-)
 * @param seconds that it holds (s)
 * @param doubt what the session's wind sensor may make of it
 */
public record SteadyBlock(int session, double wind, double angle, double logRatio, double seconds, SensorDoubt doubt) {
    public SteadyBlock {
        double all = logRatio + doubt.offset() + doubt.upwash() + doubt.factor();
        if (!Double.isFinite(all) || !(wind > 0) || !(seconds > 0)) {
            throw new IllegalArgumentException("a block of " + wind + " m/s has no ratio or doubt");
        }
    }
}
