package trimwright.target;

/** Why there is no target, in the trade's words. */
final class Reasons {
    static final String TAKES_OFF = "the boat takes off";
    static final String STALLED = "on the hulls the wing stays stalled here, even fully eased";

    private Reasons() {}

    static String ofNoBalance(Branch branch, TargetMode mode, double angle) {
        if (branch == Branch.DISPLACEMENT) {
            return "no steady state on the hulls was found";
        }
        if (mode == TargetMode.UPWIND || angle < Math.PI / 3) {
            return "too close to the wind to stay on the foils";
        }
        return mode == TargetMode.DOWNWIND || angle > 3 * Math.PI / 4
                ? "too far off the wind to stay on the foils"
                : "too little wind to stay on the foils";
    }
}
