package trimwright.segment;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.course.CourseLeg;

/**
 * How one boat went round the course.
 *
 * @param start how it started; null where it never crossed the line, or the gun lies outside the session
 * @param legs those that it sailed, in order; the last may not have come to its end
 */
public record SailedCourse(@Nullable Start start, List<SailedLeg> legs) {
    public SailedCourse {
        legs = List.copyOf(legs);
    }

    /**
     * One leg from line to line.
     *
     * @param isEnded whether the boat came to its end; else the span goes on to the end of the session
     */
    public record SailedLeg(CourseLeg leg, Span span, boolean isEnded) {}

    /**
     * The start.
     *
     * @param gun instant of the start signal
     * @param crossed from the gun to the bow's crossing of the line (s)
     * @param isEarly whether the bow was over the line at the gun; if so, {@code crossed} is when it came back and
     *     started, or 0 where it did not
     * @param distance of the bow to the line at the gun (m), negative beyond it
     * @param speed at the gun (m/s), mean of a second
     * @param share of the line from its port end where it was crossed (-)
     */
    public record Start(int gun, double crossed, boolean isEarly, double distance, double speed, double share) {}
}
