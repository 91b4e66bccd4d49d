package trimwright.practice;

import org.jspecify.annotations.Nullable;
import trimwright.air.AirState;
import trimwright.boat.Boat;
import trimwright.boat.WingSpec;
import trimwright.crew.SailingAims;
import trimwright.water.WaterState;
import trimwright.weather.WaveSpec;

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
 * @param seed of the wind's unrest, and of the waves
 * @param waves raised by the wind, which is from north; null on flat water
 */
public record DrillSetup(
        Drill drill,
        Boat boat,
        WingSpec wing,
        SailingAims aims,
        AirState air,
        WaterState water,
        double wind,
        long seed,
        @Nullable WaveSpec waves) {
    /** On flat water. */
    public DrillSetup(
            Drill drill,
            Boat boat,
            WingSpec wing,
            SailingAims aims,
            AirState air,
            WaterState water,
            double wind,
            long seed) {
        this(drill, boat, wing, aims, air, water, wind, seed, null);
    }

    /** The same in that sea; null on flat water. */
    public DrillSetup on(@Nullable WaveSpec sea) {
        return new DrillSetup(drill, boat, wing, aims, air, water, wind, seed, sea);
    }
}
