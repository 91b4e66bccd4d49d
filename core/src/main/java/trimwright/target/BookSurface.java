package trimwright.target;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One branch of a book as a surface with continuous slopes: cubic Hermite in wind and angle. The speed's slopes at the nodes are
 * the points' own; where these are not known, and for all other numbers, they come from parabolas through solved
 * neighbours. A cell counts only where all its corners are solved.
 */
final class BookSurface {
    private static final double EDGE = 1e-9;

    private final Branch branch;
    private final double[] winds;
    private final double[] angles;
    private final @Nullable TargetPoint[][] nodes;
    /** Values, slopes in wind, slopes in angle, cross slopes: [kind][number][wind][angle]. */
    private final double[][][][] tables;

    private final BestLine upwind;
    private final BestLine downwind;

    BookSurface(TargetGrid grid, Branch branch, List<TargetPoint> points) {
        this.branch = branch;
        winds = grid.winds().stream().mapToDouble(Double::doubleValue).toArray();
        angles = grid.angles().stream().mapToDouble(Double::doubleValue).toArray();
        nodes = new TargetPoint[winds.length][angles.length];
        upwind = new BestLine(TargetMode.UPWIND, branch, winds, points);
        downwind = new BestLine(TargetMode.DOWNWIND, branch, winds, points);
        for (TargetPoint point : points) {
            if (point.mode() == TargetMode.ANGLE && point.branch() == branch && point.isSolved()) {
                nodes[nodeOf(winds, point.trueWindSpeed())][nodeOf(angles, point.trueWindAngle())] = point;
            }
        }
        tables = buildTables();
    }

    TargetLookup best(TargetMode mode, double wind) {
        return (mode == TargetMode.UPWIND ? upwind : downwind).at(wind);
    }

    TargetLookup at(double wind, double angle) {
        if (!inside(winds, wind) || !inside(angles, angle)) {
            return TargetLookup.none(TargetCaveat.OUTSIDE_GRID);
        }
        int i = cellOf(winds, wind);
        int j = cellOf(angles, angle);
        int i1 = Math.min(i + 1, winds.length - 1);
        int j1 = Math.min(j + 1, angles.length - 1);
        TargetPoint[] corners = new TargetPoint[4];
        int found = 0;
        for (int[] at : new int[][] {{i, j}, {i1, j}, {i, j1}, {i1, j1}}) {
            TargetPoint node = nodes[at[0]][at[1]];
            if (node == null) {
                return TargetLookup.none(TargetCaveat.NEAR_BRANCH_EDGE);
            }
            corners[found++] = node;
        }
        double s = i1 == i ? 0 : (wind - winds[i]) / (winds[i1] - winds[i]);
        double t = j1 == j ? 0 : (angle - angles[j]) / (angles[j1] - angles[j]);
        double[] row = new double[TargetVector.SIZE];
        for (int k = 0; k < row.length; k++) {
            row[k] = bicubic(k, i, i1, j, j1, s, t);
        }
        row[TargetVector.MADE_GOOD] = Math.abs(row[TargetVector.SPEED] * StrictMath.cos(angle));
        TargetPoint nearest = corners[(s < 0.5 ? 0 : 1) + (t < 0.5 ? 0 : 2)];
        Set<TargetCaveat> caveats = EnumSet.noneOf(TargetCaveat.class);
        for (TargetPoint corner : corners) {
            caveats.addAll(corner.getTarget().caveats());
        }
        if (hasUnsolvedNeighbour(i, i1, j, j1)) {
            caveats.add(TargetCaveat.NEAR_BRANCH_EDGE);
        }
        Target target = TargetVector.toTarget(row, nearest.getTarget().limits(), caveats);
        return new TargetLookup(TargetPoint.solved(TargetMode.ANGLE, branch, wind, angle, target), caveats);
    }

    private double bicubic(int k, int i, int i1, int j, int j1, double s, double t) {
        double hw = winds[i1] - winds[i];
        double ha = angles[j1] - angles[j];
        double[][] f = tables[0][k];
        double[][] fw = tables[1][k];
        double[][] fa = tables[2][k];
        double[][] fwa = tables[3][k];
        double low = Hermite.value(f[i][j], hw * fw[i][j], f[i1][j], hw * fw[i1][j], s);
        double high = Hermite.value(f[i][j1], hw * fw[i][j1], f[i1][j1], hw * fw[i1][j1], s);
        double lowSlope = Hermite.value(fa[i][j], hw * fwa[i][j], fa[i1][j], hw * fwa[i1][j], s);
        double highSlope = Hermite.value(fa[i][j1], hw * fwa[i][j1], fa[i1][j1], hw * fwa[i1][j1], s);
        return Hermite.value(low, ha * lowSlope, high, ha * highSlope, t);
    }

