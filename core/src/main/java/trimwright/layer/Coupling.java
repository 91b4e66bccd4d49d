package trimwright.layer;

import java.util.Arrays;
import trimwright.panel.DenseLu;
import trimwright.panel.DisplacedFlow;
import trimwright.panel.NoFlowException;

/**
 * Newton's method on layers and outer flow together: the speed that the layers ask for is the speed that the outer flow gives
 * for the flow they displace.
 */
final class Coupling {
    /** Root mean square of the relative changes at which the method has arrived. */
    private static final double ARRIVED = 1e-5;

    /** Shape factor of stagnation flow by the laws of the laminar layer. */
    private static final double STAGNATION_SHAPE = 2.24;

    private static final double LEAST_WALL_SHAPE = 1.02;
    private static final double LEAST_WAKE_SHAPE = 1.0005;

    /** Speed below which a station is next to a stagnation point: its shape factor is that of stagnation flow. Chosen. */
    private static final double NEARLY_AT_REST = 0.02;

    /** Largest relative growth and fall of a thickness in one step, chosen. */
    private static final double MOST_GROWTH = 1.5;

    private static final double MOST_FALL = -0.5;

    /** Steps after which only a part of each is taken: where transition hops to and fro between two panels. Chosen. */
    private static final int PATIENCE = 15;

    /** Steps of which less than this share could be taken, and how many of them mean that there is no way. Chosen. */
    private static final double TINY = 0.02;

    private static final int MOST_TINY = 12;

    private final DisplacedFlow flow;
    private final Residuals residuals;
    private final WaveFollower waves;
    private int tiny;

    Coupling(DisplacedFlow flow, Residuals residuals) {
        this.flow = flow;
        this.residuals = residuals;
        waves = new WaveFollower(residuals);
    }

    /**
     * Brings a state to agreement, in place.
     *
     * @return number of steps taken, or -1 if it did not arrive within {@code most}
     */
    int solve(LayerState state, int most) {
        for (int step = 1; step <= most; step++) {
            double change = step(state, step > PATIENCE ? 0.6 : 1);
            if (!(change < Double.POSITIVE_INFINITY)) {
                return -1;
            }
            if (change < ARRIVED) {
                return step;
            }
        }
        return -1;
    }

    /** One step; root mean square of the relative changes asked for, infinite if there was none to take. */
    private double step(LayerState state, double boldness) {
        Linearised layers = new Linearised(flow, state, residuals);
        int n = flow.stations();
        int size = n + flow.elements();
        double[] sign = new double[n];
        Arrays.fill(sign, 1);
        double[][] matrix = new double[size][size];
        double[] right = new double[size];
        for (int k = 0; k < flow.elements(); k++) {
            Path upper = Path.upper(flow, state, k);
            Path lower = Path.lower(flow, state, k);
            waves.follow(state, upper);
            waves.follow(state, lower);
            for (int station : upper.station) {
                sign[station] = -1;
            }
            layers.sweep(k, upper, lower);
            stagnationRow(state, layers, k, matrix, right);
        }
        double[] displaced = new double[n];
        for (int i = 0; i < n; i++) {
            displaced[i] = sign[i] * state.displaced[i];
        }
        for (int i = 0; i < n; i++) {
            double[] row = matrix[i];
            for (int j = 0; j < size; j++) {
                row[j] = layers.speed[i][j] - (j < n ? sign[i] * flow.response(i, j) * sign[j] : 0);
            }
            right[i] = sign[i] * flow.speed(i, displaced) - state.speed[i] - layers.speed[i][layers.constantColumn()];
        }
        double[] change;
        try {
            change = new DenseLu(matrix).solve(right);
        } catch (NoFlowException e) {
            return Double.POSITIVE_INFINITY;
        }
        return apply(state, layers, change, boldness);
    }

    /** The stagnation point moves with the speeds of its two neighbours. */
    private void stagnationRow(LayerState state, Linearised layers, int k, double[][] matrix, double[] right) {
        int a = state.stagnation[k];
        int b = a + 1;
        double sum = state.speed[a] + state.speed[b];
        double byA = flow.panelLength(a) * state.speed[b] / (sum * sum);
        double byB = -flow.panelLength(a) * state.speed[a] / (sum * sum);
        int row = layers.shiftColumn(k);
        for (int j = 0; j < matrix.length; j++) {
            matrix[row][j] = -byA * layers.speed[a][j] - byB * layers.speed[b][j];
        }
        matrix[row][row] += 1;
        right[row] = byA * layers.speed[a][layers.constantColumn()] + byB * layers.speed[b][layers.constantColumn()];
    }

