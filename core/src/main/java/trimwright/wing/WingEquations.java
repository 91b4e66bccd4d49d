package trimwright.wing;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** Finds the circulations of the strips that satisfy all their equations: from a neighbour, else from a guess, else from none. */
final class WingEquations {
    /**
     * Greatest force over dynamic pressure times area (-). A section's lift ends at 3.56 (NLR 7301 with slotted flap, the
     * saturated value of the closed form), a plate's normal force at 1.98 (Hoerner): together 4.07, and a tenth more, chosen,
     * for the speed that the wing's own flow adds. Deep in stall the equations have roots of several times that.
     */
    static final double MOST_FORCE = 4.5;

    private WingEquations() {}

    static WingAnswer solve(PlacedWing placed, StripAir air, WingSetting setting, @Nullable WingSolved start) {
        Wing wing = placed.wing();
        int n = wing.strips();
        if (air.strips() != n) {
            throw new IllegalArgumentException("air at " + air.strips() + " strips for a wing of " + n);
        }
        double[] trail = new double[3];
        double meanSpeed = trail(placed, air, trail);
        if (meanSpeed == 0) {
            return still(wing, setting);
        }
        if (trail[0] == 0 && trail[1] == 0 && trail[2] == 0) {
            return new WingNotSolved(WingNotSolved.Reason.NO_COMMON_WIND, 0);
        }
        Influence influence = influence(placed, trail, start);
        StripFlow flow = new StripFlow(wing, air, setting, influence);
        double scale = meanSpeed * wing.area() / wing.span();
        @Nullable WingAnswer answer = null;
        if (start != null && start.strips() == n) {
            System.arraycopy(start.circulations(), 0, flow.gamma, 0, n);
            flow.factors = start.flow() == null ? null : start.flow().factors;
            answer = search(flow, scale);
            flow.factors = answer instanceof WingSolved ? flow.factors : null;
        }
        if (!(answer instanceof WingSolved)) {
            StartingFlow.guess(flow);
            answer = search(flow, scale);
        }
        if (!(answer instanceof WingSolved)) {
            Arrays.fill(flow.gamma, 0);
            answer = search(flow, scale);
        }
        return answer;
    }

    /** From the circulations that the flow has; once more where end strips settled on the wrong side. */
    private static WingAnswer search(StripFlow flow, double scale) {
        int used = NewtonSearch.from(flow, scale);
        if (used >= 0 && StartingFlow.setEndsRight(flow)) {
            used = NewtonSearch.from(flow, scale);
        }
        if (used < 0) {
            return new WingNotSolved(WingNotSolved.Reason.NOT_CONVERGED, NewtonSearch.largest(flow.error) / scale);
        }
        flow.complete();
        WingSolved solved = WingLoads.of(flow, used);
        return isTooMuch(solved.force(), flow)
                ? new WingNotSolved(WingNotSolved.Reason.TOO_MUCH_FORCE, NewtonSearch.largest(flow.error) / scale)
                : solved;
    }

    private static boolean isTooMuch(WingForce force, StripFlow flow) {
        double sum = 0;
        for (int i = 0; i < flow.n; i++) {
            double ax = flow.air.x(i);
            double ay = flow.air.y(i);
            sum += (ax * ax + ay * ay) * flow.wing.stripChord(i) * flow.wing.stripWidth(i);
        }
        double most = MOST_FORCE * 0.5 * flow.air.state().density() * sum;
        return !(force.x() * force.x() + force.y() * force.y() <= most * most);
    }

    /** The start's, where neither wing nor wakes moved since: a new one costs as much as the rest of a warm solve. */
    private static Influence influence(PlacedWing placed, double[] trail, @Nullable WingSolved start) {
        StripFlow known = start == null ? null : start.flow();
        return known != null && known.influence.serves(placed, trail) ? known.influence : Influence.of(placed, trail);
    }

    /**
     * Mean direction of the air parallel to the sea, weighted with strip areas; returns the mean speed, zero in still air.
     * Leaves zeros where there is speed but no common direction.
     */
    private static double trail(PlacedWing placed, StripAir air, double[] trail) {
        Wing wing = placed.wing();
        double sum = 0;
        double weight = 0;
        for (int i = 0; i < wing.strips(); i++) {
            double area = wing.stripChord(i) * wing.stripWidth(i);
            trail[0] += area * air.x(i);
            trail[1] += area * air.y(i);
            trail[2] += area * air.z(i);
            sum += area * Math.sqrt(air.x(i) * air.x(i) + air.y(i) * air.y(i));
            weight += area;
        }
        double meanSpeed = sum / weight;
        double downY = StrictMath.sin(placed.heel());
        double downZ = StrictMath.cos(placed.heel());
        double down = placed.hasSea() ? trail[1] * downY + trail[2] * downZ : 0;
        trail[1] -= down * downY;
        trail[2] -= down * downZ;
        double size = Math.sqrt(trail[0] * trail[0] + trail[1] * trail[1] + trail[2] * trail[2]);
        boolean common = size > 1e-3 * sum;
        for (int k = 0; k < 3; k++) {
            trail[k] = common ? trail[k] / size : 0;
        }
        return meanSpeed < 1e-6 ? 0 : meanSpeed;
    }

    private static WingSolved still(Wing wing, WingSetting setting) {
        int n = wing.strips();
        double[] flap = new double[n];
        double[] margin = new double[n];
        for (int i = 0; i < n; i++) {
            flap[i] = setting.flapAngle(wing.flapShare(i));
            margin[i] = Math.PI;
        }
        double[] none = new double[n];
        return new WingSolved(wing, null, WingForce.NONE, 0, 0, 0, 0, new double[n], flap, none, none, margin, none);
    }
}
