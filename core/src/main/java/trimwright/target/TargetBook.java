package trimwright.target;

import java.util.ArrayList;
import java.util.List;

/**
 * The computed table of best speed, angle and trim of one boat with one wing. Each node holds both branches, foiling and
 * on the hulls, solved or with the reason why not. Values between the nodes: {@link #find}, {@link #findUpwind},
 * {@link #findDownwind}; they stay within one branch.
 */
public final class TargetBook {
    private final String boat;
    private final String wing;
    private final String modelVersion;
    private final TargetGrid grid;
    private final List<TargetPoint> points;
    private final BookSurface foiling;
    private final BookSurface displacement;

    /**
     * @param boat name of the boat
     * @param wing id of the wing
     * @param modelVersion version of the model that made it
     * @param grid winds and angles
     * @param points all points, each at a node of the grid
     */
    public TargetBook(String boat, String wing, String modelVersion, TargetGrid grid, List<TargetPoint> points) {
        this.boat = boat;
        this.wing = wing;
        this.modelVersion = modelVersion;
        this.grid = grid;
        this.points = List.copyOf(points);
        this.foiling = new BookSurface(grid, Branch.FOILING, this.points);
        this.displacement = new BookSurface(grid, Branch.DISPLACEMENT, this.points);
    }

    public String boat() {
        return boat;
    }

    public String wing() {
        return wing;
    }

    public String modelVersion() {
        return modelVersion;
    }

    public TargetGrid grid() {
        return grid;
    }

    /** The same targets without what it costs to be off them, sooner to find: for those who ask at each sample of a day. */
    public TargetBook withoutCosts() {
        return new TargetBook(
                boat,
                wing,
                modelVersion,
                grid,
                points.stream().map(TargetBook::bare).toList());
    }

    private static TargetPoint bare(TargetPoint point) {
        Target t = point.target();
        if (t == null) {
            return point;
        }
        TrimBands bands = t.bands();
        Target target = new Target(
                t.boatSpeed(),
                t.velocityMadeGood(),
                t.apparentWindAngle(),
                t.apparentWindSpeed(),
                t.trim(),
                new TrimBands(bands.camber(), bands.twist(), bands.sheet()),
                t.attitude(),
                t.loads(),
                t.limits(),
                t.caveats());
        return new TargetPoint(
                point.mode(),
                point.branch(),
                point.trueWindSpeed(),
                point.trueWindAngle(),
                target,
                null,
                point.slopes());
    }

    /** All points of both branches. */
    public List<TargetPoint> points() {
        return points;
    }

    /**
     * One point a node and mode, in the order of {@link #points()}: the better of the two branches. Where neither is solved,
     * the one on the hulls, for it says why the boat cannot even sail there slowly; unless it would take off.
     */
    public List<TargetPoint> listBest() {
        List<TargetPoint> best = new ArrayList<>();
        for (TargetPoint point : points) {
            int last = best.size() - 1;
            if (last >= 0 && isSameNode(best.get(last), point)) {
                best.set(last, better(best.get(last), point));
            } else {
                best.add(point);
            }
        }
        return best;
    }

    /**
     * The target at any wind and angle.
     *
     * @param trueWindSpeed at 10 m (m/s)
     * @param trueWindAngle from the course through the water (rad); either tack, the sign is ignored
     * @return the target of the better branch; where neither reaches there, that of the nearest wind led on by its slopes, with a caveat;
     *     none with a caveat outside the grid or where no branch is solved near
     */
    public TargetLookup find(double trueWindSpeed, double trueWindAngle) {
        TargetLookup onFoils = find(Branch.FOILING, trueWindSpeed, trueWindAngle);
        TargetLookup onHulls = find(Branch.DISPLACEMENT, trueWindSpeed, trueWindAngle);
        if (onFoils.point() == null && onHulls.point() == null) {
            // Between the last wind on the hulls and the first on the foils neither branch has both: a rough value, not
            // none.
            double angle = Math.abs(trueWindAngle);
            return better(foiling.beyond(trueWindSpeed, angle), displacement.beyond(trueWindSpeed, angle));
        }
        return better(onFoils, onHulls);
    }

    /** As {@link #find(double, double)}, within the branch named. */
    public TargetLookup find(Branch branch, double trueWindSpeed, double trueWindAngle) {
        return surface(branch).at(trueWindSpeed, Math.abs(trueWindAngle));
    }

    /** The lowest speed at which the book has the boat foiling (m/s), infinite where it never has. */
    public double slowestFoiling() {
        double slowest = Double.POSITIVE_INFINITY;
        for (TargetPoint point : points) {
            Target target = point.target();
            if (target != null && point.isFoiling()) {
                slowest = Math.min(slowest, target.boatSpeed());
            }
        }
        return slowest;
    }

    /** Best speed made good against a wind at 10 m (m/s), the angle free. */
    public TargetLookup findUpwind(double trueWindSpeed) {
        return findBest(TargetMode.UPWIND, trueWindSpeed);
    }

    /** Best speed made good down a wind at 10 m (m/s), the angle free. */
    public TargetLookup findDownwind(double trueWindSpeed) {
        return findBest(TargetMode.DOWNWIND, trueWindSpeed);
    }

    /**
     * Best speed made good of one branch.
     *
     * @param mode {@link TargetMode#UPWIND} or {@link TargetMode#DOWNWIND}
     * @param trueWindSpeed at 10 m (m/s)
     */
    public TargetLookup findBest(Branch branch, TargetMode mode, double trueWindSpeed) {
        if (mode == TargetMode.ANGLE) {
            throw new IllegalArgumentException("a best angle is asked for, not a given one");
        }
        return surface(branch).best(mode, trueWindSpeed);
    }

    private TargetLookup findBest(TargetMode mode, double trueWindSpeed) {
        TargetLookup onFoils = foiling.best(mode, trueWindSpeed);
        TargetLookup onHulls = displacement.best(mode, trueWindSpeed);
        return onFoils.point() == null && onHulls.point() == null
                ? better(foiling.bestBeyond(mode, trueWindSpeed), displacement.bestBeyond(mode, trueWindSpeed))
                : better(onFoils, onHulls);
    }

    private BookSurface surface(Branch branch) {
        return branch == Branch.FOILING ? foiling : displacement;
    }

    private static boolean isSameNode(TargetPoint a, TargetPoint b) {
        return a.mode() == b.mode()
                && a.trueWindSpeed() == b.trueWindSpeed()
                && (a.mode() != TargetMode.ANGLE || a.trueWindAngle() == b.trueWindAngle());
    }

    private static TargetPoint better(TargetPoint a, TargetPoint b) {
        if (a.target() == null && b.target() == null) {
            TargetPoint onHulls = a.isFoiling() ? b : a;
            return Reasons.TAKES_OFF.equals(onHulls.reason()) ? (a.isFoiling() ? a : b) : onHulls;
        }
        if (a.target() == null || b.target() == null) {
            return b.target() == null ? a : b;
        }
        return merit(b) > merit(a) ? b : a;
    }

    private static TargetLookup better(TargetLookup onFoils, TargetLookup onHulls) {
        if (onFoils.point() == null || onHulls.point() == null) {
            return onFoils.point() == null ? onHulls : onFoils;
        }
        return merit(onHulls.point()) > merit(onFoils.point()) ? onHulls : onFoils;
    }

    private static double merit(TargetPoint point) {
        Target target = point.getTarget();
        return point.mode() == TargetMode.ANGLE ? target.boatSpeed() : target.velocityMadeGood();
    }
}
