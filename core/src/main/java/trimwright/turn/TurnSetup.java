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
 * @param boat the boat
 * @param wing the wing she carries
 * @param aims the crew's card for that wing
 * @param air density and viscosity
 * @param water density and viscosity
 * @param wind mean speed at 10 m (m/s)
 * @param intensity standard deviation of turbulence over the mean wind (-)
 */
public record TurnSetup(
        TurnKind kind,
        Boat boat,
        WingSpec wing,
        SailingAims aims,
        AirState air,
        WaterState water,
        double wind,
        double intensity) {}
