package trimwright.boat;

/**
 * What lies flat under the wing's foot and keeps the air from rounding it: deck, trampoline, fairing.
 *
 * @param width athwart, centred under the wing (m), positive
 * @param gap foot of the wing above it (m), positive
 * @param solidity share of the air that it holds back (-): 1 a closed deck, 0 none
 */
public record FootPlate(double width, double gap, double solidity) {
    public FootPlate {
        if (!(width > 0) || !(gap > 0) || !(solidity >= 0 && solidity <= 1)) {
            throw new IllegalArgumentException(
                    "a plate under the foot has width and gap above 0 and solidity 0 to 1, not " + width + " m, " + gap
                            + " m, " + solidity);
        }
    }
}
