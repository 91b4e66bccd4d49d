package trimwright.setup;

import java.util.Locale;

/** What of the boat file a gust may pass before anybody has done anything. */
public enum GustLimit {
    /** Load of the sheet, at once. */
    SHEET_LOAD,
    /** Heel, within the second that a crew has; only a boat on her foils. */
    HEEL;

    /** The name in files. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
