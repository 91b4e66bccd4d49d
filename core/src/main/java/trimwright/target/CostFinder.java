package trimwright.target;

import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.target.search.Answer;
import trimwright.units.Units;

/**
 * What it costs to be off at a target. Along each control the six equations are kept to second order; at the change that this
 * gives for the larger loss one exact state bends the parabola to a cubic. docs/theory/target.md.
 */
final class CostFinder {
    /** Losses of the bands (m/s); the figures are those of the crew's display. */
    static final double TENTH = Units.fromKnots(0.1);

    static final double THREE_TENTHS = Units.fromKnots(0.3);

    /** A limit counts as passed beyond this much of its scale (-); chosen, the search keeps them to 1e-6. */
    private static final double PASSED = 1e-3;

    /** Changes below this (scaled) are none: a hundredth of a degree; chosen. */
    private static final double LEAST = 1e-3;

    private static final double SPEED = Variable.BOAT_SPEED.scale();

    private final Task task;
    private final TrimProblem problem;
    private final double[] x;
    private final double[] row;
    private final double[][] slopes;

    private CostFinder(Task task, TrimProblem problem, double[] x, double[] row, double[][] slopes) {
        this.task = task;
        this.problem = problem;
        this.x = x;
        this.row = row;
        this.slopes = slopes;
    }

    /** Costs around the state that is shown, gains from the answer that is best. */
    static TrimCosts at(Task task, SailingState shown, Answer best) {
        TrimProblem problem = task.free();
        double[] x = shown.scaled();
        double[] row = problem.valuesAt(x);
        double[][] slopes = row == null ? null : problem.slopesAt(x);
        Map<TargetLimit, Double> easing = Easing.of(task, best);
        if (row == null || slopes == null) {
            return new TrimCosts(ControlCost.NONE, ControlCost.NONE, ControlCost.NONE, easing);
        }
        CostFinder finder = new CostFinder(task, problem, x, row, slopes);
        return new TrimCosts(
                finder.cost(Variable.CAMBER, Variable.SHEET, -1),
                finder.cost(Variable.TWIST, Variable.SHEET, 1),
                finder.cost(Variable.SHEET, Variable.CAMBER, 1),
                easing);
    }

    /** @param easing side on which the control makes less moment */
    private ControlCost cost(Variable control, Variable partner, int easing) {
        if (task.isHeld(control) || task.isHeld(Variable.CREW_PLACE)) {
            return ControlCost.NONE;
        }
        CostLine held = line(control, task.isHeld(partner) ? Variable.CREW_PLACE : partner);
        CostLine alone = line(control, Variable.CREW_PLACE);
        if (held == null || alone == null) {
            return ControlCost.NONE;
        }
        double scale = control.scale();
        Reach down = reach(held, -1, true);
        Reach up = reach(held, 1, true);
        Reach free = reach(alone, easing, false);
        double byOne = free.loss(alone.degree());
        boolean steady = byOne > 0;
        double curvature = held.speedCurvature();
        double flat = curvature < 0 ? 2 * Math.sqrt(2 * TENTH / SPEED / -curvature) : Double.POSITIVE_INFINITY;
        return new ControlCost(
                steady ? SPEED * byOne : 0,
                new Band(-scale * down.at(TENTH / SPEED), scale * up.at(TENTH / SPEED)),
                new Band(-scale * down.at(THREE_TENTHS / SPEED), scale * up.at(THREE_TENTHS / SPEED)),
                steady ? easing * scale * free.at(TENTH / SPEED) : 0,
                steady ? easing * scale * free.at(THREE_TENTHS / SPEED) : 0,
                Math.min(flat, CostLine.FAR) * scale,
                held.slopeOf(partner) * partner.scale() / scale);
    }

    private @Nullable CostLine line(Variable control, Variable closing) {
        boolean foiling = task.branch() == Branch.FOILING;
        return CostLine.of(
                problem,
                x,
                row,
                slopes,
                control,
                Variable.BOAT_SPEED,
                Variable.LEEWAY,
                Variable.RUDDER,
                foiling ? Variable.MAIN_RAKE : Variable.RIDE_HEIGHT,
                foiling ? Variable.ELEVATOR : Variable.PITCH,
                closing);
    }

