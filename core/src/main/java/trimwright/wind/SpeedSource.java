package trimwright.wind;

/** Which boat speed is judged. */
public enum SpeedSource {
    /** Speed and course over ground: the wind found with it is the wind over ground. */
    OVER_GROUND,
    /** Speed through water with heading and leeway: the wind found with it is the wind over water. */
    THROUGH_WATER
}