    private double[][][][] buildTables() {
        double[][][][] built = new double[4][TargetVector.SIZE][winds.length][angles.length];
        for (double[][][] kind : built) {
            for (double[][] table : kind) {
                for (double[] line : table) {
                    Arrays.fill(line, Double.NaN);
                }
            }
        }
        for (int i = 0; i < winds.length; i++) {
            for (int j = 0; j < angles.length; j++) {
                TargetPoint node = nodes[i][j];
                if (node != null) {
                    double[] row = TargetVector.of(node);
                    for (int k = 0; k < row.length; k++) {
                        built[0][k][i][j] = row[k];
                    }
                }
            }
        }
        for (int k = 0; k < TargetVector.SIZE; k++) {
            slopesInWind(built[0][k], built[1][k]);
            slopesInAngle(built[0][k], built[2][k]);
        }
        putKnownSlopes(built[0][TargetVector.SPEED], built[1][TargetVector.SPEED], built[2][TargetVector.SPEED]);
        for (int k = 0; k < TargetVector.SIZE; k++) {
            slopesInWind(built[2][k], built[3][k]);
        }
        return built;
    }

    private void putKnownSlopes(double[][] values, double[][] byWind, double[][] byAngle) {
        for (int j = 0; j < angles.length; j++) {
            double[] column = column(values, j);
            for (int i = 0; i < winds.length; i++) {
                TargetPoint node = nodes[i][j];
                if (node != null && node.slopes() != null) {
                    byWind[i][j] =
                            NodeSlope.known(winds, column, i, node.slopes().byWind());
                    byAngle[i][j] =
                            NodeSlope.known(angles, values[i], j, node.slopes().byAngle());
                }
            }
        }
    }

    private double[] column(double[][] values, int j) {
        double[] column = new double[winds.length];
        for (int i = 0; i < winds.length; i++) {
            column[i] = values[i][j];
        }
        return column;
    }

    private void slopesInWind(double[][] values, double[][] slopes) {
        for (int j = 0; j < angles.length; j++) {
            double[] column = column(values, j);
            for (int i = 0; i < winds.length; i++) {
                if (!Double.isNaN(column[i])) {
                    slopes[i][j] = NodeSlope.at(winds, column, i);
                }
            }
        }
    }

    private void slopesInAngle(double[][] values, double[][] slopes) {
        for (int i = 0; i < winds.length; i++) {
            for (int j = 0; j < angles.length; j++) {
                if (!Double.isNaN(values[i][j])) {
                    slopes[i][j] = NodeSlope.at(angles, values[i], j);
                }
            }
        }
    }

    /** Whether a node just outside the cell, but inside the grid, has no target of this branch. */
    private boolean hasUnsolvedNeighbour(int i, int i1, int j, int j1) {
        for (int a = Math.max(0, i - 1); a <= Math.min(winds.length - 1, i1 + 1); a++) {
            for (int b = Math.max(0, j - 1); b <= Math.min(angles.length - 1, j1 + 1); b++) {
                if (nodes[a][b] == null) {
                    return true;
                }
            }
        }
        return false;
    }

    static boolean inside(double[] nodes, double value) {
        return nodes.length > 0 && value >= nodes[0] - EDGE && value <= nodes[nodes.length - 1] + EDGE;
    }

    /** Index of the node at or below a value inside the grid; the last node belongs to the last cell. */
    static int cellOf(double[] nodes, double value) {
        int cell = 0;
        while (cell < nodes.length - 2 && value >= nodes[cell + 1]) {
            cell++;
        }
        return cell;
    }

    private static int nodeOf(double[] nodes, double value) {
        for (int i = 0; i < nodes.length; i++) {
            if (Math.abs(nodes[i] - value) < EDGE) {
                return i;
            }
        }
        throw new IllegalArgumentException("a point of a target book must lie at a node of its grid, not at " + value);
    }
}
