package trimwright.platform;

/**
 * No steady state found near the guess.
 *
 * @param reason what is wanting
 * @param residual what is left of force over weight or moment over weight times length (-); infinite without a flow
 */
public record NoBalance(Reason reason, double residual) implements Equilibrium {
    /** What is wanting, by the equation that stays farthest from balance. */
    public enum Reason {
        DRIVE("drive and drag do not balance at any speed nearby"),
        SIDE_FORCE("the foils do not hold the side force"),
        LIFT("the foils do not carry the boat"),
        RIGHTING_MOMENT("the righting moment does not hold the wing up"),
        PITCH("the elevators do not hold the boat level"),
        HELM("the rudders do not hold the course"),
        WING_FLOW("the wing is too deep in stall for a steady flow");

        private final String sentence;

        Reason(String sentence) {
            this.sentence = sentence;
        }

        /** What a person reads. */
        public String sentence() {
            return sentence;
        }
    }
}
