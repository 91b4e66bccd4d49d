package trimwright.motion;

import java.util.function.DoubleUnaryOperator;
import trimwright.air.WindProfile;

/**
 * The wind at a boat: over ground and over water alike if the water moves, the caller has taken that off.
 *
 * @param profile mean speed over height
 * @param towardsNorth north part of the unit vector along which the air moves at the reference height (-)
 * @param towardsEast east part of it (-)
 * @param gustNorth what gusts add to the north (m/s) at a height above the water (m), over what they are at the reference height
 * @param gustEast the same to the east
 */
public record LocalWind(
        WindProfile profile,
        double towardsNorth,
        double towardsEast,
        DoubleUnaryOperator gustNorth,
        DoubleUnaryOperator gustEast) {
    /** Least speed that a profile is made for (m/s): chosen. */
    private static final double LEAST_SPEED = 0.5;

    /** One whose gusts are the same at every height. */
    public LocalWind(WindProfile profile, double towardsNorth, double towardsEast) {
        this(profile, towardsNorth, towardsEast, height -> 0, height -> 0);
    }

    /** A wind of that speed (m/s) at 10 m from that direction (rad, clockwise from north). */
    public static LocalWind of(double speed, double from) {
        return new LocalWind(WindProfile.overSea(speed), -StrictMath.cos(from), -StrictMath.sin(from));
    }

    /** Air that moves so to north and east at 10 m (m/s), with those gusts over height; below half a metre a second as at half. */
    public static LocalWind moving(
            double north, double east, DoubleUnaryOperator gustNorth, DoubleUnaryOperator gustEast) {
        double speed = Math.max(LEAST_SPEED, Math.sqrt(north * north + east * east));
        return new LocalWind(WindProfile.overSea(speed), north / speed, east / speed, gustNorth, gustEast);
    }

    /**
     * Speed of the air (m/s) to where a heading points, at a height (m).
     *
     * @param cos cosine of the heading
     * @param sin its sine
     */
    double ahead(double height, double cos, double sin) {
        return (towardsNorth * cos + towardsEast * sin) * profile.speedAt(height)
                + (gustNorth.applyAsDouble(height) * cos + gustEast.applyAsDouble(height) * sin);
    }

    /** The same to starboard of it. */
    double abeam(double height, double cos, double sin) {
        return (-towardsNorth * sin + towardsEast * cos) * profile.speedAt(height)
                + (gustEast.applyAsDouble(height) * cos - gustNorth.applyAsDouble(height) * sin);
    }
}
