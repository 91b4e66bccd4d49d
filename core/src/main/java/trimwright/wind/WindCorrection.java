package trimwright.wind;

import trimwright.air.ApparentWind;

/**
 * What is taken off the readings of one boat's wind sensor.
 *
 * @param angle by which it reads too far to starboard (rad): set askew, or the compass is off, which comes to the same
 * @param upwash how the wing turns the wind
 * @param factor speed read over true speed (-)
 * @param errors standard errors of the three
 */
public record WindCorrection(double angle, Upwash upwash, double factor, Errors errors) {
    /** Readings as they stand. */
    public static final WindCorrection NONE = new WindCorrection(0, new Upwash(0, 1), 1, new Errors(0, 0, 0));

    /** From this angle on the wing pulls to one side in full (rad), chosen. */
    private static final double FULL = Math.toRadians(5);

    /** How fast upwash grows as the apparent wind falls (-), chosen: a wing of the same lift has 0, one of the same force 2. */
    private static final double GROWTH = 1.5;

    /** Growth is not followed beyond half and twice the wind (chosen). */
    private static final double FURTHEST = 2;

    /**
     * Angle by which the wing turns the wind at the sensor away from the bow: more in less wind, where it works at a higher
     * lift coefficient.
     *
     * @param angle in an apparent wind of {@code speed} (rad)
     * @param speed (m/s)
     */
    public record Upwash(double angle, double speed) {}

    /**
     * Standard errors.
     *
     * @param angle (rad)
     * @param upwash in the apparent wind that it is given for (rad)
     * @param factor (-)
     */
    public record Errors(double angle, double upwash, double factor) {}

    public boolean isNone() {
        return equals(NONE);
    }

    /** The wind that was there, of one that was read. */
    ApparentWind of(ApparentWind read) {
        return isNone() ? read : new ApparentWind(read.speed() / factor, read.angle() - angle - bend(read));
    }

    private double bend(ApparentWind read) {
        return upwash.angle() * share(read, upwash.speed());
    }

    /** Upwash over that in an apparent wind of a speed, with the sign of the side to which the wing pulls (-). */
    public static double share(ApparentWind read, double speed) {
        double side = Math.max(-1, Math.min(1, read.angle() / FULL));
        double ratio = speed / Math.max(read.speed(), speed / FURTHEST);
        return side * StrictMath.pow(Math.max(ratio, 1 / FURTHEST), GROWTH);
    }
}
