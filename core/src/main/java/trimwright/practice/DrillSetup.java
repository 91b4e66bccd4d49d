package trimwright.practice;

import trimwright.air.AirState;
import trimwright.boat.Boat;
import trimwright.boat.WingSpec;
import trimwright.crew.SailingAims;
import trimwright.water.WaterState;

/**
 * All that a run of a drill needs but the hand; the same setup with the same hand gives the same run.
 *
 * @param drill what is sailed
 * @param boat the boat
 * @param wing the wing she carries
 * @param aims the crew's card for that wing
 * @param air density and viscosity
 * @param water density and viscosity
 * @param wind mean speed at 10 m (m/s)
 * @param seed of the wind's unrest
 */
public record DrillSetup(
        Drill drill,
        Boat boat,
        WingSpec wing,
        SailingAims aims,
        AirState air,
        WaterState water,
        double wind,
        long seed) {}
