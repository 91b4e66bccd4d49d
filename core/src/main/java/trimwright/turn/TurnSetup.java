package trimwright.turn;

import trimwright.air.AirState;
import trimwright.boat.Boat;
import trimwright.boat.WingSpec;
import trimwright.crew.SailingAims;
import trimwright.crew.TurnKind;
import trimwright.water.WaterState;

/**
 * What a turn is planned for.
 *
 * @param kind of turn
 * @param begin how she comes to it
 * @param boat the boat
 * @param wing the wing she carries
 * @param aims the crew's card for that wing
 * @param air density and viscosity
 * @param water density and viscosity
 * @param wind mean speed at 10 m (m/s)
 * @param intensity standard deviation of turbulence over the mean wind (-)
 * @param touching what a hull in the water means
 */
public record TurnSetup(
        TurnKind kind,
        TurnBegin begin,
        Boat boat,
        WingSpec wing,
        SailingAims aims,
        AirState air,
        WaterState water,
        double wind,
        double intensity,
        Touching touching) {
    /** What a hull that touches the water means for a turn. */
    public enum Touching {
        /** The turn is meant to stay on the foils. */
        SPOILS,
        /** The turn is meant to come off the foils, as where no boat of the search stays on them. */
        PLANNED
    }

    /** The same for turns that are meant otherwise. */
    public TurnSetup with(Touching other) {
        return new TurnSetup(kind, begin, boat, wing, aims, air, water, wind, intensity, other);
    }
}
