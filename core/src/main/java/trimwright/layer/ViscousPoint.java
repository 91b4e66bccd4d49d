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
                speeds[i] = isUpper(i) ? -state.speed[i] : state.speed[i];
            }
        }
        surface = flow.surface(speeds);
    }

    /** Whether the flow at a station runs against the order of points. */
    private boolean isUpper(int station) {
        for (int k = 0; k < flow.elements(); k++) {
            if (station >= flow.firstStation(k) && station <= flow.lastStation(k)) {
                return station <= state.stagnation[k];
            }
        }
        return false;
    }

    /** Whether the method arrived at numbers. */
    boolean isFinite() {
        return Math.abs(lift()) < Double.POSITIVE_INFINITY && drag() < Double.POSITIVE_INFINITY;
    }

    /** Copy of the unknowns, to start a like computation from. */
    LayerState state() {
        return state.copy();
    }

    /** The unknowns with the speeds changed as the ideal flow changes, to start another angle of attack of the same elements from. */
    LayerState stateUnder(DisplacedFlow other) {
        LayerState changed = state.copy();
        for (int i = 0; i < flow.stations(); i++) {
            double more = other.idealSpeed(i) - flow.idealSpeed(i);
            changed.quicken(i, isUpper(i) ? -more : more);
        }
        Stagnation.move(other, changed);
        return changed;
    }

    /** Steps of Newton's method that it took, those on ways that led nowhere too. */
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
            sum += 2 * state.theta[end] * StrictMath.pow(state.speed[end], 0.5 * (5 + state.shape(end)));
        }
        return sum;
    }

    /** Place (x) where a layer becomes turbulent; the trailing edge's where it stays laminar. */
    public double transition(int element, LayerSide side) {
        Path path = path(element, side);
        for (int i = 1; i < path.size(); i++) {
            if (state.turbulent[path.station[i]]) {
                int at = path.station[i - 1];
                int to = path.station[i];
                double share = Transition.share(
                        Unknowns.given(state, at, Regime.LAMINAR, residuals.reynolds()),
                        Unknowns.given(state, to, Regime.TURBULENT, residuals.reynolds()),
                        Dual.constant(path.distance[i - 1]),
                        Dual.constant(path.distance[i]),
                        residuals);
                return flow.x(at) + share * (flow.x(to) - flow.x(at));
            }
        }
        return flow.x(path.last());
    }

    /** Place (x) from which a turbulent layer has no friction up to the trailing edge; the trailing edge's if it has. */
    public double separation(int element, LayerSide side) {
        Path path = path(element, side);
        int i = path.size() - 1;
        while (i > 0 && state.turbulent[path.station[i]] && friction(path.station[i]) <= 0) {
            i--;
        }
        return flow.x(path.station[Math.min(i + 1, path.size() - 1)]);
    }

    private double friction(int station) {
        return Unknowns.given(state, station, Residuals.regime(state, station), residuals.reynolds())
                .friction()
                .value;
    }

    private Path path(int element, LayerSide side) {
        return side == LayerSide.UPPER ? Path.upper(flow, state, element) : Path.lower(flow, state, element);
    }
}
