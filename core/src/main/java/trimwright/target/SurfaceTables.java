package trimwright.target;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Numbers of a surface between its nodes: cubic Hermite in wind and angle. Slopes of the speed at the nodes are the points' own; where
 * these are not known, and for all other numbers, they come from parabolas through solved neighbours.
 */
final class SurfaceTables {
    /** Speed grows no faster than this with wind, as shares of both, before the branch ends (-): chosen. */
    private static final double STEEPEST = 2;

    private final double[] winds;
    private final double[] angles;
    private final @Nullable TargetPoint[][] nodes;

    /** Values, slopes in wind, slopes in angle, cross slopes: [kind][number][wind][angle]. */
    private final double[][][][] tables;

    /** Which numbers are not zero at every node. */
    private final int[] live;

    SurfaceTables(double[] winds, double[] angles, @Nullable TargetPoint[][] nodes) {
        this.winds = winds;
        this.angles = angles;
        this.nodes = nodes;
        tables = buildTables();
        live = IntStream.range(0, TargetVector.SIZE)
                .filter(k -> isLive(tables[0][k]))
                .toArray();
    }

    /** All numbers at a place whose corners are solved. */
    double[] at(BookSurface.Place place) {
        double[] row = new double[TargetVector.SIZE];
        for (int k : live) {
            row[k] = bicubic(k, place);
        }
        return row;
    }

    private static boolean isLive(double[][] values) {
        return Arrays.stream(values)
                .flatMapToDouble(Arrays::stream)
                .anyMatch(value -> value != 0 && !Double.isNaN(value));
    }

    /** Slope of the speed in angle (m/s per rad) at a place on an angle of the grid. */
    double speedSlope(BookSurface.Place on) {
        double[][] slopes = tables[2][TargetVector.SPEED];
        return slopes[on.i()][on.j()] + on.s() * (slopes[on.i1()][on.j()] - slopes[on.i()][on.j()]);
    }

    /** All numbers at a place, or where it stands on one wind of the grid alone, on from there by the slopes. */
    double[] onFrom(BookSurface.Place place) {
        double[] row = at(place);
        if (place.i() == place.i1()) {
            double on = place.wind() - winds[place.i()];
            for (int k = 0; k < row.length; k++) {
                double[] slopes = tables[1][k][place.i()];
                row[k] += on * (slopes[place.j()] + place.t() * (slopes[place.j1()] - slopes[place.j()]));
            }
            row[TargetVector.SPEED] = at(place)[TargetVector.SPEED]
                    + on * ((1 - place.t()) * ledOn(place.i(), place.j()) + place.t() * ledOn(place.i(), place.j1()));
        }
        return row;
    }

    /** Slope by which a node's speed is led on past the end of its branch: its own where known, unless it is of the very end. */
    private double ledOn(int wind, int column) {
        TargetPoint node = nodes[wind][column];
        double slope = tables[1][TargetVector.SPEED][wind][column];
        if (node == null || node.slopes() == null) {
            return slope;
        }
        double own = node.slopes().byWind();
        double most = STEEPEST * node.getTarget().boatSpeed() / winds[wind];
        return own > 0 && own < most ? own : slope;
    }

    private double bicubic(int k, BookSurface.Place place) {
        int i = place.i();
        int i1 = place.i1();
        int j = place.j();
        int j1 = place.j1();
        double s = place.s();
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
        return Hermite.value(low, ha * lowSlope, high, ha * highSlope, place.t());
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
}
