package trimwright.target;

import java.util.Locale;

/** The closed list of what may bind at a target. */
public enum TargetLimit {
    /** The crew is as far to windward as it can be, at the largest windward heel that pays or is allowed. */
    RIGHTING_MOMENT,
    /** The windward elevator pulls down as hard as the maker allows. */
    ELEVATOR_DOWN_FORCE,
    CAVITATION_MAIN,
    CAVITATION_ELEVATOR,
    /** A shaft that pierces the surface is close to drawing air. */
    VENTILATION,
    CAMBER_MAX,
    /** Largest twist, or the head's flap as far over as it goes. */
    TWIST_MAX,
    /** The rope is at the largest load allowed, or slack. */
    SHEET_LOAD,
    STALL_MARGIN,
    /** The speed limit of class or maker. */
    SPEED_LIMIT;

    /** The name in files. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
