package trimwright.layer;

import org.jspecify.annotations.Nullable;
import trimwright.panel.DisplacedFlow;
import trimwright.panel.SourceResponse;
import trimwright.panel.SurfaceFlow;

/** The ways to one answer, tried one after the other; counts the steps of Newton's method that all of them took. */
final class Approach {
    /** Length of each wake, chosen: drag no longer changes. */
    private static final double WAKE_REACH = 1.0;

    /** Steps of Newton's method from one beginning. */
    private static final int MOST_STEPS = 60;

    /** Where a first guess fails the way begins so many steps of less load back. Chosen. */
    private static final double STEP = Math.toRadians(1.5);

    private static final int APPROACH_STEPS = 3;

    /** Reynolds number to come from where all else fails, and the largest step of its logarithm. Chosen. */
    private static final double MIDDLE = 1e6;

    private static final double RUNG = 0.4;

    private static final int MOST_RUNGS = 6;

    /** How much a step is held back, by attempt: little first, more where a section is stalled. Found by trial. */
    private static final double BOLD = 0.05;

    private static final double CAREFUL = 0.15;

    /** Steps in all: from a like state in two forms, from two guesses, at the angles and the Reynolds numbers of the two ways. */
    static final int MOST_STEPS_IN_ALL = (2 + 2 + APPROACH_STEPS + 1 + MOST_RUNGS + 1) * MOST_STEPS;

    private final SourceResponse response;
    private final int wakeSteps;
    private final double critical;
    private final double alpha;
    private final double reynolds;
    private final DisplacedFlow flow;
    private int steps;

    Approach(SourceResponse response, int wakeSteps, double critical, double alpha, double reynolds) {
        this.response = response;
        this.wakeSteps = wakeSteps;
        this.critical = critical;
        this.alpha = alpha;
        this.reynolds = reynolds;
        flow = response.at(alpha, wakeSteps, WAKE_REACH);
    }

    /** From an answer for a like state alone: with speeds changed as the ideal flow changes, else as it is. */
    ViscousAnswer from(ViscousPoint near) {
        ViscousPoint point = solve(flow, reynolds, near.stateUnder(flow), BOLD);
        return answer(point == null ? solve(flow, reynolds, near.state(), BOLD) : point);
    }

    /** From wherever there is a way. */
    ViscousAnswer fromAnywhere() {
        ViscousPoint point = solve(flow, reynolds, null, BOLD);
        point = point == null ? solve(flow, reynolds, null, CAREFUL) : point;
        point = point == null ? fromLessLoad() : point;
        return answer(point == null ? fromMiddle() : point);
    }

    private ViscousAnswer answer(@Nullable ViscousPoint point) {
        return point != null ? point : new NoAgreement(alpha, reynolds, steps);
    }

    /** From an angle of less load, which is easier to begin with; null if that way leads nowhere. */
    private @Nullable ViscousPoint fromLessLoad() {
        SurfaceFlow ideal = response.ideal().at(alpha);
        double load = 0;
        for (int k = 0; k < ideal.elements(); k++) {
            load += ideal.circulationLift(k);
        }
        double step = Math.copySign(STEP, load);
        ViscousPoint point = null;
        for (int i = APPROACH_STEPS; i >= 0; i--) {
            LayerState from = point == null ? null : point.state();
            DisplacedFlow at = i == 0 ? flow : response.at(alpha - i * step, wakeSteps, WAKE_REACH);
            point = solve(at, reynolds, from, BOLD);
            if (point == null) {
                return null;
            }
        }
        return point;
    }

    /** From a middling Reynolds number, at which bubbles are short and layers thin; null if that way leads nowhere. */
    private @Nullable ViscousPoint fromMiddle() {
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
            DisplacedFlow outer, double number, @Nullable LayerState from, double caution) {
        Residuals residuals = new Residuals(number, critical);
        LayerState state = from == null ? new LayerMarch(outer, residuals).guess() : from;
        Coupling coupling = new Coupling(outer, residuals, caution);
        boolean arrived = coupling.solve(state, MOST_STEPS);
        steps += coupling.steps();
        ViscousPoint point = arrived ? new ViscousPoint(outer, state, residuals, steps) : null;
        return point != null && point.isFinite() ? point : null;
    }
}
