package trimwright.polar;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.layer.ViscousFlow;
import trimwright.layer.ViscousPoint;
import trimwright.profile.Contour;
import trimwright.section.Plate;

/**
 * What becomes of computed flow past its stall, any angle of attack: lift, drag and moment of stall go over to those of a separated
 * plate from the first nose to the last trailing edge, from 4 to 40 degrees past stall (chosen, as sections in closed form and from
 * tables do).
 *
 * <p>Sources: {@link Plate}, of endless span. How lift breaks at stall is not in it.
 */
public final class PastStall {
    private static final double FALL_BEGIN = Math.toRadians(4);
    private static final double FALL_WIDTH = Math.toRadians(36);

    private final double nose;
    private final ViscousPoint low;
    private final ViscousPoint high;
    private final double lowAngle;
    private final double highAngle;
    private final double friction;
    private final double length;
    private final double tilt;

    /**
     * Coefficients on the length 1.
     *
     * @param lift across the stream (-)
     * @param drag along it (-)
     * @param moment about a quarter of the length 1 behind the first nose (-), positive nose up
     */
    public record Coefficients(double lift, double drag, double moment) {}

    private PastStall(List<Contour> elements, FlowRange range, double lowAngle, double highAngle) {
        this.lowAngle = lowAngle;
        this.highAngle = highAngle;
        low = range.known(lowAngle);
        high = range.known(highAngle);
        // The least drag that attached flow has stands for a plate's friction (chosen).
        friction = range.answers(lowAngle, highAngle).values().stream()
                .mapToDouble(ViscousPoint::drag)
                .min()
                .orElse(0);
        Contour first = elements.get(0);
        int foremost = 0;
        for (int i = 1; i < first.points(); i++) {
            foremost = first.x(i) < first.x(foremost) ? i : foremost;
        }
        nose = first.x(foremost);
        Contour last = elements.get(elements.size() - 1);
        double along = last.x(0) - nose;
        double across = first.y(foremost) - last.y(0);
        length = Math.sqrt(along * along + across * across);
        tilt = StrictMath.atan2(across, along);
    }

    /** Between the two angles of most lift that the layers have; null if no flow is found about these elements. */
    public static @Nullable PastStall of(List<Contour> elements, ViscousFlow flow, double reynolds) {
        FlowRange range = new FlowRange(flow, reynolds);
        if (!range.begin(0)) {
            return null;
        }
        double high = range.toStall(1, Double.POSITIVE_INFINITY);
        double low = range.toStall(-1, Double.POSITIVE_INFINITY);
        return new PastStall(elements, range, low, high);
    }

    /** Coefficients at an angle of attack (rad, -pi to pi); null before stall. */
    public @Nullable Coefficients at(double alpha) {
        double past = alpha > highAngle ? alpha - highAngle : lowAngle - alpha;
        if (past <= 0) {
            return null;
        }
        ViscousPoint stall = alpha > highAngle ? high : low;
        double x = Math.max(0, Math.min(1, (past - FALL_BEGIN) / FALL_WIDTH));
        double share = x * x * x * (10 + x * (6 * x - 15));
        double a = alpha + tilt;
        double normal = length * Plate.normalForce(a);
        double behind = length * Plate.centreOfPressure(a) - 0.25;
        double moment = 0;
        for (int k = 0; k < stall.surface().elements(); k++) {
            moment += stall.surface().moment(k, nose + 0.25, 0);
        }
        return new Coefficients(
                stall.lift() + share * (normal * StrictMath.cos(a) - stall.lift()),
                stall.drag() + share * (normal * StrictMath.sin(a) + friction - stall.drag()),
                moment + share * (-behind * normal - moment));
    }
}