    private double apply(LayerState state, Linearised layers, double[] change, double boldness) {
        int n = flow.stations();
        double[] stress = new double[n];
        double[] theta = new double[n];
        double[] speed = new double[n];
        double sum = 0;
        double relax = boldness;
        for (int i = 0; i < n; i++) {
            stress[i] = total(layers.stress[i], change);
            theta[i] = total(layers.theta[i], change);
            speed[i] = total(layers.speed[i], change);
            double byStress = state.turbulent[i] ? stress[i] / state.stress[i] : 0;
            double byTheta = theta[i] / state.theta[i];
            double bySpeed = speed[i] / 0.25;
            double byThickness = relativeThickness(state, i, change[i], speed[i]);
            relax = limited(relax, byStress);
            relax = limited(relax, byTheta);
            relax = limited(relax, byThickness);
            relax = limited(relax, bySpeed);
            sum += byStress * byStress + byTheta * byTheta + byThickness * byThickness + bySpeed * bySpeed;
        }
        tiny += relax < TINY ? 1 : 0;
        if (!(sum < Double.POSITIVE_INFINITY) || tiny > MOST_TINY) {
            return Double.POSITIVE_INFINITY;
        }
        for (int i = 0; i < n; i++) {
            double thickness = state.displacement(i);
            double byThickness = relativeThickness(state, i, change[i], speed[i]);
            state.stress[i] = state.turbulent[i]
                    ? Math.min(0.3, Math.max(1e-5, state.stress[i] + relax * stress[i]))
                    : state.stress[i];
            state.theta[i] += relax * theta[i];
            state.speed[i] += relax * speed[i];
            thickness *= 1 + relax * byThickness;
            boolean wake = i > flow.lastStation(flow.elements() - 1);
            double least = wake ? LEAST_WAKE_SHAPE : LEAST_WALL_SHAPE;
            state.displaced[i] = Math.max(thickness, least * state.theta[i]) * state.speed[i];
        }
        for (int k = 0; k < flow.elements(); k++) {
            moveStagnation(state, k);
        }
        return Math.sqrt(sum / n);
    }

    /** Relative change of displacement thickness; none where the speed is next to nothing and says nothing about it. */
    private static double relativeThickness(LayerState state, int i, double displaced, double speed) {
        return state.speed[i] < NEARLY_AT_REST ? 0 : displaced / state.displaced[i] - speed / state.speed[i];
    }

    private static double total(double[] row, double[] change) {
        double sum = row[row.length - 1];
        for (int j = 0; j < change.length; j++) {
            sum += row[j] * change[j];
        }
        return sum;
    }

    private static double limited(double relax, double change) {
        return relax * change > MOST_GROWTH
                ? MOST_GROWTH / change
                : relax * change < MOST_FALL ? MOST_FALL / change : relax;
    }

    /** Nodes whose flow has turned change sides. */
    private void moveStagnation(LayerState state, int k) {
        int first = flow.firstStation(k);
        int last = flow.lastStation(k);
        int before = state.stagnation[k];
        while (before > first + 2 && state.speed[before] <= 0) {
            turn(state, before, before + 1);
            before--;
        }
        while (before < last - 3 && state.speed[before + 1] <= 0) {
            before++;
            turn(state, before, before - 1);
        }
        state.stagnation[k] = before;
        for (int i = first; i <= last; i++) {
            state.speed[i] = Math.max(state.speed[i], 1e-7);
            double least = LEAST_WALL_SHAPE * state.theta[i] * state.speed[i];
            state.displaced[i] = Math.max(state.displaced[i], least);
            if (state.speed[i] < NEARLY_AT_REST) {
                state.displaced[i] = STAGNATION_SHAPE * state.theta[i] * state.speed[i];
            }
        }
    }

    private static void turn(LayerState state, int node, int neighbour) {
        state.speed[node] = Math.max(1e-7, -state.speed[node]);
        state.theta[node] = state.theta[neighbour];
        state.displaced[node] = STAGNATION_SHAPE * state.theta[node] * state.speed[node];
        state.turbulent[node] = false;
        state.stress[node] = 0;
    }
}
