package trimwright.boat;

import org.jspecify.annotations.Nullable;

/**
 * What must not be passed in straight sailing.
 *
 * @param elevatorDownForce largest downward force of the windward elevator (N)
 * @param heelMax largest windward heel (rad)
 * @param heelMin least heel, negative to leeward (rad)
 * @param rideHeightMin lowest ride height when foiling, bottom of the hulls above the water (m)
 * @param rideHeightMax highest ride height (m)
 * @param pitchMin least pitch, bow up positive (rad)
 * @param pitchMax largest pitch (rad)
 * @param boatSpeedMax speed limit of class or maker (m/s), null where there is none
 * @param gustChanceMax largest chance in a race that a gust passes a limit, for a setup to be recommended (-), null where not said
 * @param gustChancePerMinute largest chance that in a minute of sailing a gust passes a limit (-), null where not said: how far below
 *     their limits moment and sheet load are aimed
 * @param turnChanceMax largest chance that a turn by the safe plan passes a limit, touches down or is blown past the windward heel (-),
 *     null where not said
 */
public record Limits(
        double elevatorDownForce,
        double heelMax,
        double heelMin,
        double rideHeightMin,
        double rideHeightMax,
        double pitchMin,
        double pitchMax,
        @Nullable Double boatSpeedMax,
        @Nullable Double gustChanceMax,
        @Nullable Double gustChancePerMinute,
        @Nullable Double turnChanceMax) {
    /** The same with another downward force of the windward elevator (N). */
    public Limits withElevatorDownForce(double force) {
        return new Limits(
                force,
                heelMax,
                heelMin,
                rideHeightMin,
                rideHeightMax,
                pitchMin,
                pitchMax,
                boatSpeedMax,
                gustChanceMax,
                gustChancePerMinute,
                turnChanceMax);
    }
}
