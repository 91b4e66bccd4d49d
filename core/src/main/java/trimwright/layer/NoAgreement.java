package trimwright.layer;

/**
 * Layers and outer flow found no agreement: usually the section is stalled beyond what steady layers can describe.
 *
 * @param alpha angle of attack (rad)
 * @param reynolds Reynolds number (-)
 * @param steps of Newton's method that were tried, at most {@link ViscousFlow#MOST_STEPS}
 */
public record NoAgreement(double alpha, double reynolds, int steps) implements ViscousAnswer {}
