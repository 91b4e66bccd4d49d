package trimwright.learned;

/**
 * Half a minute of steady foiling.
 *
 * @param session its number within the season
 * @param wind mean true wind (m/s)
 * @param angle mean true wind angle from the course (rad), in [0, pi]
 * @param tack 1 with the wind from starboard, -1 from port
 * @param logRatio logarithm of speed sailed over reachable speed (-)
 * @param seconds that it holds (s)
 * @param byWind logarithm of target speed over that of wind speed, its slope there (-)
 * @param byAngle the same over wind angle (1/rad)
 */
public record SteadyBlock(
        int session,
        double wind,
        double angle,
        int tack,
        double logRatio,
        double seconds,
        double byWind,
        double byAngle) {
    public SteadyBlock {
        if (!Double.isFinite(logRatio + byWind + byAngle) || !(wind > 0) || !(seconds > 0)) {
            throw new IllegalArgumentException("a block of " + wind + " m/s has no ratio or slope");
        }
    }
}
