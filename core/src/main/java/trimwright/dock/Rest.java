package trimwright.dock;

import org.jspecify.annotations.Nullable;
import trimwright.track.Paths;
import trimwright.units.Angles;
import trimwright.units.Circular;
import trimwright.units.Units;

/** Whether the boat lay at rest, by her speed and heading. */
final class Rest {
    /** Mean speed of ten seconds above which she moves (m/s): chosen, above the noise of a satellite receiver. */
    private static final double MOVING = Units.fromKnots(1.5);

    /** Way from the mean heading of the first step above which she turned (rad): chosen, what fenders and lines allow. */
    private static final double TURNED = Math.toRadians(15);

    private static final double SPAN = 10;

    private Rest() {}

    /** Why nothing can be checked; null where she lay at rest. */
    static DockAnswer.@Nullable Refused refusal(Samples samples, double seconds) {
        if (seconds < DockStep.STILL.end()) {
            return new DockAnswer.Refused(DockAnswer.Reason.TOO_SHORT, seconds, seconds);
        }
        Window overGround = samples.of(Paths.SOG);
        Window speed = overGround.isHeard() ? overGround : samples.of(Paths.STW);
        Window trueHeading = samples.of(Paths.HEADING);
        Window heading = trueHeading.isHeard() ? trueHeading : samples.of(Paths.HEADING_MAGNETIC);
        if (!speed.isHeard()) {
            return new DockAnswer.Refused(DockAnswer.Reason.NOT_KNOWN, 0, Double.NaN);
        }
        double first = mean(heading.between(0, DockStep.STILL.end()));
        for (double at = 0; at < seconds; at += SPAN) {
            Window span = speed.between(at, at + SPAN);
            if (span.isHeard() && span.number().mean() > MOVING) {
                return new DockAnswer.Refused(
                        DockAnswer.Reason.MOVING, at, span.number().mean());
            }
            double turned = Math.abs(Angles.difference(mean(heading.between(at, at + SPAN)), first));
            if (turned > TURNED) {
                return new DockAnswer.Refused(DockAnswer.Reason.TURNING, at, turned);
            }
        }
        return null;
    }

    private static double mean(Window angles) {
        double[] values = new double[angles.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = angles.get(i);
        }
        return Circular.mean(values, 0, values.length);
    }
}
