package trimwright.compare;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.air.TrueWind;
import trimwright.air.WindProfile;
import trimwright.boat.Side;
import trimwright.platform.Balanced;
import trimwright.platform.Balancer;
import trimwright.platform.Conditions;
import trimwright.platform.Equilibrium;
import trimwright.platform.FoilSet;
import trimwright.platform.Platform;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.target.Target;
import trimwright.target.TargetPoint;
import trimwright.units.Units;

/**
 * How the model's speed changes when trim and attitude leave a foiling target: the logarithm of the speed as a second-order
 * polynomial, its terms from balanced states a step away in each direction. The true wind angle stays; the elevators settle
 * the moment, so that a wing with less incidence carries less of it. Immutable.
 */
public final class SpeedSlopes {
    /** Steps (rad, m), chosen: of the size of what a crew does otherwise. */
    private static final double[] STEP = {
        Units.fromDegrees(0.4), Units.fromDegrees(1), Units.fromDegrees(1.5), Units.fromDegrees(1), 0.06
    };

    /** Further than so many steps away the polynomial is taken where it is left (chosen). */
    private static final double FURTHEST = 5;

    /** What the six equations settle here: trim, heel and ride height are given. */
    private static final List<Variable> SETTLED = List.of(
            Variable.BOAT_SPEED,
            Variable.LEEWAY,
            Variable.RUDDER,
            Variable.MAIN_RAKE,
            Variable.ELEVATOR,
            Variable.ELEVATOR_DIFFERENTIAL);

    /** The sheet follows the apparent wind in so many rounds: each leaves a quarter of the error, from no more than 0.01 rad. */
    private static final int SHEET_ROUNDS = 5;

    private final double[] first;
    private final double[][] second;

    /**
     * @param first slopes a step, by the order of {@link Trim#toArray}
     * @param second curvatures a step squared, symmetric
     */
    SpeedSlopes(double[] first, double[][] second) {
        this.first = first.clone();
        this.second = second.clone();
    }

    /** About a solved foiling point, or null where the model finds no balance near it. */
    public static @Nullable SpeedSlopes of(Platform platform, TargetPoint point) {
        return new Finder(platform, point).find();
    }

    /**
     * Logarithm of the target's speed over that at another trim, heel and height the target's (-): positive for a loss.
     *
     * @param target the trim that is held for best: that of this place, or between this and the next
     */
    public double ofTrim(Trim measured, Trim target) {
        double[] way = way(measured, target);
        way[3] = 0;
        way[4] = 0;
        return -value(way);
    }

    /** The same of heel and ride height, the trim the target's. */
    public double ofAttitude(Trim measured, Trim target) {
        double[] way = way(measured, target);
        way[0] = 0;
        way[1] = 0;
        way[2] = 0;
        return -value(way);
    }

    /** From the target in steps, NaN taken as none. */
    private static double[] way(Trim measured, Trim target) {
        double[] at = measured.toArray();
        double[] from = target.toArray();
        double[] way = new double[Trim.SIZE];
        for (int i = 0; i < way.length; i++) {
            double steps = (at[i] - from[i]) / STEP[i];
            way[i] = Double.isNaN(steps) ? 0 : Math.max(-FURTHEST, Math.min(FURTHEST, steps));
        }
        return way;
    }

    private double value(double[] way) {
        double value = 0;
        for (int i = 0; i < way.length; i++) {
            value += first[i] * way[i];
            for (int j = 0; j < way.length; j++) {
                value += 0.5 * second[i][j] * way[i] * way[j];
            }
        }
        return value;
    }

    private static final class Finder {
        private final Balancer balancer;
        private final TargetPoint point;
        private final Trim target;
        private final double crewOut;

        Finder(Platform platform, TargetPoint point) {
            this.point = point;
            this.target = Trim.of(point.getTarget());
            Conditions conditions =
                    new Conditions(WindProfile.overSea(point.trueWindSpeed()), Side.STARBOARD, FoilSet.LEEWARD_DOWN);
            this.balancer = new Balancer(platform, conditions, SETTLED);
            this.crewOut = platform.boat().crew().yMax();
        }

