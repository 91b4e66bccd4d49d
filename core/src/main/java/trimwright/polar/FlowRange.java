package trimwright.polar;

import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import trimwright.layer.ViscousAnswer;
import trimwright.layer.ViscousFlow;
import trimwright.layer.ViscousPoint;

/**
 * Flow about one outline at one Reynolds number from stall to stall: followed angle by angle from where it is easy, up and
 * down, each from the answer before, until lift no longer grows or layers and outer flow no longer agree.
 */
final class FlowRange {
    /** Steps of angle of attack (rad), chosen: the longest, and the shortest tried where there is no agreement. */
    private static final double STEP = Math.toRadians(3);

    private static final double SHORTEST = Math.toRadians(0.6);

    /** Longest gap without agreement that is leapt over, in half steps; chosen. */
    private static final int LEAPS = 3;

    /** Farthest angle of attack looked at (rad), chosen. */
    private static final double FARTHEST = Math.toRadians(40);

    private final ViscousFlow flow;
    private final double reynolds;
    private final TreeMap<Double, ViscousPoint> points = new TreeMap<>();

    FlowRange(ViscousFlow flow, double reynolds) {
        this.flow = flow;
        this.reynolds = reynolds;
    }

    /** Finds an answer at this angle (rad) or one near it; false if there is none. */
    boolean begin(double alpha) {
        for (int i = 0; i <= 4; i++) {
            double at = alpha + (i % 2 == 0 ? 1 : -1) * ((i + 1) / 2) * STEP;
            if (flow.at(at, reynolds, null) instanceof ViscousPoint point) {
                points.put(at, point);
                return true;
            }
        }
        return false;
    }

    /**
     * Goes from the outermost answer toward stall.
     *
     * @param way 1 up, -1 down
     * @return angle of attack of stall (rad): of most lift found, or the last with an answer
     */
    double toStall(int way) {
        double best = walk(way > 0 ? points.lastKey() : points.firstKey(), way);
        double beyond = leap(best, way);
        while (beyond != best) {
            best = walk(beyond, way);
            beyond = leap(best, way);
        }
        return best;
    }

    /** Goes on in steps from an answer to most lift, or as far as steps lead. */
    private double walk(double from, int way) {
        double best = from;
        double step = STEP;
        while (step >= SHORTEST && Math.abs(best + way * step) <= FARTHEST) {
            double next = best + way * step;
            ViscousPoint point = solve(next);
            if (point != null && way * (point.lift() - lift(best)) > 0) {
                best = next;
                step = Math.min(STEP, 2 * step);
            } else {
                // Past the most lift, or out of reach in one step.
                step /= 2;
            }
        }
        return best;
    }

    /**
     * An angle beyond, with more lift, where steps ended for want of agreement: there are such gaps before stall, where a
     * laminar bubble changes its kind. The same angle if there is none, or if lift has passed its most.
     */
    private double leap(double best, int way) {
        Double known = way > 0 ? points.higherKey(best) : points.lowerKey(best);
        for (int i = 1; i <= LEAPS && known == null; i++) {
            double next = best + way * i * 0.5 * STEP;
            if (Math.abs(next) <= FARTHEST && flow.at(next, reynolds, points.get(best)) instanceof ViscousPoint point) {
                points.put(next, point);
                return way * (point.lift() - lift(best)) > 0 ? next : best;
            }
        }
        return best;
    }

    /** The answer at an angle (rad), found from the nearest ones; null if there is none. */
    @Nullable
    ViscousPoint solve(double alpha) {
        ViscousPoint known = points.get(alpha);
        if (known != null) {
            return known;
        }
        Map.Entry<Double, ViscousPoint> below = points.floorEntry(alpha);
        Map.Entry<Double, ViscousPoint> above = points.ceilingEntry(alpha);
        ViscousPoint point = null;
        if (below != null && (above == null || alpha - below.getKey() <= above.getKey() - alpha)) {
            point = follow(alpha, below.getValue());
            point = point == null && above != null ? follow(alpha, above.getValue()) : point;
        } else if (above != null) {
            point = follow(alpha, above.getValue());
            point = point == null && below != null ? follow(alpha, below.getValue()) : point;
        }
        if (point != null) {
            points.put(alpha, point);
        }
        return point;
    }

    private @Nullable ViscousPoint follow(double alpha, ViscousPoint near) {
        ViscousAnswer answer = flow.follow(alpha, reynolds, near);
        return answer instanceof ViscousPoint point ? point : null;
    }

    private double lift(double alpha) {
        ViscousPoint point = points.get(alpha);
        if (point == null) {
            throw new IllegalStateException("no answer at " + alpha);
        }
        return point.lift();
    }
}
