package trimwright.segment;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import trimwright.wind.Quantity;
import trimwright.wind.WindTrack;

/**
 * How a leg up or down the wind is sailed on one tack once the boat is up to speed: wind angle and speed. A crew whose boat is slow
 * steers nearer to a beam reach until speed is back, so that is told by both together: the slower the boat, the less it
 * may be off its angle on that side. Pinching and running lower than the held angle is told by the angle alone.
 */
final class HeldCourse {
    /**
     * The wind angle is this near to the held one (rad), chosen: what a phase may depart by from its own median, which in
     * other wind lies a little off that of the leg.
     */
    private static final double NEAR = Math.toRadians(10);

    /** A boat that lacks this share of its held speed (-) is not up to speed even at the held angle: chosen. */
    private static final double SLOW = 0.3;

    /** First guess of the held angle: this part of the time is spent no nearer to a beam reach (-), chosen. */
    private static final double FIRST_ANGLE = 0.35;

    /** First guess of the held speed: this part of the time is spent slower (-), chosen. */
    private static final double FIRST_SPEED = 0.7;

    /** Rounds of taking medians over what is held: chosen, they hardly move after three. */
    private static final int ROUNDS = 5;

    private final WindTrack track;
    private final Courses courses;
    /** +1 where the beam reach lies at greater angles. */
    private final int sign;

    private double angle;
    private double speed;

    private HeldCourse(WindTrack track, Courses courses, int sign) {
        this.track = track;
        this.courses = courses;
        this.sign = sign;
    }

    /**
     * From the straight sailing of a leg on one tack.
     *
     * @param on up or down the wind
     * @param straight instants outside turns
     * @return null where wind and speed are known at none of them
     */
    static @Nullable HeldCourse of(WindTrack track, Courses courses, PointOfSail on, int[] straight) {
        HeldCourse held = new HeldCourse(track, courses, on.windwardSign());
        int[] known = Arrays.stream(straight).filter(held::isKnown).toArray();
        if (known.length == 0) {
            return null;
        }
        held.settle(known, on == PointOfSail.DOWNWIND ? 1 - FIRST_ANGLE : FIRST_ANGLE, FIRST_SPEED);
        for (int round = 0; round < ROUNDS; round++) {
            int[] kept = Arrays.stream(known).filter(held::isKept).toArray();
            if (kept.length > 0) {
                held.settle(kept, 0.5, 0.5);
            }
        }
        return held;
    }

    /** Whether the boat is on this course at that instant, and up to its speed. */
    boolean isKept(int i) {
        if (!isKnown(i)) {
            return false;
        }
        double aside = sign * (Math.abs(courses.windAngle[i]) - angle);
        double missing = 1 - track.get(Quantity.SPEED, i) / speed;
        return aside >= -NEAR && Math.max(0, aside) / NEAR + missing / SLOW <= 1;
    }

    private boolean isKnown(int i) {
        return !Double.isNaN(courses.windAngle[i]) && !Double.isNaN(track.get(Quantity.SPEED, i));
    }

    private void settle(int[] instants, double angleQuantile, double speedQuantile) {
        angle = quantile(
                Arrays.stream(instants)
                        .mapToDouble(i -> Math.abs(courses.windAngle[i]))
                        .toArray(),
                angleQuantile);
        speed = quantile(
                Arrays.stream(instants)
                        .mapToDouble(i -> track.get(Quantity.SPEED, i))
                        .toArray(),
                speedQuantile);
    }

    private static double quantile(double[] values, double part) {
        Arrays.sort(values);
        return values[(int) Math.min(values.length - 1, part * values.length)];
    }
}
