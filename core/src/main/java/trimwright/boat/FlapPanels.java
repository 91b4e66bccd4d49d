package trimwright.boat;

import java.util.List;

/**
 * How the flap is made up along the wing.
 *
 * @param joints heights above the foot where one panel ends and the next begins (m), rising; none: a single panel
 * @param make how a panel follows the twist
 */
public record FlapPanels(List<Double> joints, Make make) {
    /** One flap from foot to head that twists as a whole. */
    public static final FlapPanels SINGLE = new FlapPanels(List.of(), Make.TWISTING);

    /** How a panel follows the twist. */
    public enum Make {
        /** Panels bend, so that flap angles run smoothly from foot to head. */
        TWISTING,
        /** Each panel is stiff and has one angle: steps at the joints. */
        STIFF
    }

    public FlapPanels {
        joints = List.copyOf(joints);
        for (int k = 0; k < joints.size(); k++) {
            if (!(joints.get(k) > (k == 0 ? 0 : joints.get(k - 1)))) {
                throw new IllegalArgumentException("joints of the flap rise from above the foot, not " + joints);
            }
        }
    }

    public int count() {
        return joints.size() + 1;
    }
}
