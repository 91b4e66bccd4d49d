package trimwright.target;

/**
 * How the boat lies, and how its foils are set, free of the tack.
 *
 * @param heel (rad), positive to windward
 * @param rideHeight bottom of the hulls above the undisturbed water at the middle of the boat (m), negative: hulls in
 * @param leeway angle from bow to course through the water (rad), positive to leeward
 * @param pitch (rad), positive bow up
 * @param rudder (rad), positive where the rudders push the stern to windward
 * @param mainRake incidence of the leeward main foil's tip (rad)
 * @param elevator mean incidence of the two elevators (rad), positive lifts
 * @param elevatorDifferential leeward elevator's incidence less the mean (rad); the windward one has the opposite
 */
public record Attitude(
        double heel,
        double rideHeight,
        double leeway,
        double pitch,
        double rudder,
        double mainRake,
        double elevator,
        double elevatorDifferential) {}
