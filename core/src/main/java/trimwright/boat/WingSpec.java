package trimwright.boat;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A rigid two-element wing.
 *
 * @param id name among the boat's wings, for example {@code tall}
 * @param stations foot to head, heights rising from 0, at least two
 * @param footHeight foot above the bottom of the hulls (m)
 * @param x place of the turning axis forward of the main foils' lift centre (m)
 * @param flapChordRatio chord of the flap over the total chord (-)
 * @param turningAxisRatio turning axis aft of the leading edge, over the total chord (-)
 * @param flapPanels panels of the flap, joints below the head
 * @param footPlate what lies under the foot; null: the open sea
 * @param slotGapRatio width of the slot over the total chord (-)
 * @param mass mass of the wing (kg)
 * @param massHeight its centre above the foot (m)
 * @param trim range of the controls
 * @param sheet how the whole wing is held
 */
public record WingSpec(
        String id,
        List<WingStation> stations,
        double footHeight,
        double x,
        double flapChordRatio,
        double turningAxisRatio,
        FlapPanels flapPanels,
        @Nullable FootPlate footPlate,
        double slotGapRatio,
        double mass,
        double massHeight,
        TrimRange trim,
        SheetTackle sheet) {
    public WingSpec {
        stations = List.copyOf(stations);
        if (stations.size() < 2) {
            throw new IllegalArgumentException("a wing needs two stations or more");
        }
        for (double joint : flapPanels.joints()) {
            if (!(joint < stations.get(stations.size() - 1).height())) {
                throw new IllegalArgumentException("a joint of the flap stands below the head, not at " + joint + " m");
            }
        }
    }

    /** The same wing on another sheet. */
    public WingSpec withSheet(SheetTackle other) {
        return new WingSpec(
                id,
                stations,
                footHeight,
                x,
                flapChordRatio,
                turningAxisRatio,
                flapPanels,
                footPlate,
                slotGapRatio,
                mass,
                massHeight,
                trim,
                other);
    }

    /** Foot to head (m). */
    public double span() {
        return stations.get(stations.size() - 1).height();
    }
}
