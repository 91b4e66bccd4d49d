package trimwright.wind;

/** What a reader of wind and course figures must be told. */
public enum WindCaveat {
    /** No variation in the log: directions are magnetic, angles from the bow are not touched. */
    HEADING_IS_MAGNETIC,
    /** No variation in the log: directions were turned by that of the World Magnetic Model at the place and time. */
    VARIATION_FROM_MODEL,
    /** No compass in the log: the heading is the course over ground, so leeway is missing from it. */
    HEADING_FROM_COURSE,
    /** No course over ground: the boat is taken to move where it points. */
    COURSE_FROM_HEADING,
    /** Speed is over ground: the wind is the wind over ground, and current is inside every figure. */
    WIND_OVER_GROUND,
    /** No speed through the water in the log: speed factor, leeway coefficient and current cannot be told apart. */
    NOT_SEPARABLE,
    /** No roll in the log: the boat was taken as upright. */
    HEEL_UNKNOWN,
    /** No pitch in the log: the boat was taken as level. */
    PITCH_UNKNOWN,
    /** Speed is through water and no leeway is in the log: it was taken as zero. */
    LEEWAY_UNKNOWN,
    /** The sensor's height is not known: wind speeds are those at the sensor. */
    WIND_AT_SENSOR_HEIGHT,
    /** The sensor's place is not known: its own motion when the boat rolls and pitches is left in. */
    SENSOR_MOTION_NOT_REMOVED,
    /** The wing bends the wind at the sensor; that is not removed. */
    UPWASH_NOT_REMOVED,
    /** What the wind sensor reads wrongly was found from the winds of both tacks and of all boats, and taken off. */
    SENSOR_CORRECTED,
    /** Readings were corrected by a calibration that was accepted. */
    SENSOR_CALIBRATED,
    /** No apparent wind in the log: the true wind is what another device computed. */
    WIND_AS_LOGGED,
    /** The wing's sheet is logged and no boat file says where the sensor stands: it was taken as fixed to the boat. */
    SENSOR_TAKEN_AS_FIXED,
    /** The sensor turns with the wing and the sheet angle is not in the log: no wind could be found. */
    SENSOR_ON_WING_WITHOUT_SHEET,
    /** Neither apparent nor true wind in the log. */
    NO_WIND
}
