package trimwright.target;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import trimwright.air.AirState;
import trimwright.air.WindProfile;
import trimwright.boat.Boat;
import trimwright.boat.Side;
import trimwright.boat.Whimbrel14;
import trimwright.platform.Conditions;
import trimwright.platform.FoilSet;
import trimwright.platform.Platform;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.target.search.Accuracy;
import trimwright.target.search.Answer;
import trimwright.target.search.Curvature;
import trimwright.target.search.Problem;
import trimwright.target.search.Search;
import trimwright.units.Units;
import trimwright.water.WaterState;

/** What a limit is said to cost is what is gained when it is moved and the boat is set anew. */
class MultiplierTest {
    /** A limit is moved out and in by this much of its scale, a bound by this much of itself. */
    private static final double MOVED = 0.01;

    /** Share of the multiplier that the curve of the best speed over so long a move may make; another limit may also take over. */
    private static final double SHARE = 0.06;

    /** Search stops within this of the best merit (scaled), so a difference over a move is no better than that. */
    private static final double SEARCH = 2e-7;

    private final Boat boat = Whimbrel14.boat();
    private final Platform platform =
            new Platform(boat, boat.getWing("tall"), AirState.STANDARD, WaterState.sea(288.15));
    private final Set<TargetLimit> seen = EnumSet.noneOf(TargetLimit.class);

    @Test
    void theMultiplierOfEachLimitIsTheGainOfMovingIt() {
        for (double windKn : new double[] {10.5, 14, 20, 26}) {
            Conditions conditions = in(Units.fromKnots(windKn));
            Task task = new Task(platform, conditions, Branch.FOILING, Map.of());
            Answer first = new Ladder(task).first();
            assertTrue(first != null, "no target in " + windKn + " kn");
            for (TargetMode mode : TargetMode.values()) {
                Answer best = mode == TargetMode.ANGLE ? first : task.alongWind(mode, first);
                if (best.isConverged()) {
                    check(windKn, mode, problem(conditions, Branch.FOILING, mode, best), best);
                }
            }
        }
        onHulls(6, 90);
        onHulls(6, 115);
        for (TargetLimit limit : new TargetLimit[] {
            TargetLimit.RIGHTING_MOMENT,
            TargetLimit.ELEVATOR_DOWN_FORCE,
            TargetLimit.CAVITATION_MAIN,
            TargetLimit.SHEET_LOAD,
            TargetLimit.TWIST_MAX,
            TargetLimit.CAMBER_MAX,
            TargetLimit.STALL_MARGIN
        }) {
            assertTrue(seen.contains(limit), limit + " binds nowhere here");
        }
    }

    private void onHulls(double windKn, double angleDeg) {
        double wind = Units.fromKnots(windKn);
        double angle = Units.fromDegrees(angleDeg);
        Task task = new Task(platform, in(wind), Branch.DISPLACEMENT, Map.of());
        Answer best = task.atAngle(angle, FirstGuess.onHulls(platform, wind, angle));
        assertTrue(best.isConverged(), "no target on the hulls at " + angleDeg);
        check(windKn, TargetMode.ANGLE, problem(in(wind), Branch.DISPLACEMENT, TargetMode.ANGLE, best), best);
    }

    private void check(double windKn, TargetMode mode, Problem problem, Answer best) {
        for (LimitRow row : LimitRow.values()) {
            if (row.limit() != null && Standing.binds(best, row)) {
                Moved out = new Moved(problem, row, null, MOVED);
                Moved in = new Moved(problem, row, null, -MOVED);
                compare(windKn + " kn " + mode + " " + row, best, out, in, MOVED, best.ofLimit(row.ordinal()));
                seen.add(row.limit());
            }
        }
        for (Variable variable : new Variable[] {Variable.CREW_PLACE, Variable.CAMBER, Variable.TWIST, Variable.HEEL}) {
            if (Standing.bindsAtUpper(best, variable)) {
                double by = MOVED * problem.upper()[variable.ordinal()];
                Moved out = new Moved(problem, null, variable, by);
                Moved in = new Moved(problem, null, variable, -by);
                compare(windKn + " kn " + mode + " " + variable, best, out, in, by, best.ofUpper(variable.ordinal()));
                if (variable == Variable.CREW_PLACE) {
                    seen.add(TargetLimit.RIGHTING_MOMENT);
                } else if (variable == Variable.CAMBER) {
                    seen.add(TargetLimit.CAMBER_MAX);
                }
            }
        }
    }

