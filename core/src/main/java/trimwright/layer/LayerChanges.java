package trimwright.layer;

import trimwright.panel.DisplacedFlow;

/**
 * All layers linearised about a state: changes at each station as linear functions of the changes of displaced flow at the stations
 * upstream and of the stagnation point's place. With displaced flow as the given quantity nothing is singular where a layer
 * separates.
 *
 * <p>Columns: displaced flow by station, stagnation point by element.
 */
final class LayerChanges {
    private final DisplacedFlow flow;
    private final LayerSweep sweep;
    private final int columns;

    LayerChanges(DisplacedFlow flow, LayerSweep sweep) {
        this.flow = flow;
        this.sweep = sweep;
        columns = flow.stations() + flow.elements();
    }

    int shiftColumn(int element) {
        return flow.stations() + element;
    }

    /**
     * Adds the change of speed at each station to the equations for them.
     *
     * @param matrix row by station
     */
    void addSpeeds(double[][] matrix) {
        for (int k = 0; k < flow.elements(); k++) {
            double[][] up = side(k, sweep.upper[k], matrix);
            double[][] low = side(k, sweep.lower[k], matrix);
            wake(k, up, low, matrix);
        }
    }

    /** Rows of stress, momentum thickness and speed at the end of a side. */
    private double[][] side(int element, Path path, double[][] matrix) {
        double[][] at = new double[3][columns];
        double[][] next = new double[3][columns];
        for (int i = 0; i < path.size(); i++) {
            int to = path.station[i];
            StationChange change = sweep.change[to];
            if (i > 0) {
                int before = path.station[i - 1];
                int low = Math.min(path.station[0], to);
                int high = Math.max(path.station[0], to);
                combine(change, at, next, low, high + 1);
                combine(change, at, next, shiftColumn(element), shiftColumn(element) + 1);
                addDisplaced(change, next, before);
            }
            own(change, next, to, element);
            add(next[StationChange.SPEED], to, Math.min(path.station[0], to), Math.max(path.station[0], to), matrix);
            close(next[StationChange.SPEED], to, element, matrix);
            double[][] swap = at;
            at = next;
            next = swap;
        }
        return at;
    }

    private void wake(int element, double[][] up, double[][] low, double[][] matrix) {
        WakeStart start = sweep.start[element];
        double[][] at = new double[3][columns];
        int upperEnd = sweep.upper[element].last();
        int lowerEnd = sweep.lower[element].last();
        for (int j = 0; j < columns; j++) {
            for (int side = 0; side < 2; side++) {
                double[][] from = side == 0 ? up : low;
                double[] slope = start.stressSlope[side];
                at[StationChange.STRESS][j] += slope[Unknowns.STRESS] * from[StationChange.STRESS][j]
                        + slope[Unknowns.THETA] * from[StationChange.THETA][j]
                        + slope[Unknowns.SPEED] * from[StationChange.SPEED][j];
                at[StationChange.THETA][j] += from[StationChange.THETA][j];
                at[StationChange.SPEED][j] += 0.5 * from[StationChange.SPEED][j];
            }
        }
        at[StationChange.STRESS][upperEnd] += start.stressSlope[0][Unknowns.DISPLACED];
        at[StationChange.STRESS][lowerEnd] += start.stressSlope[1][Unknowns.DISPLACED];
        double[][] next = new double[3][columns];
        int first = flow.firstStation(element);
        int last = flow.lastStation(element);
        int begin = flow.wakeStation(element, 0);
        for (int w = 0; w < flow.wakeSteps(); w++) {
            int to = begin + w;
            StationChange change = sweep.change[to];
            combine(change, at, next, first, last + 1);
            combine(change, at, next, begin, to + 1);
            combine(change, at, next, shiftColumn(element), shiftColumn(element) + 1);
            if (w == 0) {
                addDisplaced(change, next, upperEnd);
                addDisplaced(change, next, lowerEnd);
            } else {
                addDisplaced(change, next, to - 1);
            }
            own(change, next, to, element);
            add(next[StationChange.SPEED], to, first, last, matrix);
            add(next[StationChange.SPEED], to, begin, to, matrix);
            close(next[StationChange.SPEED], to, element, matrix);
            double[][] swap = at;
            at = next;
            next = swap;
        }
    }

