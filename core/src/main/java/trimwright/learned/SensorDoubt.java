package trimwright.learned;

/**
 * What one standard error of a session's wind sensor does to a block's logarithm of the speed ratio, each with its sign.
 *
 * @param offset of the vane's mounting: opposite on the two tacks (-)
 * @param upwash of the wing at the sensor (-)
 * @param factor of the wind's speed (-)
 */
public record SensorDoubt(double offset, double upwash, double factor) {
    /**
     * By the triangle of winds.
     *
     * @param wind true (m/s)
     * @param angle true wind angle from the course (rad), in [0, pi]
     * @param tack 1 with the wind from starboard, -1 from port
     * @param speed of the boat (m/s)
     * @param errors standard errors: offset and upwash (rad), factor (-)
     * @param byWind slope of the logarithm of target speed over that of the wind (-)
     * @param byAngle the same over wind angle (1/rad)
     */
    static SensorDoubt of(
            double wind, double angle, int tack, double speed, Errors errors, double byWind, double byAngle) {
        double ahead = wind * StrictMath.cos(angle) + speed;
        double side = wind * StrictMath.sin(angle);
        double felt = StrictMath.hypot(ahead, side) / wind;
        double between = angle - StrictMath.atan2(side, ahead);
        double across = felt * StrictMath.sin(between);
        double along = felt * StrictMath.cos(between);
        // The apparent wind turned away from the bow, and lengthened, moves the true wind's end so.
        double turned = -(byWind * across + byAngle * along);
        double lengthened = -(byWind * along - byAngle * across);
        return new SensorDoubt(tack * errors.offset * turned, errors.upwash * turned, errors.factor * lengthened);
    }

    /** Standard errors of offset (rad), upwash (rad) and factor (-). */
    record Errors(double offset, double upwash, double factor) {}
}
