package trimwright.air;

/**
 * The course theorem (Lanchester): the angle between course and apparent wind is the sum of the drag angles of what is
 * in the air and what is in the water. With that angle constant the best courses follow in closed form. A start and a
 * check for the full balance, not a model of a boat.
 */
public final class CourseTheorem {
    private CourseTheorem() {}

    /** Boat speed over true wind speed (-) on a course at {@code gamma} to the true, {@code beta} to the apparent wind. */
    public static double speedRatio(double gamma, double beta) {
        return StrictMath.sin(gamma - beta) / StrictMath.sin(beta);
    }

    /** Course to the true wind (rad) of the highest speed. */
    public static double fastestCourse(double beta) {
        return Math.PI / 2 + beta;
    }

    /** Course to the true wind (rad) of the best speed made good upwind. */
    public static double upwindCourse(double beta) {
        return Math.PI / 4 + beta / 2;
    }

    /** Course to the true wind (rad) of the best speed made good downwind. */
    public static double downwindCourse(double beta) {
        return 3 * Math.PI / 4 + beta / 2;
    }
}
