package trimwright.card;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import trimwright.platform.Balance;
import trimwright.platform.FoilSet;
import trimwright.platform.Platform;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.target.Branch;
import trimwright.target.TargetBook;
import trimwright.target.TargetCaveat;
import trimwright.target.TargetFinder;
import trimwright.target.TargetMode;
import trimwright.target.TargetPoint;

/**
 * Foil or not, from the two branches of a book: where she takes off, how she is trimmed when she leaves the water, which way is
 * faster along the wind. Leaves out the path of a take-off in time, what it costs on the way, and puffs.
 */
public final class TakeOffCard {
    /** Longest step of the wind angle from one state on the hulls to the next (rad): five degrees. */
    private static final double STEP = Math.PI / 36;

    private final TargetFinder leewardDown;
    private final TargetFinder bothDown;

    public TakeOffCard(Platform platform) {
        leewardDown = new TargetFinder(platform, Map.of());
        bothDown = new TargetFinder(platform, Map.of(), FoilSet.BOTH_DOWN);
    }

    /** What a book says of one of its winds (m/s). */
    public TakeOffRow rowOf(TargetBook book, double wind) {
        List<TargetPoint> points = book.points().stream()
                .filter(point -> point.trueWindSpeed() == wind && point.isSolved())
                .toList();
        List<TargetPoint> foiling = at(points, TargetMode.ANGLE, Branch.FOILING);
        List<TargetPoint> onHulls = at(points, TargetMode.ANGLE, Branch.DISPLACEMENT);
        List<Double> byHerself =
                angles(foiling.stream().filter(point -> doubts(point).isEmpty()).toList());
        List<Double> doubtful = angles(foiling.stream()
                .filter(point -> doubts(point).contains(TargetCaveat.TAKE_OFF_NOT_KNOWN))
                .toList());
        TargetPoint fastest = onHulls.stream()
                .max(Comparator.comparingDouble(point -> point.getTarget().boatSpeed()))
                .orElse(null);
        return new TakeOffRow(
                wind,
                angles(foiling),
                byHerself,
                doubtful,
                byHerself.isEmpty() ? null : up(onHulls, byHerself.get(0)),
                byHerself.isEmpty() ? null : up(onHulls, byHerself.get(byHerself.size() - 1)),
                fastest == null ? null : liftOff(FoilSet.BOTH_DOWN, onHulls, fastest.trueWindAngle()),
                choice(points, TargetMode.UPWIND),
                choice(points, TargetMode.DOWNWIND));
    }

    /**
     * What the windward foil, put down too, would make of the speed of a target on the hulls at its angle (m/s), negative where it costs;
     * NaN where no such state is found.
     */
    public double gainOfBothBoards(TargetPoint onHulls) {
        Balance found = bothDown.bestNear(Branch.DISPLACEMENT, onHulls.trueWindSpeed(), onHulls.state(), Map.of());
        return found == null
                ? Double.NaN
                : found.state().get(Variable.BOAT_SPEED) - onHulls.getTarget().boatSpeed();
    }

    /** How she leaves the water at one angle, on the leeward main foil; null where she does not or that is not found. */
    @Nullable
    LiftOff findLiftOff(TargetBook book, double wind, double angle) {
        List<TargetPoint> points = book.points().stream()
                .filter(point -> point.trueWindSpeed() == wind && point.isSolved())
                .toList();
        return up(at(points, TargetMode.ANGLE, Branch.DISPLACEMENT), angle);
    }

    private static Set<TargetCaveat> doubts(TargetPoint point) {
        Set<TargetCaveat> caveats = EnumSet.noneOf(TargetCaveat.class);
        for (TargetCaveat caveat : point.getTarget().caveats()) {
            if (caveat == TargetCaveat.NOT_REACHED_BY_ITSELF || caveat == TargetCaveat.TAKE_OFF_NOT_KNOWN) {
                caveats.add(caveat);
            }
        }
        return caveats;
    }

    private static List<TargetPoint> at(List<TargetPoint> points, TargetMode mode, Branch branch) {
        return points.stream()
                .filter(point -> point.mode() == mode && point.branch() == branch)
                .toList();
    }

    private static List<Double> angles(List<TargetPoint> points) {
        return points.stream().map(TargetPoint::trueWindAngle).toList();
    }

