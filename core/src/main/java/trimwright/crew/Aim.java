package trimwright.crew;

/**
 * What a crew aims at in one wind on one angle, free of the tack.
 *
 * @param speed through the water (m/s)
 * @param trim of the wing
 * @param attitude of the boat
 * @param rightingMoment that the boat then carries (N m)
 */
public record Aim(double speed, WingAim trim, AttitudeAim attitude, double rightingMoment) {
    /**
     * How the wing is set.
     *
     * @param camber flap angle at the foot (rad)
     * @param twist camber less the flap angle at the head (rad)
     * @param twistMid share of the twist reached at half height (-)
     * @param incidence apparent wind angle at 10 m less the sheet's angle (rad)
     */
    public record WingAim(double camber, double twist, double twistMid, double incidence) {}

    /**
     * How the boat lies.
     *
     * @param heel to windward (rad)
     * @param rideHeight (m), negative on the hulls
     * @param leeway (rad)
     * @param pitch (rad)
     * @param rudder positive turns the bow away from the wind (rad)
     * @param differential leeward elevator's incidence less the mean (rad)
     */
    public record AttitudeAim(
            double heel, double rideHeight, double leeway, double pitch, double rudder, double differential) {}

    Aim toward(Aim other, double share) {
        WingAim a = trim;
        WingAim b = other.trim;
        AttitudeAim c = attitude;
        AttitudeAim d = other.attitude;
        return new Aim(
                mix(speed, other.speed, share),
                new WingAim(
                        mix(a.camber, b.camber, share),
                        mix(a.twist, b.twist, share),
                        mix(a.twistMid, b.twistMid, share),
                        mix(a.incidence, b.incidence, share)),
                new AttitudeAim(
                        mix(c.heel, d.heel, share),
                        mix(c.rideHeight, d.rideHeight, share),
                        mix(c.leeway, d.leeway, share),
                        mix(c.pitch, d.pitch, share),
                        mix(c.rudder, d.rudder, share),
                        mix(c.differential, d.differential, share)),
                mix(rightingMoment, other.rightingMoment, share));
    }

    private static double mix(double a, double b, double share) {
        return a + share * (b - a);
    }
}
