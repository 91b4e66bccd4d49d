package trimwright.target.search;

/**
 * Where a search ended. The multipliers say by how much f falls when a limit is moved out by one: zero where a limit does
 * not bind.
 */
public final class Answer {
    /** How a search ended. */
    public enum Ending {
        /** All equations, limits and the conditions of first order hold. */
        CONVERGED,
        /** No step makes equations and limits better: there is no allowed point nearby. */
        NO_ALLOWED_POINT,
        /** Steps ran out, or the model had no answer on the way. */
        STALLED
    }

    private final Ending ending;
    private final int steps;
    private final double[] x;
    private final double[] equationMultipliers;
    private final double[] limitMultipliers;
    private final double[] lowerMultipliers;
    private final double[] upperMultipliers;
    private final double violation;

    Answer(Ending ending, int steps, double[] x, Multipliers multipliers, double violation) {
        this.ending = ending;
        this.steps = steps;
        this.x = x.clone();
        this.equationMultipliers = multipliers.equations.clone();
        this.limitMultipliers = multipliers.limits.clone();
        this.lowerMultipliers = multipliers.lower.clone();
        this.upperMultipliers = multipliers.upper.clone();
        this.violation = violation;
    }

    public Ending ending() {
        return ending;
    }

    public boolean isConverged() {
        return ending == Ending.CONVERGED;
    }

    public int steps() {
        return steps;
    }

    public double[] x() {
        return x.clone();
    }

    public double ofEquation(int i) {
        return equationMultipliers[i];
    }

    public double ofLimit(int i) {
        return limitMultipliers[i];
    }

    public double ofLower(int i) {
        return lowerMultipliers[i];
    }

    public double ofUpper(int i) {
        return upperMultipliers[i];
    }

    /** Largest amount by which an equation or limit is broken, in its own scale. */
    public double violation() {
        return violation;
    }

    Multipliers multipliers() {
        return new Multipliers(equationMultipliers, limitMultipliers, lowerMultipliers, upperMultipliers);
    }
}
