package trimwright.motion;

import trimwright.air.WindProfile;

/**
 * The wind at a boat: over ground and over water alike if the water moves, the caller has taken that off.
 *
 * @param profile speed over height
 * @param towardsNorth north part of the unit vector along which the air moves (-)
 * @param towardsEast east part of it (-)
 */
public record LocalWind(WindProfile profile, double towardsNorth, double towardsEast) {
    /** A wind of that speed (m/s) at 10 m from that direction (rad, clockwise from north). */
    public static LocalWind of(double speed, double from) {
        return new LocalWind(WindProfile.overSea(speed), -StrictMath.cos(from), -StrictMath.sin(from));
    }
}
