package trimwright.target;

/**
 * How the best speed changes around a solved point: with everything set anew, not with the trim held.
 *
 * @param byWind change of the speed that the point is best for over change of the true wind (m/s per m/s)
 * @param byAngle change of boat speed over change of the true wind angle (m/s per rad); zero where the angle is free
 */
public record SpeedSlopes(double byWind, double byAngle) {}
