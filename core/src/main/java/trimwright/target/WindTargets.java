package trimwright.target;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import trimwright.air.WindProfile;
import trimwright.boat.Side;
import trimwright.platform.Conditions;
import trimwright.platform.FoilSet;
import trimwright.platform.Platform;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.target.search.Answer;

/** All targets of one wind: both branches at each angle, and the best speeds made good up and down the wind. */
final class WindTargets {
    private final Rungs rungs;
    private final double wind;
    private final List<Double> angles;
    private final Task foiling;
    private final TargetMaker foilingMaker;
    private final TargetMaker hullMaker;
    private final Sweep foilingSweep;
    private final HullSweep hulls;
    private final Sweep hullSweep;

    /** @param rungs of the same platform and held controls, foiling */
    WindTargets(
            Platform platform,
            Map<Variable, Double> held,
            FoilSet foils,
            double wind,
            List<Double> angles,
            Rungs rungs) {
        this.rungs = rungs;
        this.wind = wind;
        this.angles = angles;
        foiling = task(platform, held, foils, wind, Branch.FOILING);
        Task onHulls = task(platform, held, foils, wind, Branch.DISPLACEMENT);
        foilingMaker = new TargetMaker(foiling);
        hullMaker = new TargetMaker(onHulls);
        foilingSweep = new Sweep(foiling, angles);
        hulls = new HullSweep(onHulls, angles);
        hullSweep = hulls.sweep();
    }

    /** The foiling answers that lead from an easy wind to any other. */
    static Rungs rungs(Platform platform, Map<Variable, Double> held, FoilSet foils) {
        return new Rungs(task(platform, held, foils, Rungs.EASY[0], Branch.FOILING));
    }

    static Task task(Platform platform, Map<Variable, Double> held, FoilSet foils, double wind, Branch branch) {
        Conditions conditions = new Conditions(WindProfile.overSea(wind), Side.STARBOARD, foils);
        return new Task(platform, conditions, branch, held);
    }

    List<TargetPoint> find() {
        sweepFoiling();
        hulls.go();
        List<TargetPoint> points = new ArrayList<>();
        addBest(TargetMode.UPWIND, points);
        for (int i = 0; i < angles.size(); i++) {
            points.add(point(TargetMode.ANGLE, foilingMaker, angles.get(i), foilingSweep.at(i), caveatsAt(i)));
            points.add(onHullsAt(i));
        }
        addBest(TargetMode.DOWNWIND, points);
        return points;
    }

    private TargetPoint onHullsAt(int i) {
        double angle = angles.get(i);
        return switch (hullSweep.outcomeAt(i)) {
            case TAKES_OFF -> noneOnHulls(angle, Reasons.TAKES_OFF);
            case STALLED -> noneOnHulls(angle, Reasons.STALLED);
            default -> point(TargetMode.ANGLE, hullMaker, angle, hullSweep.at(i), Set.of());
        };
    }

    private TargetPoint noneOnHulls(double angle, String reason) {
        return TargetPoint.unsolved(TargetMode.ANGLE, Branch.DISPLACEMENT, wind, angle, reason);
    }

    private void sweepFoiling() {
        Answer first = new Ladder(foiling, rungs).first();
        if (first == null) {
            return;
        }
        double angle = SailingState.ofScaled(first.x()).get(Variable.TRUE_WIND_ANGLE);
        int wider = 0;
        while (wider < angles.size() && angles.get(wider) < angle) {
            wider++;
        }
        foilingSweep.go(first, wider, 1);
        foilingSweep.go(first, wider - 1, -1);
    }

    /** Whether the boat reaches the foiling state by itself: at its fastest on the hulls it stays on them or takes off. */
    private Set<TargetCaveat> caveatsAt(int i) {
        return switch (hullSweep.outcomeAt(i)) {
            case TAKES_OFF -> Set.of();
            case FOUND, STALLED -> EnumSet.of(TargetCaveat.NOT_REACHED_BY_ITSELF);
            case NONE, NOT_TRIED -> EnumSet.of(TargetCaveat.TAKE_OFF_NOT_KNOWN);
        };
    }

    private Set<TargetCaveat> caveatsNear(double angle) {
        int nearest = 0;
        for (int i = 1; i < angles.size(); i++) {
            nearest = Math.abs(angles.get(i) - angle) < Math.abs(angles.get(nearest) - angle) ? i : nearest;
        }
        return angles.isEmpty() ? Set.of() : caveatsAt(nearest);
    }

    private void addBest(TargetMode mode, List<TargetPoint> points) {
        points.add(best(mode, foilingMaker, foilingSweep));
        points.add(best(mode, hullMaker, hullSweep));
    }

    private TargetPoint best(TargetMode mode, TargetMaker maker, Sweep sweep) {
        Answer answer = new BestAlong(maker.task(), sweep, mode).find();
        double angle = mode == TargetMode.UPWIND ? Math.PI / 4 : 3 * Math.PI / 4;
        if (answer != null && answer.isConverged()) {
            angle = SailingState.ofScaled(answer.x()).get(Variable.TRUE_WIND_ANGLE);
        }
        return point(mode, maker, angle, answer, maker == foilingMaker ? caveatsNear(angle) : Set.of());
    }

    private TargetPoint point(
            TargetMode mode, TargetMaker maker, double angle, @Nullable Answer answer, Set<TargetCaveat> caveats) {
        Task task = maker.task();
        Branch branch = task.branch();
        if (answer != null && Standing.isTakingOff(task, answer)) {
            return TargetPoint.unsolved(mode, branch, wind, angle, Reasons.TAKES_OFF);
        }
        if (answer == null || !answer.isConverged()) {
            return TargetPoint.unsolved(mode, branch, wind, angle, Reasons.ofNoBalance(branch, mode, angle));
        }
        Target target = maker.targetOf(mode, answer, caveats);
        return target == null
                ? TargetPoint.unsolved(mode, branch, wind, angle, Reasons.ofNoBalance(branch, mode, angle))
                : TargetPoint.solved(mode, branch, wind, angle, target).withSlopes(maker.slopesOf(mode, answer));
    }
}
