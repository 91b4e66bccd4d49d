package trimwright.motion;

import org.jspecify.annotations.Nullable;

/** What ends a run: an attitude from which nobody can sail on, and in which the model's forces mean nothing any more. */
public enum Mishap {
    /** Heeled, or reared up over the stern, so far that nobody could hold her. */
    CAPSIZED,
    /** The bows went under and she tripped over them. */
    NOSE_DIVED;

    /** Heel either way, bow up and bow down beyond any that is sailed (rad): chosen. */
    private static final double HEEL = Math.toRadians(40);

    private static final double REARED = Math.toRadians(35);
    private static final double DIVED = Math.toRadians(-20);

    /** What has befallen a boat that lies so; null while she sails. */
    public static @Nullable Mishap of(Pose pose) {
        if (pose.pitch() < DIVED) {
            return NOSE_DIVED;
        }
        return Math.abs(pose.roll()) > HEEL || pose.pitch() > REARED ? CAPSIZED : null;
    }
}
