package trimwright.crew;

import java.util.List;

/**
 * Aims over wind and angle, as a crew has them on a card: straight lines between the card's rows, its edges beyond them.
 * Only foiling aims; below the wind for which the card has any a simulated crew is out of its depth.
 */
public final class SailingAims {
    private final double[] winds;
    private final double[] angles;
    private final Aim[][] aims;
    private final double[] upwind;
    private final double[] downwind;

    /**
     * @param winds at 10 m (m/s), rising
     * @param angles from the course (rad), rising, in (0, pi)
     * @param aims by wind, then angle; every cell filled
     * @param upwind best angle against each wind (rad)
     * @param downwind best angle down each wind (rad)
     */
    public SailingAims(
            List<Double> winds, List<Double> angles, List<List<Aim>> aims, List<Double> upwind, List<Double> downwind) {
        this.winds = winds.stream().mapToDouble(Double::doubleValue).toArray();
        this.angles = angles.stream().mapToDouble(Double::doubleValue).toArray();
        this.aims = aims.stream().map(row -> row.toArray(new Aim[0])).toArray(Aim[][]::new);
        this.upwind = upwind.stream().mapToDouble(Double::doubleValue).toArray();
        this.downwind = downwind.stream().mapToDouble(Double::doubleValue).toArray();
        if (winds.isEmpty()
                || angles.isEmpty()
                || this.aims.length != winds.size()
                || this.upwind.length != winds.size()
                || this.downwind.length != winds.size()
                || aims.stream().anyMatch(row -> row.size() != angles.size())) {
            throw new IllegalArgumentException(
                    "aims need one row a wind and one cell an angle, and no row may be empty");
        }
    }

    /** The aim in a wind (m/s) at an angle from the course (rad), tack-free. */
    public Aim at(double wind, double angle) {
        int i = cell(winds, wind);
        int j = cell(angles, angle);
        double s = share(winds, i, wind);
        double t = share(angles, j, angle);
        Aim low = aims[i][j].toward(aims[i][next(angles, j)], t);
        int i1 = next(winds, i);
        Aim high = aims[i1][j].toward(aims[i1][next(angles, j)], t);
        return low.toward(high, s);
    }

    /** Best angle against a wind (m/s), from the course (rad). */
    public double upwindAngle(double wind) {
        return line(upwind, wind);
    }

    /** Best angle down a wind (m/s), from the course (rad). */
    public double downwindAngle(double wind) {
        return line(downwind, wind);
    }

    private double line(double[] values, double wind) {
        int i = cell(winds, wind);
        return values[i] + share(winds, i, wind) * (values[next(winds, i)] - values[i]);
    }

    private static int cell(double[] nodes, double value) {
        int i = 0;
        while (i < nodes.length - 2 && value >= nodes[i + 1]) {
            i++;
        }
        return i;
    }

    private static int next(double[] nodes, int i) {
        return Math.min(i + 1, nodes.length - 1);
    }

    private static double share(double[] nodes, int i, double value) {
        int i1 = next(nodes, i);
        return i1 == i ? 0 : Math.max(0, Math.min(1, (value - nodes[i]) / (nodes[i1] - nodes[i])));
    }
}
