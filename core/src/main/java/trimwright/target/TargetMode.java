package trimwright.target;

import java.util.Locale;

/** What a target is best for. */
public enum TargetMode {
    /** Best speed made good against the wind, the angle free. */
    UPWIND,
    /** Best speed made good down the wind, the angle free. */
    DOWNWIND,
    /** Best speed at a given true wind angle. */
    ANGLE;

    /** The name in files. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
