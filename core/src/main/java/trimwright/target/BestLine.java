package trimwright.target;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The best speed made good of one branch over wind: cubic Hermite between the winds of the book, the slopes of the speed made
 * good those of the points where they are known.
 */
final class BestLine {
    private final TargetMode mode;
    private final Branch branch;
    private final double[] winds;
    private final @Nullable TargetPoint[] nodes;
    private final double[][] values = new double[TargetVector.SIZE][];
    private final double[][] slopes = new double[TargetVector.SIZE][];

    BestLine(TargetMode mode, Branch branch, double[] winds, List<TargetPoint> points) {
        this.mode = mode;
        this.branch = branch;
        this.winds = winds;
        nodes = new TargetPoint[winds.length];
        for (TargetPoint point : points) {
            if (point.mode() == mode && point.branch() == branch && point.isSolved()) {
                int i = Arrays.binarySearch(winds, point.trueWindSpeed());
                if (i < 0) {
                    throw new IllegalArgumentException("a best point must lie at a wind of the book's grid");
                }
                nodes[i] = point;
            }
        }
        for (int k = 0; k < TargetVector.SIZE; k++) {
            values[k] = new double[winds.length];
            slopes[k] = new double[winds.length];
            Arrays.fill(values[k], Double.NaN);
        }
        for (int i = 0; i < winds.length; i++) {
            TargetPoint node = nodes[i];
            if (node != null) {
                double[] row = TargetVector.of(node);
                for (int k = 0; k < row.length; k++) {
                    values[k][i] = row[k];
                }
            }
        }
        for (int k = 0; k < TargetVector.SIZE; k++) {
            for (int i = 0; i < winds.length; i++) {
                if (nodes[i] != null) {
                    slopes[k][i] = NodeSlope.at(winds, values[k], i);
                }
            }
        }
        putKnownSlopes();
    }

    private void putKnownSlopes() {
        for (int i = 0; i < winds.length; i++) {
            TargetPoint node = nodes[i];
            if (node != null && node.slopes() != null) {
                slopes[TargetVector.MADE_GOOD][i] = NodeSlope.known(
                        winds, values[TargetVector.MADE_GOOD], i, node.slopes().byWind());
            }
        }
    }

    TargetLookup at(double wind) {
        if (!BookSurface.inside(winds, wind)) {
            return TargetLookup.none(TargetCaveat.OUTSIDE_GRID);
        }
        int[] between = BookSurface.between(winds, wind);
        int i = between[0];
        int i1 = between[1];
        TargetPoint low = nodes[i];
        TargetPoint high = nodes[i1];
        if (low == null || high == null) {
            return TargetLookup.none(TargetCaveat.NEAR_BRANCH_EDGE);
        }
        double h = winds[i1] - winds[i];
        double s = i1 == i ? 0 : (wind - winds[i]) / h;
        double[] row = new double[TargetVector.SIZE];
        for (int k = 0; k < row.length; k++) {
            row[k] = Hermite.value(values[k][i], h * slopes[k][i], values[k][i1], h * slopes[k][i1], s);
        }
        Set<TargetCaveat> caveats = EnumSet.noneOf(TargetCaveat.class);
        caveats.addAll(low.getTarget().caveats());
        caveats.addAll(high.getTarget().caveats());
        Target nearest = (s < 0.5 ? low : high).getTarget();
        Target target = TargetVector.toTarget(row, nearest.limits(), caveats);
        return new TargetLookup(TargetPoint.solved(mode, branch, wind, TargetVector.angle(row), target), caveats);
    }

    /** On from the nearer of two winds by its slopes, where the other has no point of this branch; none where that has none either. */
    TargetLookup beyond(double wind) {
        if (!BookSurface.inside(winds, wind)) {
            return TargetLookup.none(TargetCaveat.OUTSIDE_GRID);
        }
        int[] between = BookSurface.between(winds, wind);
        int i = wind - winds[between[0]] <= winds[between[1]] - wind ? between[0] : between[1];
        TargetPoint node = nodes[i];
        if (node == null) {
            return TargetLookup.none(TargetCaveat.NEAR_BRANCH_EDGE);
        }
        double[] row = new double[TargetVector.SIZE];
        for (int k = 0; k < row.length; k++) {
            row[k] = values[k][i] + slopes[k][i] * (wind - winds[i]);
        }
        Set<TargetCaveat> caveats = EnumSet.of(TargetCaveat.NEAR_BRANCH_EDGE);
        caveats.addAll(node.getTarget().caveats());
        Target target = TargetVector.toTarget(row, node.getTarget().limits(), caveats);
        return new TargetLookup(TargetPoint.solved(mode, branch, wind, TargetVector.angle(row), target), caveats);
    }
}
