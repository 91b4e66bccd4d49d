package trimwright.layer;

/**
 * Layers and outer flow found no agreement: usually the section is stalled beyond what steady layers can describe.
 *
 * @param alpha angle of attack (rad)
 * @param reynolds Reynolds number (-)
 */
public record NoAgreement(double alpha, double reynolds) implements ViscousAnswer {}
