package trimwright.motion;

/** All that a step needs to know of a boat. */
public record MotionState(Pose pose, Rates rates, Controls controls) {}