    private static void combine(StationChange change, double[][] at, double[][] next, int from, int to) {
        double[] stress = at[StationChange.STRESS];
        double[] theta = at[StationChange.THETA];
        double[] speed = at[StationChange.SPEED];
        for (int i = 0; i < 3; i++) {
            double a = change.earlier[i][Unknowns.STRESS];
            double b = change.earlier[i][Unknowns.THETA];
            double c = change.earlier[i][Unknowns.SPEED];
            double[] row = next[i];
            for (int j = from; j < to; j++) {
                row[j] = a * stress[j] + b * theta[j] + c * speed[j];
            }
        }
    }

    private static void addDisplaced(StationChange change, double[][] rows, int before) {
        for (int i = 0; i < 3; i++) {
            rows[i][before] += change.earlier[i][Unknowns.DISPLACED];
        }
    }

    private void own(StationChange change, double[][] rows, int to, int element) {
        for (int i = 0; i < 3; i++) {
            rows[i][to] += change.displaced[i];
            rows[i][shiftColumn(element)] += change.shift[i];
        }
    }

    private static void add(double[] row, int station, int first, int last, double[][] matrix) {
        double[] into = matrix[station];
        for (int j = first; j <= last; j++) {
            into[j] += row[j];
        }
    }

    private void close(double[] row, int station, int element, double[][] matrix) {
        matrix[station][shiftColumn(element)] += row[shiftColumn(element)];
    }

    /**
     * Changes at all stations.
     *
     * @param change of displaced flow by station, then of the stagnation point by element
     * @return stress, momentum thickness, speed, each by station
     */
    double[][] follow(double[] change) {
        double[][] all = new double[3][flow.stations()];
        for (int k = 0; k < flow.elements(); k++) {
            double shift = change[shiftColumn(k)];
            for (Path path : new Path[] {sweep.upper[k], sweep.lower[k]}) {
                double[] before = new double[4];
                for (int station : path.station) {
                    follow(station, before, change[station], shift, all);
                }
            }
            double[] before = wakeStart(k, change, all);
            for (int w = 0; w < flow.wakeSteps(); w++) {
                int station = flow.wakeStation(k, w);
                follow(station, before, change[station], shift, all);
            }
        }
        return all;
    }

    /** Changes of the four unknowns where the wake of an element begins. */
    private double[] wakeStart(int element, double[] change, double[][] all) {
        double[] before = new double[4];
        int[] ends = {sweep.upper[element].last(), sweep.lower[element].last()};
        for (int side = 0; side < 2; side++) {
            int end = ends[side];
            double[] slope = sweep.start[element].stressSlope[side];
            before[Unknowns.STRESS] += slope[Unknowns.STRESS] * all[StationChange.STRESS][end]
                    + slope[Unknowns.THETA] * all[StationChange.THETA][end]
                    + slope[Unknowns.DISPLACED] * change[end]
                    + slope[Unknowns.SPEED] * all[StationChange.SPEED][end];
            before[Unknowns.THETA] += all[StationChange.THETA][end];
            before[Unknowns.DISPLACED] += change[end];
            before[Unknowns.SPEED] += 0.5 * all[StationChange.SPEED][end];
        }
        return before;
    }

    /** Changes at a station; {@code before} then holds its own for the next. */
    private void follow(int station, double[] before, double displaced, double shift, double[][] all) {
        StationChange at = sweep.change[station];
        for (int i = 0; i < 3; i++) {
            double sum = at.constant[i] + at.displaced[i] * displaced + at.shift[i] * shift;
            for (int v = 0; v < 4; v++) {
                sum += at.earlier[i][v] * before[v];
            }
            all[i][station] = sum;
        }
        before[Unknowns.STRESS] = all[StationChange.STRESS][station];
        before[Unknowns.THETA] = all[StationChange.THETA][station];
        before[Unknowns.DISPLACED] = displaced;
        before[Unknowns.SPEED] = all[StationChange.SPEED][station];
    }
}
