package trimwright.wind;

import trimwright.air.WindProfile;

/** Takes wind at the sensor to the reference height by the open sea's profile. */
final class SensorHeight {
    /** Winds beyond which the profile is not asked (m/s): its share of the wind hardly changes there. */
    private static final double CALMEST = 1.0;

    private static final double STRONGEST = 40.0;

    private SensorHeight() {}

    /**
     * Wind at the reference height over wind at the sensor (-).
     *
     * @param speed at the sensor (m/s)
     * @param height of the sensor above the water (m)
     */
    static double toReference(double speed, double height) {
        double reference = Math.max(CALMEST, Math.min(STRONGEST, speed));
        double ratio = 1;
        // The share changes by hundredths over the whole range of winds, so three rounds settle it to 1e-5.
        for (int round = 0; round < 3; round++) {
            ratio = reference / WindProfile.overSea(reference).speedAt(height);
            reference = Math.max(CALMEST, Math.min(STRONGEST, speed * ratio));
        }
        return ratio;
    }
}
