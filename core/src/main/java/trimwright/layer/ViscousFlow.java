package trimwright.layer;

import java.util.List;
import org.jspecify.annotations.Nullable;
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

    /** Steps of Newton's method that an answer, or the lack of one, takes at most. */
    public static final int MOST_STEPS = Approach.MOST_STEPS_IN_ALL;

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
     * At one angle of attack. Newton's method takes at most 60 steps from each of two forms of a like state, then 60 from each of two guesses, then 60 at
     * each of four angles on the way from less load, then 60 at each of up to seven Reynolds numbers on the way from a million:
     * {@link #MOST_STEPS} in all.
     *
     * @param alpha (rad)
     * @param reynolds on the length 1 (-), above 0
     * @param near an answer for a like state to start from, also of elements that differ in place only; or null
     */
    public ViscousAnswer at(double alpha, double reynolds, @Nullable ViscousPoint near) {
        Approach approach = approach(alpha, reynolds);
        ViscousAnswer answer = near == null ? null : approach.from(near);
        return answer instanceof ViscousPoint ? answer : approach.fromAnywhere();
    }

    /**
     * The same, tried from an answer for a like state alone: at most 120 steps tell that it does not lead there.
     *
     * @param alpha (rad)
     * @param reynolds on the length 1 (-), above 0
     */
    public ViscousAnswer follow(double alpha, double reynolds, ViscousPoint near) {
        return approach(alpha, reynolds).from(near);
    }

    private Approach approach(double alpha, double reynolds) {
        return new Approach(response, wakeSteps, critical, alpha, reynolds);
    }
}
