package trimwright.layer;

import org.jspecify.annotations.Nullable;
import trimwright.panel.DisplacedFlow;

/**
 * All layers linearised about a state: change of stress, momentum thickness and speed at each station as linear functions of
 * the changes of displaced flow at all stations and of the stagnation points' places. Layers know only what lies upstream, so
 * one sweep down each path finds them; with displaced flow as the given quantity the sweep has no singular point where a layer
 * separates.
 *
 * <p>Columns: displaced flow by station, stagnation point by element, constant.
 */
final class Linearised {
    final double[][] stress;
    final double[][] theta;
    final double[][] speed;
    private final int columns;
    private final DisplacedFlow flow;
    private final LayerState state;
    private final Residuals residuals;

    Linearised(DisplacedFlow flow, LayerState state, Residuals residuals) {
        this.flow = flow;
        this.state = state;
        this.residuals = residuals;
        columns = flow.stations() + flow.elements() + 1;
        stress = new double[flow.stations()][columns];
        theta = new double[flow.stations()][columns];
        speed = new double[flow.stations()][columns];
    }

    int shiftColumn(int element) {
        return flow.stations() + element;
    }

    int constantColumn() {
        return columns - 1;
    }

    void sweep(int element, Path upper, Path lower) {
        side(element, upper);
        side(element, lower);
        wake(element, upper, lower);
    }

    private void side(int element, Path path) {
        Station b = later(path.station[0]);
        advance(residuals.first(b, Unknowns.distance(path.distance[0], path.shift)), null, element, path.station[0]);
        for (int i = 1; i < path.size(); i++) {
            Station a = b.asEarlier();
            b = later(path.station[i]);
            advance(residuals.interval(path, i, a, b), before(path.station[i - 1]), element, path.station[i]);
        }
    }

    private Station later(int station) {
        return Unknowns.station(state, station, Residuals.regime(state, station), residuals.reynolds(), Unknowns.LATER);
    }

    /** Changes at a station as rows: stress, momentum thickness, displaced flow, speed. */
    private double[][] before(int station) {
        double[] displaced = new double[columns];
        displaced[station] = 1;
        return new double[][] {stress[station], theta[station], displaced, speed[station]};
    }

    private void wake(int element, Path upper, Path lower) {
        WakeStart start = new WakeStart(state, upper.last(), lower.last(), residuals.reynolds());
        double[][] up = before(upper.last());
        double[][] low = before(lower.last());
        double[][] earlier = new double[4][columns];
        for (int j = 0; j < columns; j++) {
            for (int v = 0; v < 4; v++) {
                earlier[Unknowns.STRESS][j] += start.stressSlope[0][v] * up[v][j] + start.stressSlope[1][v] * low[v][j];
            }
            earlier[Unknowns.THETA][j] = up[Unknowns.THETA][j] + low[Unknowns.THETA][j];
            earlier[Unknowns.DISPLACED][j] = up[Unknowns.DISPLACED][j] + low[Unknowns.DISPLACED][j];
            earlier[Unknowns.SPEED][j] = 0.5 * (up[Unknowns.SPEED][j] + low[Unknowns.SPEED][j]);
        }
        // The wake's distances count from the upper side's, but do not move with the stagnation point: they enter as
        // differences and in the wake as a mere weight.
        double x = upper.distance[upper.size() - 1];
        Station a = Unknowns.station(
                Regime.WAKE, residuals.reynolds(), 0, start.stress, start.theta, start.displaced, start.speed);
        for (int w = 0; w < flow.wakeSteps(); w++) {
            int to = flow.wakeStation(element, w);
            Dual xa = Dual.constant(x);
            x += flow.wakeLength(element, w);
            Station b = Unknowns.station(state, to, Regime.WAKE, residuals.reynolds(), Unknowns.LATER);
            advance(Interval.turbulent(a, b, xa, Dual.constant(x)), earlier, element, to);
            earlier = before(to);
            a = b.asEarlier();
        }
    }

    /** Solves the interval's three equations for the later station's changes. */
    private void advance(Dual[] r, double @Nullable [][] earlier, int element, int to) {
        double[][] inverse = inverse(r);
        for (int i = 0; i < 3; i++) {
            double[] row = i == 0 ? stress[to] : i == 1 ? theta[to] : speed[to];
            for (int q = 0; q < 3; q++) {
                double weight = -inverse[i][q];
                row[constantColumn()] += weight * r[q].value;
                row[to] += weight * r[q].slope(Unknowns.LATER + Unknowns.DISPLACED);
                row[shiftColumn(element)] += weight * r[q].slope(Unknowns.SHIFT);
            }
            for (int v = 0; v < 4 && earlier != null; v++) {
                double weight = 0;
                for (int q = 0; q < 3; q++) {
                    weight -= inverse[i][q] * r[q].slope(v);
                }
                double[] from = earlier[v];
                for (int j = 0; j < columns; j++) {
                    row[j] += weight * from[j];
                }
            }
        }
    }

    private static double[][] inverse(Dual[] r) {
        double[][] inverse = new double[3][3];
        for (int column = 0; column < 3; column++) {
            double[][] rows = new double[3][];
            for (int q = 0; q < 3; q++) {
                rows[q] = new double[] {
                    r[q].slope(Unknowns.LATER + Unknowns.STRESS),
                    r[q].slope(Unknowns.LATER + Unknowns.THETA),
                    r[q].slope(Unknowns.LATER + Unknowns.SPEED),
                    q == column ? 1 : 0
                };
            }
            double[] solution = ThreeByThree.solve(rows);
            for (int i = 0; i < 3; i++) {
                inverse[i][column] = solution[i];
            }
        }
        return inverse;
    }
}
