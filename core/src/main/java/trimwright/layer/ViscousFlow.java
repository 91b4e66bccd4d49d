package trimwright.layer;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.panel.DisplacedFlow;
import trimwright.panel.IdealFlow;
import trimwright.panel.SourceResponse;
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
     * At one angle of attack.
     *
     * @param alpha (rad)
     * @param reynolds on the length 1 (-), above 0
     * @param near an answer for a like state to start from, or null
     */
    public ViscousAnswer at(double alpha, double reynolds, @Nullable ViscousPoint near) {
        DisplacedFlow flow = response.at(alpha, wakeSteps, WAKE_REACH);
        Residuals residuals = new Residuals(reynolds, critical);
        Coupling coupling = new Coupling(flow, residuals);
        if (near != null) {
            LayerState state = near.state();
            int steps = coupling.solve(state, MOST_STEPS);
            if (steps > 0) {
                return new ViscousPoint(flow, state, residuals, steps);
            }
        }
        LayerState state = new LayerMarch(flow, residuals).guess();
        int steps = coupling.solve(state, MOST_STEPS);
        return steps > 0
                ? new ViscousPoint(flow, state, residuals, steps)
                : new NoAgreement(alpha, reynolds, MOST_STEPS);
    }
}
