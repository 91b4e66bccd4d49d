package trimwright.segment;

/** Coarse classes of true wind angle. */
public enum PointOfSail {
    UPWIND,
    REACHING,
    DOWNWIND;

    /** True wind angles from the bow (rad) at which the class changes (chosen: well away from best VMG angles). */
    private static final double BELOW_UPWIND = Math.toRadians(70);

    private static final double ABOVE_DOWNWIND = Math.toRadians(110);

    /** A class is left only this far beyond its border (chosen: a shifty wind must not chop a reach). */
    private static final double HOLD = Math.toRadians(5);

    /** Of a wind angle of either sign. */
    public static PointOfSail of(double windAngle) {
        double angle = Math.abs(windAngle);
        return angle < BELOW_UPWIND ? UPWIND : angle > ABOVE_DOWNWIND ? DOWNWIND : REACHING;
    }

    /** The class after {@code this}, left only where the angle is clearly outside it. */
    PointOfSail next(double windAngle) {
        PointOfSail plain = of(windAngle);
        if (plain == this) {
            return this;
        }
        double angle = Math.abs(windAngle);
        boolean holds = switch (this) {
            case UPWIND -> angle < BELOW_UPWIND + HOLD;
            case DOWNWIND -> angle > ABOVE_DOWNWIND - HOLD;
            case REACHING -> angle > BELOW_UPWIND - HOLD && angle < ABOVE_DOWNWIND + HOLD;
        };
        return holds ? this : plain;
    }

    /** Whether progress is made good against the wind, up or down, rather than along the leg. */
    public boolean isJudgedByVmg() {
        return this != REACHING;
    }

    /** +1 where progress is to windward, -1 where it is to leeward. */
    public int windwardSign() {
        return this == DOWNWIND ? -1 : 1;
    }
}