    /**
     * One side of a line: the loss as a cubic, and how far it goes.
     *
     * @param limited whether it ends at ranges and at limits of the wing; a change that only unloads her is told without
     */
    private Reach reach(CostLine line, int way, boolean limited) {
        double room = limited ? line.room(way) : CostLine.FAR;
        double linear = way * -line.slopeOf(Variable.BOAT_SPEED);
        double square = -0.5 * line.speedCurvature();
        double by = Math.min(room, firstRoot(linear, square, 0, THREE_TENTHS / SPEED, CostLine.FAR));
        double[] there = by > LEAST ? line.at(way * by) : null;
        double[] limits = there == null ? null : problem.valuesAt(there);
        if (there == null || limits == null) {
            return new Reach(linear, square, 0, by > LEAST ? 0 : room);
        }
        int speed = Variable.BOAT_SPEED.ordinal();
        double cubic = (x[speed] - there[speed] - linear * by - square * by * by) / (by * by * by);
        return new Reach(linear, square, cubic, limited ? kept(limits, by, room) : room);
    }

    /** How far all limits of the wing are kept, each taken as straight. */
    private double kept(double[] there, double by, double room) {
        double least = room;
        for (LimitRow limit : LimitRow.values()) {
            double now = row[limit.place()];
            double then = there[limit.place()];
            if (limit.isOfWing() && then < now) {
                least = Math.min(least, by * Math.max(0, now + PASSED) / (now - then));
            }
        }
        return least;
    }

    private static double firstRoot(double linear, double square, double cubic, double loss, double most) {
        int parts = 40;
        double before = 0;
        for (int i = 1; i <= parts; i++) {
            double by = most * i / parts;
            if (loss(linear, square, cubic, by) >= loss) {
                for (int k = 0; k < 40; k++) {
                    double middle = 0.5 * (before + by);
                    if (loss(linear, square, cubic, middle) >= loss) {
                        by = middle;
                    } else {
                        before = middle;
                    }
                }
                return by;
            }
            before = by;
        }
        return most;
    }

    private static double loss(double linear, double square, double cubic, double by) {
        return by * (linear + by * (square + by * cubic));
    }

    private record Reach(double linear, double square, double cubic, double most) {
        double loss(double by) {
            return CostFinder.loss(linear, square, cubic, by);
        }

        /** Change that costs so much, or the end of the room. */
        double at(double loss) {
            return firstRoot(linear, square, cubic, loss, most);
        }
    }

    /** Gains of easing limits. */
    private static final class Easing {
        /** One per cent. */
        private static final double SHARE = 0.01;

        private Easing() {}

        static Map<TargetLimit, Double> of(Task task, Answer best) {
            Map<TargetLimit, Double> gains = new EnumMap<>(TargetLimit.class);
            for (LimitRow limit : LimitRow.values()) {
                if (limit.limit() != null && Standing.binds(best, limit)) {
                    add(gains, limit.limit(), best.ofLimit(limit.ordinal()) * SHARE * limit.size(task.platform()));
                }
            }
            addUpper(gains, task, best, Variable.CREW_PLACE, TargetLimit.RIGHTING_MOMENT);
            addUpper(gains, task, best, Variable.CAMBER, TargetLimit.CAMBER_MAX);
            addUpper(gains, task, best, Variable.TWIST, TargetLimit.TWIST_MAX);
            addUpper(gains, task, best, Variable.BOAT_SPEED, TargetLimit.SPEED_LIMIT);
            return gains;
        }

        private static void addUpper(
                Map<TargetLimit, Double> gains, Task task, Answer best, Variable variable, TargetLimit limit) {
            if (!task.isHeld(variable) && Standing.bindsAtUpper(best, variable)) {
                int i = variable.ordinal();
                add(gains, limit, best.ofUpper(i) * SHARE * best.x()[i]);
            }
        }

        private static void add(Map<TargetLimit, Double> gains, TargetLimit limit, double scaled) {
            gains.merge(limit, SPEED * scaled, Double::sum);
        }
    }
}