        @Nullable
        SpeedSlopes find() {
            SailingState middle = balanced(start(), new double[Trim.SIZE]);
            if (middle == null) {
                return null;
            }
            double zero = logSpeed(middle);
            double[] up = new double[Trim.SIZE];
            double[] first = new double[Trim.SIZE];
            double[][] second = new double[Trim.SIZE][Trim.SIZE];
            for (int i = 0; i < Trim.SIZE; i++) {
                up[i] = at(middle, i, 1, i, 0) - zero;
                double down = at(middle, i, -1, i, 0) - zero;
                // On one side there may be no balance: she comes off the foils. Then the slope of the other must do.
                boolean both = !Double.isNaN(up[i]) && !Double.isNaN(down);
                first[i] = both ? (up[i] - down) / 2 : Double.isNaN(down) ? up[i] : -down;
                second[i][i] = both ? up[i] + down : 0;
            }
            // Trim's own cross terms: along the ridge camber and incidence change together.
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < i; j++) {
                    second[i][j] = at(middle, i, 1, j, 1) - zero - up[i] - up[j];
                    second[j][i] = second[i][j];
                }
            }
            for (double slope : first) {
                if (Double.isNaN(slope)) {
                    return null;
                }
            }
            clean(second);
            return new SpeedSlopes(first, second);
        }

        /** A cross term that was not found is left out. */
        private static void clean(double[][] second) {
            for (double[] row : second) {
                for (int j = 0; j < row.length; j++) {
                    row[j] = Double.isNaN(row[j]) ? 0 : row[j];
                }
            }
        }

        private SailingState start() {
            Target t = point.getTarget();
            return SailingState.upright()
                    .with(Variable.BOAT_SPEED, t.boatSpeed())
                    .with(Variable.TRUE_WIND_ANGLE, point.trueWindAngle())
                    .with(Variable.LEEWAY, t.attitude().leeway())
                    .with(Variable.RUDDER, t.attitude().rudder())
                    .with(Variable.MAIN_RAKE, t.attitude().mainRake())
                    .with(Variable.ELEVATOR, t.attitude().elevator())
                    .with(Variable.ELEVATOR_DIFFERENTIAL, t.attitude().elevatorDifferential())
                    .with(Variable.PITCH, t.attitude().pitch())
                    .with(Variable.TWIST_MID_RATIO, t.trim().twistMidRatio())
                    .with(Variable.CREW_PLACE, crewOut)
                    .with(Variable.SHEET, t.trim().sheet());
        }

        private double at(SailingState from, int i, int stepsOfI, int j, int stepsOfJ) {
            double[] steps = new double[Trim.SIZE];
            steps[i] += stepsOfI;
            steps[j] += stepsOfJ;
            SailingState state = balanced(from, steps);
            return state == null ? Double.NaN : logSpeed(state);
        }

        private static double logSpeed(SailingState state) {
            return StrictMath.log(state.get(Variable.BOAT_SPEED));
        }

        /** The balance so many steps from the target's trim, null where none is found. */
        private @Nullable SailingState balanced(SailingState from, double[] steps) {
            double[] to = target.toArray();
            for (int i = 0; i < to.length; i++) {
                to[i] += steps[i] * STEP[i];
            }
            SailingState state = from.with(Variable.CAMBER, to[1])
                    .with(Variable.TWIST, to[2])
                    .with(Variable.HEEL, to[3])
                    .with(Variable.RIDE_HEIGHT, to[4]);
            for (int round = 0; round < SHEET_ROUNDS; round++) {
                state = state.with(Variable.SHEET, apparentAngle(state) - to[0]);
                Equilibrium found = balancer.balance(state);
                if (!(found instanceof Balanced balanced)) {
                    return null;
                }
                state = balanced.state();
            }
            return state;
        }

        /** At 10 m from the bow, as a target's is. */
        private double apparentAngle(SailingState state) {
            double speed = state.get(Variable.BOAT_SPEED);
            double leeway = state.get(Variable.LEEWAY);
            // Wind from starboard: the boat drifts to port.
            return new TrueWind(point.trueWindSpeed(), state.trueWindAngleToBow())
                    .apparent(speed * StrictMath.cos(leeway), -speed * StrictMath.sin(leeway))
                    .angle();
        }
    }
}
