package trimwright.layer;

import trimwright.panel.DisplacedFlow;
import trimwright.panel.SurfaceFlow;

/** Flow with boundary layers at one angle of attack: forces over dynamic pressure, and the layers along the surfaces. */
public final class ViscousPoint implements ViscousAnswer {
    private final DisplacedFlow flow;
    private final LayerState state;
    private final Residuals residuals;
    private final SurfaceFlow surface;
    private final int steps;

    ViscousPoint(DisplacedFlow flow, LayerState state, Residuals residuals, int steps) {
        this.flow = flow;
        this.state = state;
        this.residuals = residuals;
        this.steps = steps;
        double[] speeds = new double[flow.stations()];
        for (int k = 0; k < flow.elements(); k++) {
            for (int i = flow.firstStation(k); i <= flow.lastStation(k); i++) {
                speeds[i] = i <= state.stagnation[k] ? -state.speed[i] : state.speed[i];
            }
        }
        surface = flow.surface(speeds);
    }

    /** Copy of the unknowns, to start a like computation from. */
    LayerState state() {
        return state.copy();
    }

    /** Steps of Newton's method that it took. */
    public int steps() {
        return steps;
    }

    /** Pressures and their forces. */
    public SurfaceFlow surface() {
        return surface;
    }

    /** Lift of all elements. */
    public double lift() {
        double sum = 0;
        for (int k = 0; k < flow.elements(); k++) {
            sum += surface.pressureLift(k);
        }
        return sum;
    }

    /** Drag of all elements, from the momentum that their wakes lack far downstream (Squire and Young). */
    public double drag() {
        double sum = 0;
        for (int k = 0; k < flow.elements(); k++) {
            int end = flow.wakeStation(k, flow.wakeSteps() - 1);
            sum += 2 * state.theta[end] * Math.pow(state.speed[end], 0.5 * (5 + state.shape(end)));
        }
        return sum;
    }

    /** Shape factor (-) at a point of an element. */
    public double shape(int element, int point) {
        return state.shape(flow.firstStation(element) + point);
    }

    /** Number of the point on the upper side behind which an element's layer is turbulent; 0: laminar to the end. */
    public int upperTransition(int element) {
        int i = state.stagnation[element];
        while (i > flow.firstStation(element) && !state.turbulent[i]) {
            i--;
        }
        return i - flow.firstStation(element);
    }

    double reynolds() {
        return residuals.reynolds();
    }
}
