package trimwright.target;

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
    static final double EDGE = 1e-9;

    private final Branch branch;
    private final double[] winds;
    private final double[] angles;
    private final @Nullable TargetPoint[][] nodes;
    private final SurfaceTables tables;

    private final BestLine upwind;
    private final BestLine downwind;
    private final BranchEdge edge = new BranchEdge(this);

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
        tables = new SurfaceTables(winds, angles, nodes);
    }

    TargetLookup best(TargetMode mode, double wind) {
        return (mode == TargetMode.UPWIND ? upwind : downwind).at(wind);
    }

    TargetLookup bestBeyond(TargetMode mode, double wind) {
        return (mode == TargetMode.UPWIND ? upwind : downwind).beyond(wind);
    }

    TargetLookup at(double wind, double angle) {
        if (!inside(winds, wind) || !inside(angles, angle)) {
            return TargetLookup.none(TargetCaveat.OUTSIDE_GRID);
        }
        Place place = place(wind, angle);
        if (!place.isSolved(this)) {
            return edge.at(place);
        }
        double[] row = tables.at(place);
        Set<TargetCaveat> caveats = EnumSet.noneOf(TargetCaveat.class);
        for (int w : new int[] {place.i, place.i1}) {
            addCaveats(w, place.j, caveats);
            addCaveats(w, place.j1, caveats);
        }
        if (!place.isNode() && hasUnsolvedNeighbour(place.i, place.i1, place.j, place.j1)) {
            caveats.add(TargetCaveat.NEAR_BRANCH_EDGE);
        }
        return answer(place, row, limits(place.s < 0.5 ? place.i : place.i1, place), caveats);
    }

    /** Where the branch ends between two winds: on from the nearer by its slopes; none where that has no value either. */
    TargetLookup beyond(double wind, double angle) {
        return inside(winds, wind) && inside(angles, angle)
                ? edge.beyond(place(wind, angle))
                : TargetLookup.none(TargetCaveat.OUTSIDE_GRID);
    }

    /**
     * A place between nodes; on a node or a side no other corners are asked for.
     *
     * @param i wind below or at it
     * @param i1 wind above or at it
     * @param j angle below or at it
     * @param j1 angle above or at it
     * @param s share of the way between the winds (-)
     * @param t share of the way between the angles (-)
     */
    record Place(double wind, double angle, int i, int i1, int j, int j1, double s, double t) {
        boolean isSolved(BookSurface surface) {
            return surface.isSolved(i, j)
                    && surface.isSolved(i, j1)
                    && surface.isSolved(i1, j)
                    && surface.isSolved(i1, j1);
        }

        /** The same, of one of the winds alone. */
        Place atWind(int only) {
            return new Place(wind, angle, only, only, j, j1, 0, t);
        }

        /** At the same wind, on an angle of the grid. */
        Place atAngle(int column, double columnAngle) {
            return new Place(wind, columnAngle, i, i1, column, column, s, 0);
        }

        boolean isNode() {
            return i == i1 && j == j1;
        }
    }

    private Place place(double wind, double angle) {
        int[] w = between(winds, wind);
        int[] a = between(angles, angle);
        double s = w[0] == w[1] ? 0 : (wind - winds[w[0]]) / (winds[w[1]] - winds[w[0]]);
        double t = a[0] == a[1] ? 0 : (angle - angles[a[0]]) / (angles[a[1]] - angles[a[0]]);
        return new Place(wind, angle, w[0], w[1], a[0], a[1], s, t);
    }

    /** The nodes on both sides of a value inside the grid, one and the same where it lies on one. */
    static int[] between(double[] nodes, double value) {
        int cell = cellOf(nodes, value);
        int next = Math.min(cell + 1, nodes.length - 1);
        int low = Math.abs(nodes[next] - value) < EDGE ? next : cell;
        return new int[] {low, Math.abs(nodes[low] - value) < EDGE ? low : next};
    }

    boolean isSolved(int wind, int column) {
        return nodes[wind][column] != null;
    }

    /** Limits at the nearest of a wind's two angles. */
    Set<TargetLimit> limits(int wind, Place place) {
        TargetPoint node = nodes[wind][place.t < 0.5 ? place.j : place.j1];
        return node == null ? Set.of() : node.getTarget().limits();
    }

    void addCaveats(int wind, int column, Set<TargetCaveat> caveats) {
        TargetPoint node = nodes[wind][column];
        if (node != null) {
            caveats.addAll(node.getTarget().caveats());
        }
    }

    /** Index of the first angle past that one, upward or downward; may be none of the grid's. */
    int firstPast(double angle, int step) {
        int j = step > 0 ? 0 : angles.length - 1;
        while (hasAngle(j) && step * (angles[j] - angle) <= EDGE) {
            j += step;
        }
        return j;
    }

    boolean hasAngle(int column) {
        return column >= 0 && column < angles.length;
    }

    double angle(int column) {
        return angles[column];
    }

    SurfaceTables tables() {
        return tables;
    }

    TargetLookup answer(Place place, double[] row, Set<TargetLimit> limits, Set<TargetCaveat> caveats) {
        row[TargetVector.MADE_GOOD] = Math.abs(row[TargetVector.SPEED] * StrictMath.cos(place.angle));
        Target target = TargetVector.toTarget(row, limits, caveats);
        return new TargetLookup(TargetPoint.solved(TargetMode.ANGLE, branch, place.wind, place.angle, target), caveats);
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
