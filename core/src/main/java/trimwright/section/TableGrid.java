package trimwright.section;

import java.util.ArrayList;
import java.util.List;

/**
 * Nodes of a table of computed sections.
 *
 * @param thicknesses of the main element over its chord (-), rising, one or more
 * @param reynolds Reynolds numbers on the total chord, rising, three or more
 * @param flaps flap angles (rad), rising from 0, three or more; negative ones are the mirror's
 * @param places where between both stalls: -1 at the lower, 1 at the upper, symmetric, rising, an odd number
 */
public record TableGrid(List<Double> thicknesses, List<Double> reynolds, List<Double> flaps, List<Double> places) {
    /** Flap angles, chosen: as far as wings of this kind turn theirs. */
    private static final double FLAP_STEP = Math.toRadians(5);

    private static final int FLAP_STEPS = 8;

    /** Chosen: half that of a strip at 10 knots at the head, to that of a foot's strip at 55 knots; a step of 2.7. */
    private static final List<Double> REYNOLDS = List.of(5e5, 1.35e6, 3.7e6, 1e7);

    /** Places on each side of the middle; with stalls 35 degrees apart some 1.7 degrees a step. */
    private static final int PLACES = 10;

    /** Crowding of places toward stall, chosen: steps there are a third shorter. */
    private static final double CROWDING = 0.35;

    public TableGrid {
        thicknesses = List.copyOf(thicknesses);
        reynolds = List.copyOf(reynolds);
        flaps = List.copyOf(flaps);
        places = List.copyOf(places);
        if (thicknesses.isEmpty() || reynolds.size() < 3 || flaps.size() < 3 || places.size() % 2 == 0) {
            throw new IllegalArgumentException("a table needs a thickness, three Reynolds numbers, three flap angles,"
                    + " and an odd number of places");
        }
        if (flaps.get(0) != 0 || places.get(places.size() - 1) != 1) {
            throw new IllegalArgumentException("flap angles begin at 0, places end at 1");
        }
    }

    /** The usual nodes, for a wing of these thicknesses. */
    public static TableGrid of(List<Double> thicknesses) {
        List<Double> flaps = new ArrayList<>();
        for (int j = 0; j <= FLAP_STEPS; j++) {
            flaps.add(j * FLAP_STEP);
        }
        List<Double> places = new ArrayList<>();
        for (int i = -PLACES; i <= PLACES; i++) {
            double even = (double) i / PLACES;
            // An odd function of i, so that places are symmetric to the bit.
            places.add(
                    Math.abs(i) == PLACES
                            ? Math.signum(even)
                            : (1 - CROWDING) * even + CROWDING * StrictMath.sin(0.5 * Math.PI * even));
        }
        return new TableGrid(thicknesses, REYNOLDS, flaps, places);
    }
}
