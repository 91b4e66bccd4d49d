package trimwright.layer;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.panel.DisplacedFlow;
import trimwright.panel.IdealFlow;
import trimwright.panel.SourceResponse;
import trimwright.panel.SurfaceFlow;
import trimwright.profile.Contour;

/**
 * Flow with boundary layers about one or more elements: two-equation layers with lag of shear stress on all surfaces and in
 * the wakes, transition where waves have grown by a critical exponent, coupled to the ideal flow by the flow that the layers
 * displace.
 *
 * <p>Source: DRELA-GILES-1987. Left out: compressibility, confluence of wakes with the layers that they pass, forced
 * transition. Lengths of the contours are over the chord that the Reynolds number is on.
 */
public final class ViscousFlow {
    /** Exponent of the largest wave at transition in a quiet stream: the usual value (common practice). */
    public static final double QUIET = 9;

    /** Stations along a wake: more where it must follow another element's surface. Chosen. */
    private static final int WAKE_STEPS = 24;

    private static final int WAKE_STEPS_BESIDE_OTHERS = 40;

    /** Length of each wake, chosen: drag no longer changes. */
    private static final double WAKE_REACH = 1.0;

    private static final int MOST_STEPS = 60;

    /** Steps of Newton's method that an answer, or the lack of one, takes at most. */
    public static final int MOST_STEPS_IN_ALL = (1 + 2 + 4 + 7) * MOST_STEPS;

    /** Where a first guess fails the way begins so many steps of less load back. Chosen. */
    private static final double STEP = Math.toRadians(1.5);

    private static final int APPROACH_STEPS = 3;

    /** Reynolds number to come from where all else fails, and the largest step of its logarithm. Chosen. */
    private static final double MIDDLE = 1e6;

    private static final double RUNG = 0.4;

    private static final int MOST_RUNGS = 6;

    /** How much a step is held back, by attempt: little first, more where a section is stalled. Found by trial. */
    private static final double BOLD = 0.05;

    private static final double[] CAUTIONS = {BOLD, 0.15};

    private final SourceResponse response;
    private final double critical;
    private final int wakeSteps;

    /**
     * About these elements.
     *
     * @param critical exponent of the largest wave at transition (-): 9 in a quiet stream, less in a turbulent one
     * @throws trimwright.panel.NoFlowException if elements touch or cross
     */
    public ViscousFlow(List<Contour> contours, double critical) {
        response = new SourceResponse(contours);
        this.critical = critical;
        wakeSteps = contours.size() == 1 ? WAKE_STEPS : WAKE_STEPS_BESIDE_OTHERS;
    }

    public IdealFlow ideal() {
        return response.ideal();
    }

    /**
     * At one angle of attack. Newton's method takes at most 60 steps from a like state, then 60 from each of two guesses, then 60 at
     * each of four angles on the way from less load, then 60 at each of up to seven Reynolds numbers on the way from a million:
     * 840 in all, {@link #MOST_STEPS_IN_ALL}.
     *
     * @param alpha (rad)
     * @param reynolds on the length 1 (-), above 0
     * @param near an answer for a like state to start from, also of elements that differ in place only; or null
     */
    public ViscousAnswer at(double alpha, double reynolds, @Nullable ViscousPoint near) {
        DisplacedFlow flow = response.at(alpha, wakeSteps, WAKE_REACH);
        ViscousPoint point = near == null ? null : solve(flow, reynolds, near.state(), BOLD);
        for (double caution : CAUTIONS) {
            point = point == null ? solve(flow, reynolds, null, caution) : point;
        }
        point = point == null ? fromLessLoad(alpha, reynolds) : point;
        point = point == null ? fromMiddle(flow, reynolds) : point;
        return point != null ? point : new NoAgreement(alpha, reynolds);
    }

    /**
     * The same, tried from an answer for a like state alone: at most 60 steps tell that it does not lead there.
     *
     * @param alpha (rad)
     * @param reynolds on the length 1 (-), above 0
     */
    public ViscousAnswer follow(double alpha, double reynolds, ViscousPoint near) {
        ViscousPoint point = solve(response.at(alpha, wakeSteps, WAKE_REACH), reynolds, near.state(), BOLD);
        return point != null ? point : new NoAgreement(alpha, reynolds);
    }

    /** From an angle of less load, which is easier to begin with; null if that way leads nowhere. */
    private @Nullable ViscousPoint fromLessLoad(double alpha, double reynolds) {
        SurfaceFlow ideal = ideal().at(alpha);
        double load = 0;
        for (int k = 0; k < ideal.elements(); k++) {
            load += ideal.circulationLift(k);
        }
        double step = Math.copySign(STEP, load);
        ViscousPoint point = null;
        for (int i = APPROACH_STEPS; i >= 0; i--) {
            LayerState from = point == null ? null : point.state();
            point = solve(response.at(alpha - i * step, wakeSteps, WAKE_REACH), reynolds, from, BOLD);
            if (point == null) {
                return null;
            }
        }
        return point;
    }

    /** From a middling Reynolds number, at which bubbles are short and layers thin; null if that way leads nowhere. */
    private @Nullable ViscousPoint fromMiddle(DisplacedFlow flow, double reynolds) {
        double off = StrictMath.log(reynolds / MIDDLE);
        int rungs = Math.min(MOST_RUNGS, (int) Math.ceil(Math.abs(off) / RUNG));
        ViscousPoint point = null;
        for (int i = 0; i <= rungs; i++) {
            LayerState from = point == null ? null : point.state();
            double at = i == rungs ? reynolds : MIDDLE * StrictMath.exp(off * i / rungs);
            point = solve(flow, at, from, BOLD);
            if (point == null) {
                return null;
            }
        }
        return point;
    }

    /** From a state, or from a guess if null; null if there is no agreement. */
    private @Nullable ViscousPoint solve(
            DisplacedFlow flow, double reynolds, @Nullable LayerState from, double caution) {
        Residuals residuals = new Residuals(reynolds, critical);
        LayerState state = from == null ? new LayerMarch(flow, residuals).guess() : from;
        int steps = new Coupling(flow, residuals, caution).solve(state, MOST_STEPS);
        ViscousPoint point = steps > 0 ? new ViscousPoint(flow, state, residuals, steps) : null;
        return point != null && point.isFinite() ? point : null;
    }
}
