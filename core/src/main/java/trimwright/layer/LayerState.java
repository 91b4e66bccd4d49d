package trimwright.layer;

/**
 * Unknowns of all layers at all stations, while they are being sought. Speeds are positive away from the stagnation points and
 * downstream in wakes.
 */
final class LayerState {
    final double[] stress;
    final double[] theta;

    /** Edge speed times displacement thickness. */
    final double[] displaced;

    final double[] speed;
    final boolean[] turbulent;

    /** By element the node before the stagnation point: the first station of the upper side. */
    final int[] stagnation;

    LayerState(int stations, int elements) {
        stress = new double[stations];
        theta = new double[stations];
        displaced = new double[stations];
        speed = new double[stations];
        turbulent = new boolean[stations];
        stagnation = new int[elements];
    }

    private LayerState(LayerState from) {
        stress = from.stress.clone();
        theta = from.theta.clone();
        displaced = from.displaced.clone();
        speed = from.speed.clone();
        turbulent = from.turbulent.clone();
        stagnation = from.stagnation.clone();
    }

    LayerState copy() {
        return new LayerState(this);
    }

    /** Adds to the speed at a station, which may turn its flow; thicknesses stay. */
    void quicken(int station, double more) {
        double to = speed[station] + more;
        displaced[station] *= Math.max(to, 1e-7) / speed[station];
        speed[station] = to;
    }

    double displacement(int station) {
        return displaced[station] / speed[station];
    }

    double shape(int station) {
        return displaced[station] / (speed[station] * theta[station]);
    }
}
