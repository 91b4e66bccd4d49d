package trimwright.prepare;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.platform.FoilSet;
import trimwright.platform.Variable;
import trimwright.target.TargetGrid;
import trimwright.units.Units;

/**
 * What a target book is wanted of.
 *
 * @param boat boat file
 * @param wing one of its wings
 * @param grid winds and angles
 * @param held controls that are not free, with their values (SI)
 * @param foils which main foils are down
 * @param section where the flow about the wing's sections comes from
 */
public record TargetRequest(
        BoatFile boat,
        WingSpec wing,
        TargetGrid grid,
        Map<Variable, Double> held,
        FoilSet foils,
        SectionSource section) {
    public TargetRequest {
        held = Map.copyOf(held);
    }

    /** On the leeward main foil, with sections in closed form. */
    public TargetRequest(BoatFile boat, WingSpec wing, TargetGrid grid, Map<Variable, Double> held) {
        this(boat, wing, grid, held, FoilSet.LEEWARD_DOWN, SectionSource.CLOSED_FORM);
    }

    /** All controls free, on the default grid, with sections in closed form. */
    public static TargetRequest of(BoatFile boat, WingSpec wing) {
        return of(boat, wing, defaultGrid(), SectionSource.CLOSED_FORM);
    }

    /** All controls free, on the leeward main foil. */
    public static TargetRequest of(BoatFile boat, WingSpec wing, TargetGrid grid, SectionSource section) {
        return new TargetRequest(boat, wing, grid, Map.of(), FoilSet.LEEWARD_DOWN, section);
    }

    /** Winds of 6 to 26 knots by 2, angles of 30 to 170 degrees by 5. */
    public static TargetGrid defaultGrid() {
        List<Double> winds = new ArrayList<>();
        for (int knots = 6; knots <= 26; knots += 2) {
            winds.add(Units.fromKnots(knots));
        }
        List<Double> angles = new ArrayList<>();
        for (int degrees = 30; degrees <= 170; degrees += 5) {
            angles.add(Units.fromDegrees(degrees));
        }
        return new TargetGrid(winds, angles);
    }
}
