package trimwright.card;

/**
 * One take-off in time, from the target on the hulls to the target on the foils, by the motion model and a simple schedule.
 *
 * @param gatherAngle true wind angle to the course to which she turns to gather speed (rad)
 * @param up the moment at which her hulls are clear of the water
 * @param seconds from the order until she sails at the target's angle with nearly its speed (s)
 * @param metresSpent most that she falls behind a boat that stays on the hulls, along the wind (m)
 * @param paysAfter from the order until she is ahead of that boat again (s): the least length of puff that pays; infinite where she
 *     makes good less on the foils
 */
public record TakeOffPath(double gatherAngle, Up up, double seconds, double metresSpent, double paysAfter) {
    /**
     * Leaving the water.
     *
     * @param seconds from the order (s)
     * @param speed through the water (m/s)
     * @param camber flap angle at the foot (rad)
     * @param twist camber less the flap angle at the head (rad)
     * @param sheet main element to the centreline (rad)
     */
    public record Up(double seconds, double speed, double camber, double twist, double sheet) {}
}
