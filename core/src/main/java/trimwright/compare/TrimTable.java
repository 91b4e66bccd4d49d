package trimwright.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.segment.PointOfSail;
import trimwright.target.Branch;
import trimwright.target.TargetBook;
import trimwright.target.TargetMode;
import trimwright.target.TargetPoint;

/** Slopes of speed at the nodes of a target book, and what trims and attitudes between the nodes cost. */
public final class TrimTable {
    private final TargetBook book;
    private final Map<TargetPoint, SpeedSlopes> slopes;

    /** @param slopes those that were found at points of the book */
    public TrimTable(TargetBook book, Map<TargetPoint, SpeedSlopes> slopes) {
        this.book = book;
        this.slopes = Map.copyOf(slopes);
    }

    /** Points of the book at which slopes are wanted for winds between two (m/s) and, on reaches, angles between two (rad). */
    public static List<TargetPoint> wanted(TargetBook book, double[] winds, double[] reaches) {
        List<Double> nodes = around(book.grid().winds(), winds[0], winds[1]);
        List<Double> angles = around(book.grid().angles(), reaches[0], reaches[1]);
        List<TargetPoint> wanted = new ArrayList<>();
        for (TargetPoint point : book.points()) {
            if (point.isSolved()
                    && point.branch() == Branch.FOILING
                    && nodes.contains(point.trueWindSpeed())
                    && (point.mode() != TargetMode.ANGLE || angles.contains(point.trueWindAngle()))) {
                wanted.add(point);
            }
        }
        return wanted;
    }

    /** Nodes from the one at or below the low value to the one at or above the high one. */
    private static List<Double> around(List<Double> nodes, double low, double high) {
        List<Double> found = new ArrayList<>();
        for (int i = 0; i < nodes.size(); i++) {
            boolean belowAll = i + 1 < nodes.size() && nodes.get(i + 1) <= low;
            boolean aboveAll = i > 0 && nodes.get(i - 1) >= high;
            if (!belowAll && !aboveAll && low <= high) {
                found.add(nodes.get(i));
            }
        }
        return found;
    }

    /**
     * Shares of speed that trim and attitude cost.
     *
     * @param trim logarithm of speed at the target's trim over that at the trim measured (-)
     * @param attitude the same of heel and ride height
     */
    record Loss(double trim, double attitude) {}

    /** The target's own, null where the book says nothing, or the target is not a foiling one. */
    @Nullable
    Trim wanted(PointOfSail on, double tws, double twa) {
        TargetPoint target = lookup(on, tws, twa);
        return target == null || !target.isFoiling() ? null : Trim.of(target.getTarget());
    }

    /** Null where the slopes say nothing. */
    @Nullable
    Loss loss(PointOfSail on, double tws, double twa, Trim measured, Trim wanted) {
        double trim = 0;
        double attitude = 0;
        double weights = 0;
        for (Map.Entry<TargetPoint, SpeedSlopes> entry : slopes.entrySet()) {
            double weight = weight(entry.getKey(), modeOf(on), tws, twa);
            if (weight > 0) {
                trim += weight * entry.getValue().ofTrim(measured, wanted);
                attitude += weight * entry.getValue().ofAttitude(measured, wanted);
                weights += weight;
            }
        }
        return weights > 0 ? new Loss(trim / weights, attitude / weights) : null;
    }

    private @Nullable TargetPoint lookup(PointOfSail on, double tws, double twa) {
        return switch (on) {
            case UPWIND -> book.findUpwind(tws).point();
            case DOWNWIND -> book.findDownwind(tws).point();
            case REACHING -> book.find(tws, twa).point();
        };
    }

    private static TargetMode modeOf(PointOfSail on) {
        return switch (on) {
            case UPWIND -> TargetMode.UPWIND;
            case DOWNWIND -> TargetMode.DOWNWIND;
            case REACHING -> TargetMode.ANGLE;
        };
    }

    /** Of a node for a place between nodes: falls evenly to nothing at the next one. */
    private double weight(TargetPoint node, TargetMode mode, double tws, double twa) {
        if (node.mode() != mode) {
            return 0;
        }
        double wind = hat(book.grid().winds(), node.trueWindSpeed(), tws);
        return mode == TargetMode.ANGLE ? wind * hat(book.grid().angles(), node.trueWindAngle(), Math.abs(twa)) : wind;
    }

    private static double hat(List<Double> nodes, double node, double value) {
        int i = nodes.indexOf(node);
        double to = value < node
                ? i > 0 ? nodes.get(i - 1) : Double.NEGATIVE_INFINITY
                : i + 1 < nodes.size() ? nodes.get(i + 1) : Double.POSITIVE_INFINITY;
        return Math.max(0, 1 - Math.abs((value - node) / (to - node)));
    }
}
