package trimwright.wing;

import java.util.List;

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
    AIR_SPEED,
    /** Signed apparent wind angle (rad), positive from starboard: all air turns as one about the sea's upright. */
    AIR_ANGLE,
    /** Signed roll (rad), starboard down: the wing tilts about its foot in level air that stays. */
    HEEL,
    /** Height of the foot above the water (m), the air at the strips unchanged. */
    FOOT_HEIGHT;

    /** What the trimmer moves. */
    public static final List<WingControl> TRIM = List.of(SHEET, CAMBER, TWIST, TWIST_MID_RATIO);
}
