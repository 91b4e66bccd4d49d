package trimwright.air;

import trimwright.units.Units;

/**
 * Mean wind speed over height above open water: the logarithmic law with a roughness that the wind itself makes
 * (Charnock). Neutral stability; stable or unstable air, fetch and gusts are left out, and so is the smooth-flow part of
 * roughness that matters below 2 m/s.
 *
 * <p>Source: U(z) = u*&#47;k ln(z/z0), z0 = a u*^2/g; a = 0.011 for the open sea (IEC 61400-3, from memory), k = 0.4.
 * Published fits of a run from 0.011 to 0.018.
 */
public final class WindProfile {
    /** Height at which winds are stated (m). */
    public static final double REFERENCE_HEIGHT = 10.0;

    /** Charnock's parameter of the open sea (-). */
    public static final double CHARNOCK_OPEN_SEA = 0.011;

    private static final double KARMAN = 0.4;

    private final double referenceSpeed;
    private final double frictionSpeed;
    private final double roughness;

    private WindProfile(double referenceSpeed, double frictionSpeed, double roughness) {
        this.referenceSpeed = referenceSpeed;
        this.frictionSpeed = frictionSpeed;
        this.roughness = roughness;
    }

    /** The open sea's profile for a wind (m/s, 0 to 60) at the reference height. */
    public static WindProfile overSea(double referenceSpeed) {
        return overSea(referenceSpeed, CHARNOCK_OPEN_SEA);
    }

    /** As {@link #overSea(double)} with another Charnock parameter (-), 0.005 to 0.05. */
    public static WindProfile overSea(double referenceSpeed, double charnock) {
        if (!(referenceSpeed >= 0 && referenceSpeed <= 60) || !(charnock >= 0.005 && charnock <= 0.05)) {
            throw new IllegalArgumentException(
                    "wind profile needs 0-60 m/s and Charnock 0.005-0.05, not " + referenceSpeed + ", " + charnock);
        }
        if (referenceSpeed == 0) {
            return new WindProfile(0, 0, 0);
        }
        // Newton's method for u* ln(10 g / (a u*^2)) = k U; from here five rounds reach rounding error.
        double scale = REFERENCE_HEIGHT * Units.G / charnock;
        double frictionSpeed = 0.036 * referenceSpeed;
        for (int i = 0; i < 20; i++) {
            double log = StrictMath.log(scale / (frictionSpeed * frictionSpeed));
            double step = (frictionSpeed * log - KARMAN * referenceSpeed) / (log - 2);
            frictionSpeed -= step;
            if (Math.abs(step) <= 1e-12 * frictionSpeed) {
                break;
            }
        }
        return new WindProfile(referenceSpeed, frictionSpeed, charnock * frictionSpeed * frictionSpeed / Units.G);
    }

    /** The same wind at every height (m/s): tests and wind tunnels. */
    public static WindProfile uniform(double speed) {
        return new WindProfile(speed, 0, 0);
    }

    /** Speed (m/s) at a height (m) above the water; zero at and below the roughness length. */
    public double speedAt(double height) {
        if (frictionSpeed == 0) {
            return referenceSpeed;
        }
        return height <= roughness ? 0 : frictionSpeed / KARMAN * StrictMath.log(height / roughness);
    }

    /** Change of the speed with height (1/s) there; zero where the speed itself is. */
    public double slopeAt(double height) {
        return frictionSpeed == 0 || height <= roughness ? 0 : frictionSpeed / (KARMAN * height);
    }

    /** Speed at the reference height (m/s). */
    public double referenceSpeed() {
        return referenceSpeed;
    }

    /** Friction velocity u* (m/s); zero for a uniform wind. */
    public double frictionSpeed() {
        return frictionSpeed;
    }

    /** Roughness length z0 (m); zero for a uniform wind. */
    public double roughness() {
        return roughness;
    }
}
