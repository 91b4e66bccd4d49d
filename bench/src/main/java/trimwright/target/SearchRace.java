package trimwright.target;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import trimwright.air.WindProfile;
import trimwright.bench.DemoPlatform;
import trimwright.boat.Side;
import trimwright.platform.Conditions;
import trimwright.platform.FoilSet;
import trimwright.platform.Platform;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.target.search.Accuracy;
import trimwright.target.search.Answer;
import trimwright.target.search.Search;
import trimwright.units.Units;

/**
 * Our search against those of a library, on one model with one scaling from one start: the best trim of the demo boat in 16 kn at
 * an angle two degrees beside the one whose best trim is known. Each is stopped when it first meets a state within 0.05 per
 * cent of the best speed that keeps equations and limits. Processor time, median of some runs in one process.
 */
public final class SearchRace {
    private static final double SHARE = 0.0005;
    private static final double WIND = Units.fromKnots(16);
    private static final double[] ANGLES_DEG = {70, 100, 130};
    private static final double BESIDE = Math.toRadians(2);

    private SearchRace() {}

    public static void main(String[] args) {
        Platform platform = DemoPlatform.platform();
        Conditions conditions = new Conditions(WindProfile.overSea(WIND), Side.STARBOARD, FoilSet.LEEWARD_DOWN);
        Task task = new Task(platform, conditions, Branch.FOILING, Map.of());
        Answer first = Objects.requireNonNull(new Ladder(task).first());
        System.out.printf(
                Locale.ROOT, "%-22s %6s %10s %12s %10s%n", "search", "angle", "reached", "ms (median)", "model calls");
        for (double angleDeg : ANGLES_DEG) {
            double angle = Math.toRadians(angleDeg);
            Answer beside = onTheWay(task, first, angle - BESIDE);
            Answer best = task.atAngle(angle, beside.x(), beside);
            double speed = SailingState.ofScaled(best.x()).get(Variable.BOAT_SPEED);
            double[] start = beside.x();
            start[Variable.TRUE_WIND_ANGLE.ordinal()] = angle / Variable.TRUE_WIND_ANGLE.scale();
            Finish finish = new Finish(speed * (1 - SHARE));
            TrimProblem problem = task.at(angle);
            run(
                    "ours",
                    angleDeg,
                    200,
                    finish,
                    () -> Search.from(finish.watched(problem), start, beside, Accuracy.FINE));
            run("Hipparchus SQP", angleDeg, 5, finish, () -> LibrarySearches.sqp(finish.watched(problem), start));
            run(
                    "Hipparchus BOBYQA",
                    angleDeg,
                    5,
                    finish,
                    () -> LibrarySearches.bobyqa(platform, conditions, problem, start, finish));
            run(
                    "Hipparchus CMA-ES",
                    angleDeg,
                    3,
                    finish,
                    () -> LibrarySearches.cmaes(platform, conditions, problem, start, finish));
        }
    }

    private static Answer onTheWay(Task task, Answer first, double angle) {
        Answer last = first;
        double at = SailingState.ofScaled(first.x()).get(Variable.TRUE_WIND_ANGLE);
        while (Math.abs(angle - at) > 1e-12) {
            at += Math.max(-0.08, Math.min(0.08, angle - at));
            last = task.atAngle(at, last.x(), last);
        }
        return last;
    }

    private static void run(String name, double angleDeg, int times, Finish finish, Runnable search) {
        List<Double> took = new ArrayList<>();
        boolean reached = true;
        String failure = "";
        long calls = 0;
        for (int i = -times / 2; i < times; i++) {
            finish.begin();
            long before = now();
            try {
                search.run();
                reached = false;
            } catch (Finish.Reached e) {
                // What was waited for.
            } catch (RuntimeException e) {
                reached = false;
                failure = e.toString();
            }
            if (i >= 0) {
                took.add(1e-6 * (now() - before));
                calls = finish.calls();
            }
        }
        double[] sorted = took.stream().mapToDouble(Double::doubleValue).toArray();
        Arrays.sort(sorted);
        System.out.printf(
                Locale.ROOT,
                "%-22s %6.0f %10s %12.3f %10d %s%n",
                name,
                angleDeg,
                reached ? "yes" : "no",
                sorted[sorted.length / 2],
                calls,
                failure);
    }

    private static long now() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}
