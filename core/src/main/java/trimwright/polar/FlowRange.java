package trimwright.polar;

import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import trimwright.layer.LayerSide;
import trimwright.layer.ViscousAnswer;
import trimwright.layer.ViscousFlow;
import trimwright.layer.ViscousPoint;

/**
 * Flow about one outline at one Reynolds number from stall to stall: followed angle by angle from where it is easy, up and
 * down, each from the answer before, until lift reaches a given maximum or no longer grows, or layers and outer flow no longer
 * agree. A flap that lets go does not end it as long as the main element's flow holds on.
 */
final class FlowRange {
    /** Steps of angle of attack (rad), chosen: the longest, and the shortest tried where there is no agreement. */
    static final double STEP = Math.toRadians(2.5);

    private static final double SHORTEST = Math.toRadians(0.6);

    /** Longest gap without agreement that is leapt over, in half steps; chosen. */
    private static final int LEAPS = 3;

    /** Farthest angle of attack looked at (rad), chosen. */
    private static final double FARTHEST = Math.toRadians(40);

    /** Tries to meet the given maximum, and the distance from it (of lift) that is near enough; chosen. */
    private static final int TRIES = 2;

    private static final double NEAR = 0.003;

    /** Growth of drag from one answer to the next that tells of another kind of flow, a wing's stall: chosen. */
    private static final double BREAK = 2.5;

    /**
     * Beyond the end of a walk an answer with the flap let go is looked for, at most so many half steps away. The main element's
     * turbulent layer must hold on as far aft as before, but for so much (of the chord), and the new walk must end at this share of
     * the lift or more. Chosen.
     */
    private static final int CROSSING = 6;

    private static final double HOLDS = 0.03;

    /** Only where the flap's upper layer has left it before this place (of the chord) may it be the flap that lets go: chosen. */
    private static final double LEFT = 0.9;

    private static final double KEPT = 0.8;

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
     * Goes from the outermost answer toward stall. Where the flap alone lets go, lift falls by a step and grows again: that is
     * not yet stall.
     *
     * @param way 1 up, -1 down
     * @param most lift (-) on that way, positive, at which the section stalls at the latest; may be infinite
     * @return angle of attack of stall (rad): where lift is {@code most}, or of most lift found, or the last with an answer
     */
    double toStall(int way, double most) {
        double end = toBreak(way > 0 ? points.lastKey() : points.firstKey(), way, most);
        ViscousPoint before = points.get(end);
        if (before == null
                || way * before.lift() >= most
                || before.surface().elements() < 2
                || before.separation(1, LayerSide.UPPER) > LEFT) {
            return end;
        }
        LayerSide side = way > 0 ? LayerSide.UPPER : LayerSide.LOWER;
        for (int i = 1; i <= CROSSING; i++) {
            double beyond = end + way * i * 0.5 * STEP;
            // From a guess at whole steps only: it takes long.
            ViscousPoint found = Math.abs(beyond) > FARTHEST ? null : i % 2 == 0 ? find(beyond) : solve(beyond);
            if (found != null && found.separation(0, side) > before.separation(0, side) - HOLDS) {
                double further = toBreak(beyond, way, most);
                boolean grows = way * (further - beyond) >= STEP;
                if (grows && (!points.containsKey(further) || way * lift(further) > KEPT * way * before.lift())) {
                    return further;
                }
            }
        }
        return end;
    }

    /** The answer at an angle (rad), from the nearest ones or else from a guess; null if there is none. */
    private @Nullable ViscousPoint find(double alpha) {
        ViscousPoint point = solve(alpha);
        if (point == null && flow.at(alpha, reynolds, null) instanceof ViscousPoint found) {
            points.put(alpha, found);
            point = found;
        }
        return point;
    }

    /** Goes on from an answer as long as lift grows. */
    private double toBreak(double from, int way, double most) {
        double best = walk(from, way, most);
        double beyond = leap(best, way, most);
        // An angle without an answer of its own lies between two where the given lift is passed.
        while (beyond != best && points.containsKey(beyond)) {
            best = walk(beyond, way, most);
            beyond = leap(best, way, most);
        }
        return beyond;
    }

    /** Goes on in steps from an answer to most lift, or as far as steps lead without a break. */
    private double walk(double from, int way, double most) {
        double best = from;
        double step = STEP;
        while (step >= SHORTEST && Math.abs(best + way * step) <= FARTHEST) {
            double next = best + way * step;
            ViscousPoint point = solve(next);
            if (point == null || point.drag() > BREAK * drag(best) || way * (point.lift() - lift(best)) <= 0) {
                // Past the most lift, or out of reach in one step.
                step /= 2;
            } else if (way * point.lift() >= most) {
                return meet(best, next, way * most);
            } else {
                best = next;
                step = Math.min(STEP, 2 * step);
            }
        }
        return best;
    }

    /** The angle between two answers where lift has a value between theirs. */
    private double meet(double from, double to, double lift) {
        double a = from;
        double b = to;
        for (int i = 0; i < TRIES; i++) {
            double between = between(a, b, lift);
            ViscousPoint point = solve(between);
            if (point == null || Math.abs(point.lift() - lift) < NEAR) {
                return between;
            }
            if ((point.lift() < lift) == (lift(a) < lift)) {
                a = between;
            } else {
                b = between;
            }
        }
        return between(a, b, lift);
    }

    private double between(double a, double b, double lift) {
        double share = (lift - lift(a)) / (lift(b) - lift(a));
        return a + Math.max(0, Math.min(1, share)) * (b - a);
    }

    /**
     * An angle beyond, with more lift, where steps ended for want of agreement: there are such gaps before stall, where a
     * laminar bubble changes its kind. The same angle if there is none, or if lift has passed its most.
     */
    private double leap(double best, int way, double most) {
        Double known = way > 0 ? points.higherKey(best) : points.lowerKey(best);
        for (int i = 1; i <= LEAPS && known == null && way * lift(best) < most; i++) {
            double next = best + way * i * 0.5 * STEP;
            ViscousPoint point = Math.abs(next) <= FARTHEST ? solve(next) : null;
            if (point != null) {
                double more = way * (point.lift() - lift(best));
                return more <= 0 ? best : way * point.lift() >= most ? meet(best, next, way * most) : next;
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

    /** Answers between two angles (rad), and the next beyond each; by angle. */
    NavigableMap<Double, ViscousPoint> answers(double from, double to) {
        Double first = points.floorKey(from);
        Double last = points.ceilingKey(to);
        return points.subMap(
                first == null ? points.firstKey() : first, true, last == null ? points.lastKey() : last, true);
    }

    private @Nullable ViscousPoint follow(double alpha, ViscousPoint near) {
        ViscousAnswer answer = flow.follow(alpha, reynolds, near);
        return answer instanceof ViscousPoint point ? point : null;
    }

    private double lift(double alpha) {
        return known(alpha).lift();
    }

    private double drag(double alpha) {
        return known(alpha).drag();
    }

    /** The answer at an angle that is known to have one. */
    ViscousPoint known(double alpha) {
        ViscousPoint point = points.get(alpha);
        if (point == null) {
            throw new IllegalStateException("no answer at " + alpha);
        }
        return point;
    }
}
