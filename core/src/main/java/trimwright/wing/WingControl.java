package trimwright.wing;

/** What a {@link WingSensitivity} is taken by. */
public enum WingControl {
    /** Signed sheet angle (rad). */
    SHEET,
    /** Signed camber (rad), twist held, so the whole flap moves. */
    CAMBER,
    /** Signed twist (rad). */
    TWIST,
    /** Share of the twist reached at the middle (-). */
    TWIST_MID_RATIO,
    /** Natural logarithm of one factor on all air velocities (-). */
    AIR_SPEED
}
