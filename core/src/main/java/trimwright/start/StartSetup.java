package trimwright.start;

import trimwright.air.AirState;
import trimwright.boat.Boat;
import trimwright.boat.WingSpec;
import trimwright.crew.SailingAims;
import trimwright.water.WaterState;

/**
 * What a start is planned for.
 *
 * @param boat the boat
 * @param wing the wing she carries
 * @param aims the crew's card for that wing
 * @param air density and viscosity
 * @param water density and viscosity
 * @param wind mean speed at 10 m (m/s)
 * @param intensity standard deviation of turbulence over the mean wind (-)
 * @param angle from the course across the line to the true wind (rad), tack-free
 */
public record StartSetup(
        Boat boat,
        WingSpec wing,
        SailingAims aims,
        AirState air,
        WaterState water,
        double wind,
        double intensity,
        double angle) {
    /** Target speed on the course across the line (m/s). */
    public double target() {
        return aims.at(wind, angle).speed();
    }
}
