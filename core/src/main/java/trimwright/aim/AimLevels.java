package trimwright.aim;

import trimwright.weather.FilteredGusts;

/**
 * How much righting moment and sheet load a state carries, and the most that the day's gusts leave to be carried.
 *
 * @param moment righting moment in the state (N m)
 * @param momentLimit largest that the boat has (N m): the crew out, all else as at the target
 * @param momentMost to be carried (N m), not above the limit; on the hulls the limit
 * @param load of the sheet in the state (N)
 * @param loadLimit of the boat file (N)
 * @param loadMost to be carried (N), not above the limit
 * @param momentGusts what the moment feels of gusts
 * @param momentRise of the wind within the crew's answer that takes the moment from its most to its limit (m/s)
 * @param loadGusts what the sheet feels of gusts
 * @param loadRise the same of the load (m/s)
 */
public record AimLevels(
        double moment,
        double momentLimit,
        double momentMost,
        double load,
        double loadLimit,
        double loadMost,
        FilteredGusts momentGusts,
        double momentRise,
        FilteredGusts loadGusts,
        double loadRise) {
    /** The righting moment to carry (N m): that of the state, or the most where this is less. */
    public double momentAim() {
        return Math.min(moment, momentMost);
    }

    /** The sheet load to carry (N), likewise. */
    public double loadAim() {
        return Math.min(load, loadMost);
    }
}
