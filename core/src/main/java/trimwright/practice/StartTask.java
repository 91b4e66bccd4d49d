package trimwright.practice;

/**
 * A start to be made: the line lies square across the course.
 *
 * @param gun time of the start signal since the drill began (s)
 * @param metres to the line as the drill begins
 * @param angle from the course to the wind (rad), which comes from starboard and north
 */
public record StartTask(double gun, double metres, double angle) {}
