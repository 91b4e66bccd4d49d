package trimwright.recording;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What the day is, set ashore: it rules what may be shown, and is kept with the recording. */
public enum EventMode {
    PRACTICE,
    /** No data of other boats. */
    RACING,
    /** Racing where the event allows data of the fleet on board. */
    RACING_FLEET;

    /** As typed and kept: {@code racing-fleet}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The mode of that key, or null. */
    public static @Nullable EventMode find(String key) {
        for (EventMode mode : values()) {
            if (mode.key().equals(key)) {
                return mode;
            }
        }
        return null;
    }

    /** Whether other boats may be shown on board. */
    public boolean showsOthers() {
        return this != RACING;
    }
}