    private static TakeOffRow.Choice choice(List<TargetPoint> points, TargetMode mode) {
        return new TakeOffRow.Choice(best(points, mode, Branch.FOILING), best(points, mode, Branch.DISPLACEMENT));
    }

    /** The target of the mode, else the best of the angles that way. */
    private static @Nullable TargetPoint best(List<TargetPoint> points, TargetMode mode, Branch branch) {
        List<TargetPoint> own = at(points, mode, branch);
        if (!own.isEmpty()) {
            return own.get(0);
        }
        double way = mode == TargetMode.UPWIND ? 1 : -1;
        return at(points, TargetMode.ANGLE, branch).stream()
                .filter(point -> way * StrictMath.cos(point.trueWindAngle()) > 0)
                .max(Comparator.comparingDouble(point -> point.getTarget().velocityMadeGood()))
                .orElse(null);
    }

    /** Where the book says that she takes off; null where her state is not found again. */
    private @Nullable LiftOff up(List<TargetPoint> onHulls, double angle) {
        LiftOff lift = liftOff(FoilSet.LEEWARD_DOWN, onHulls, angle);
        return lift != null && lift.isUp() ? lift : null;
    }

    /** From the nearest state on the hulls by small steps, else from a guess; null where neither leads to one. */
    private @Nullable LiftOff liftOff(FoilSet foils, List<TargetPoint> onHulls, double angle) {
        TargetPoint near = onHulls.stream()
                .min(Comparator.comparingDouble(point -> Math.abs(point.trueWindAngle() - angle)))
                .orElse(null);
        if (near == null) {
            return null;
        }
        TargetFinder finder = foils == FoilSet.BOTH_DOWN ? bothDown : leewardDown;
        Balance found = alongHulls(finder, near, angle);
        found = found == null ? finder.bestOnHulls(near.trueWindSpeed(), angle) : found;
        return found == null ? null : new LiftOff(foils, found.state(), finder.isLiftedOff(found));
    }

    private static @Nullable Balance alongHulls(TargetFinder finder, TargetPoint near, double angle) {
        double from = near.trueWindAngle();
        int steps = Math.max(1, (int) Math.ceil(Math.abs(angle - from) / STEP - 1e-9));
        SailingState state = near.state();
        Balance found = null;
        for (int i = 1; i <= steps; i++) {
            SailingState start = state.with(Variable.TRUE_WIND_ANGLE, from + i * (angle - from) / steps);
            found = finder.bestNear(Branch.DISPLACEMENT, near.trueWindSpeed(), start, Map.of());
            if (found == null) {
                return null;
            }
            state = found.state();
        }
        return found;
    }

    /**
     * How far down the wind may go until nothing holds the boat up that is up.
     *
     * @param book whose lowest wind with a foiling target is the start
     * @param step of the wind (m/s), positive
     * @return the last state found, null where the book has no foiling target
     */
    public @Nullable LastUp lastUp(TargetBook book, double step) {
        double lowest = book.points().stream()
                .filter(point -> point.isSolved() && point.isFoiling())
                .mapToDouble(TargetPoint::trueWindSpeed)
                .min()
                .orElse(Double.NaN);
        LastUp last = null;
        List<TargetPoint> starts = new ArrayList<>();
        for (TargetPoint point : book.points()) {
            if (point.isSolved()
                    && point.isFoiling()
                    && point.mode() == TargetMode.ANGLE
                    && point.trueWindSpeed() == lowest) {
                starts.add(point);
            }
        }
        for (TargetPoint start : starts) {
            LastUp found = down(start, step);
            last = last == null || found.wind() < last.wind() ? found : last;
        }
        return last;
    }

    private LastUp down(TargetPoint start, double step) {
        LastUp last = new LastUp(start.trueWindSpeed(), start.state());
        while (last.wind() > step) {
            double wind = last.wind() - step;
            Balance found = leewardDown.bestNear(Branch.FOILING, wind, last.state(), Map.of());
            if (found == null) {
                return last;
            }
            last = new LastUp(wind, found.state());
        }
        return last;
    }

    /**
     * The last foiling state in a dying wind.
     *
     * @param wind true wind speed at 10 m (m/s)
     * @param state there
     */
    public record LastUp(double wind, SailingState state) {}
}