    private static void compare(String what, Answer best, Moved out, Moved in, double by, double multiplier) {
        Answer eased = Search.from(out, best.x(), best, Accuracy.FINE);
        Answer tightened = Search.from(in, best.x(), best, Accuracy.FINE);
        assertTrue(eased.isConverged() && tightened.isConverged(), what + ": no answer beside");
        double gain = (merit(tightened, in) - merit(eased, out)) / (2 * by);
        assertEquals(multiplier, gain, SHARE * multiplier + SEARCH / by, what);
    }

    private static double merit(Answer answer, Problem problem) {
        double[] row = problem.valuesAt(answer.x());
        assertTrue(row != null);
        return row[0];
    }

    /** The slopes that the book keeps are those of neighbours searched anew, a hundredth of the wind and half a degree away. */
    @Test
    void theSlopesOfTheBestSpeedAreThoseOfTheNeighbours() {
        for (double windKn : new double[] {12, 20}) {
            double wind = Units.fromKnots(windKn);
            Task task = new Task(platform, in(wind), Branch.FOILING, Map.of());
            Answer first = new Ladder(task).first();
            assertTrue(first != null);
            for (double angleDeg : new double[] {90, 110}) {
                double angle = Units.fromDegrees(angleDeg);
                Answer best = task.atAngle(angle, first.x(), first);
                SpeedSlopes slopes = Envelope.at(task, TargetMode.ANGLE, best);
                assertTrue(slopes != null);
                double turn = Units.fromDegrees(0.5);
                double byAngle = (speed(task, angle + turn, best) - speed(task, angle - turn, best)) / (2 * turn);
                double gust = 0.01 * wind;
                double byWind =
                        (speed(task.in(in(wind + gust)), angle, best) - speed(task.in(in(wind - gust)), angle, best))
                                / (2 * gust);
                String what = windKn + " kn, " + angleDeg + " deg";
                // Curvature over these steps; 0.02 is a thousandth of the speed over a tenth of the wind.
                assertEquals(byAngle, slopes.byAngle(), 0.03 * Math.abs(byAngle) + 0.02, what);
                assertEquals(byWind, slopes.byWind(), 0.03 * Math.abs(byWind) + 0.02, what);
            }
        }
    }

    private static double speed(Task task, double angle, Answer neighbour) {
        Answer answer = task.atAngle(angle, neighbour.x(), neighbour);
        assertTrue(answer.isConverged());
        return SailingState.ofScaled(answer.x()).get(Variable.BOAT_SPEED);
    }

    private static Conditions in(double wind) {
        return new Conditions(WindProfile.overSea(wind), Side.STARBOARD, FoilSet.LEEWARD_DOWN);
    }

    private Problem problem(Conditions conditions, Branch branch, TargetMode mode, Answer best) {
        double angle = SailingState.ofScaled(best.x()).get(Variable.TRUE_WIND_ANGLE);
        return new TrimProblem(
                List.of(
                        new Share(new WingFunctions(platform, conditions), 0.3),
                        new Share(
                                new WaterFunctions(platform, conditions, branch),
                                branch == Branch.FOILING ? 0.1 : 0.01),
                        new Share(new GoalFunctions(Goal.speed(mode)), 0)),
                Ranges.of(platform, branch),
                mode == TargetMode.ANGLE ? Map.of(Variable.TRUE_WIND_ANGLE, angle) : Map.of());
    }

    /** The same problem with one limit, or one upper bound, moved out by so much in its scale. */
    private record Moved(
            Problem problem,
            @Nullable LimitRow row,
            @Nullable Variable variable,
            double by) implements Problem {
        @Override
        public int equations() {
            return problem.equations();
        }

        @Override
        public int limits() {
            return problem.limits();
        }

        @Override
        public double[] lower() {
            return problem.lower();
        }

        @Override
        public double[] upper() {
            double[] upper = problem.upper().clone();
            if (variable != null) {
                upper[variable.ordinal()] += by;
            }
            return upper;
        }

        @Override
        public double @Nullable [] valuesAt(double[] x) {
            double[] values = problem.valuesAt(x);
            if (values != null && row != null) {
                values[row.place()] += by;
            }
            return values;
        }

        @Override
        public double @Nullable [][] slopesAt(double[] x) {
            return problem.slopesAt(x);
        }

        @Override
        public @Nullable Curvature curvatureAt(double[] x) {
            return problem.curvatureAt(x);
        }
    }
}
