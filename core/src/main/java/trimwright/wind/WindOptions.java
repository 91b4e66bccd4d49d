package trimwright.wind;

import org.jspecify.annotations.Nullable;

/**
 * How wind is found.
 *
 * @param longestGap two samples further apart than this (s), and further than three of their own intervals, are not
 *     joined
 * @param speed the boat speed to judge, or null to choose from the data
 * @param sensors whether what sensors read wrongly is found from the session and taken off
 */
public record WindOptions(double longestGap, @Nullable SpeedSource speed, Sensors sensors) {
    /** A gap of 2.5 s (chosen: two lost fixes of a receiver that gives one a second), speed chosen from the data. */
    public static final WindOptions DEFAULT = new WindOptions(2.5, null, Sensors.CORRECTED);

    /** What is done about wind sensors that read wrongly. */
    public enum Sensors {
        /** As {@link WindAgreement} finds, where it finds something. */
        CORRECTED,
        /** Nothing. */
        AS_LOGGED,
        /** Nothing: what they read wrongly was taken off the recorded channels before. */
        CALIBRATED
    }
}
