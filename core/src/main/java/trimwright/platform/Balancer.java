package trimwright.platform;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Finds the steady state of given commands: damped Newton on the six equations, each variable in its scale, steps halved
 * until the sum of squares falls, with exact derivatives.
 */
public final class Balancer {
    /** Settled by the equations when foiling: ride height is commanded, rake and sheet follow. */
    public static final List<Variable> FOILING = List.of(
            Variable.BOAT_SPEED,
            Variable.LEEWAY,
            Variable.RUDDER,
            Variable.MAIN_RAKE,
            Variable.ELEVATOR,
            Variable.SHEET);

    /** Settled by the equations on the hulls: the rake is commanded, the boat floats as high as it does. */
    public static final List<Variable> ON_HULLS = List.of(
            Variable.BOAT_SPEED,
            Variable.LEEWAY,
            Variable.RUDDER,
            Variable.RIDE_HEIGHT,
            Variable.PITCH,
            Variable.SHEET);

    /** What is left over weight or weight times length counts as balance below this (-); chosen. */
    private static final double TOLERANCE = 1e-10;

    private static final int MOST_STEPS = 40;

    /** Longest step of a scaled variable; chosen. */
    private static final double LONGEST = 0.7;

    private final Platform platform;
    private final Conditions conditions;
    private final List<Variable> unknowns;

    /** @param unknowns the six variables that the equations settle; all others stay as they are in the guess */
    public Balancer(Platform platform, Conditions conditions, List<Variable> unknowns) {
        if (unknowns.size() != 6) {
            throw new IllegalArgumentException("six equations settle six variables, not " + unknowns.size());
        }
        this.platform = platform;
        this.conditions = conditions;
        this.unknowns = List.copyOf(unknowns);
    }

    /** The steady state near a guess. */
    public Equilibrium balance(SailingState guess) {
        Balance now = platform.balance(guess, conditions, null);
        if (now == null) {
            return new NoBalance(NoBalance.Reason.WING_FLOW, Double.POSITIVE_INFINITY);
        }
        for (int i = 0; i < MOST_STEPS; i++) {
            if (now.residual() < TOLERANCE) {
                return new Balanced(now);
            }
            double[] step = newtonStep(now);
            Balance next = step == null ? null : shorten(now, step);
            if (next == null) {
                break;
            }
            now = next;
        }
        return now.residual() < TOLERANCE ? new Balanced(now) : new NoBalance(reasonOf(now), now.residual());
    }

    private double @Nullable [] newtonStep(Balance now) {
        WingLoadChange[] wing = platform.wingLoadChanges(now.state(), conditions, now.wing(), unknowns);
        if (wing == null) {
            return null;
        }
        WaterChanges water = platform.waterChanges(now.state(), conditions);
        double[][] slopes = new double[6][6];
        for (int j = 0; j < 6; j++) {
            Variable variable = unknowns.get(j);
            ForceSum by = platform.fixedLoadChange(now.state(), conditions, variable);
            by.add(wing[j].force());
            by.add(water.by(variable).force());
            double[] column = Balance.scaled(by, platform);
            for (int i = 0; i < 6; i++) {
                slopes[i][j] = variable.scale() * column[i];
            }
        }
        double[] step = SixBySix.solve(slopes, now.left());
        double longest = 0;
        for (double part : step) {
            longest = Math.max(longest, Math.abs(part));
        }
        if (!(longest < 1e6)) {
            return null;
        }
        double factor = longest > LONGEST ? -LONGEST / longest : -1;
        for (int i = 0; i < 6; i++) {
            step[i] *= factor;
        }
        return step;
    }

    private @Nullable Balance shorten(Balance now, double[] step) {
        double before = sumOfSquares(now);
        for (double share = 1; share > 1e-3; share *= 0.5) {
            SailingState trial = now.state();
            for (int i = 0; i < 6; i++) {
                Variable variable = unknowns.get(i);
                trial = trial.with(variable, trial.get(variable) + share * step[i] * variable.scale());
            }
            Balance next = platform.balance(trial, conditions, now.wing());
            if (next != null && sumOfSquares(next) < before) {
                return next;
            }
        }
        return null;
    }

    private static double sumOfSquares(Balance balance) {
        double sum = 0;
        for (double part : balance.left()) {
            sum += part * part;
        }
        return sum;
    }

    private static NoBalance.Reason reasonOf(Balance balance) {
        double[] left = balance.left();
        int worst = 0;
        for (int i = 1; i < 6; i++) {
            if (Math.abs(left[i]) > Math.abs(left[worst])) {
                worst = i;
            }
        }
        return NoBalance.Reason.values()[worst];
    }
}
