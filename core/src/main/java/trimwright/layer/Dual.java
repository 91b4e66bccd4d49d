package trimwright.layer;

/**
 * A number with its first derivatives by the unknowns at both ends of an interval: every formula of the layer is written once
 * and brings its derivatives with it.
 */
final class Dual {
    /** Derivatives carried: displaced flow and shape at both ends and the shift of the stagnation point. */
    static final int SIZE = 9;

    /** Shared by all constants, and told by its identity. */
    private static final double[] NONE = new double[SIZE];

    final double value;
    private final double[] slope;

    private Dual(double value, double[] slope) {
        this.value = value;
        this.slope = slope;
    }

    static Dual constant(double value) {
        return new Dual(value, NONE);
    }

    /** The unknown of that number. */
    static Dual unknown(double value, int number) {
        double[] slope = new double[SIZE];
        slope[number] = 1;
        return new Dual(value, slope);
    }

    /** The same with the derivatives of the later station's unknowns as those of the earlier station's. */
    Dual asEarlier() {
        if (slope == NONE) {
            return this;
        }
        double[] result = new double[SIZE];
        System.arraycopy(slope, Unknowns.LATER, result, 0, Unknowns.LATER);
        return new Dual(value, result);
    }

    /** Value known from elsewhere, with the derivatives of an expression that is zero there: an implicit solution. */
    static Dual implicit(double value, Dual zero, double zeroByValue) {
        return new Dual(value, zero.scaled(-1 / zeroByValue));
    }

    double slope(int number) {
        return slope[number];
    }

    private double[] scaled(double factor) {
        if (slope == NONE) {
            return NONE;
        }
        double[] result = new double[SIZE];
        for (int i = 0; i < SIZE; i++) {
            result[i] = factor * slope[i];
        }
        return result;
    }

    private double[] mixed(double mine, Dual other, double others) {
        if (other.slope == NONE) {
            return scaled(mine);
        }
        if (slope == NONE) {
            return other.scaled(others);
        }
        double[] result = new double[SIZE];
        for (int i = 0; i < SIZE; i++) {
            result[i] = mine * slope[i] + others * other.slope[i];
        }
        return result;
    }

    Dual plus(Dual other) {
        return new Dual(value + other.value, mixed(1, other, 1));
    }

    Dual minus(Dual other) {
        return new Dual(value - other.value, mixed(1, other, -1));
    }

    Dual times(Dual other) {
        return new Dual(value * other.value, mixed(other.value, other, value));
    }

    Dual over(Dual other) {
        double quotient = value / other.value;
        return new Dual(quotient, mixed(1 / other.value, other, -quotient / other.value));
    }

    Dual plus(double other) {
        return new Dual(value + other, slope);
    }

    Dual minus(double other) {
        return new Dual(value - other, slope);
    }

    Dual times(double other) {
        return new Dual(value * other, scaled(other));
    }

    /** A number less this. */
    Dual from(double other) {
        return new Dual(other - value, scaled(-1));
    }

    /** A number over this. */
    Dual under(double other) {
        return new Dual(other / value, scaled(-other / (value * value)));
    }

    Dual squared() {
        return new Dual(value * value, scaled(2 * value));
    }

    Dual cubed() {
        return new Dual(value * value * value, scaled(3 * value * value));
    }

    Dual root() {
        double root = Math.sqrt(value);
        return new Dual(root, scaled(0.5 / root));
    }

    Dual log() {
        return new Dual(StrictMath.log(value), scaled(1 / value));
    }

    Dual exp() {
        double exp = StrictMath.exp(value);
        return new Dual(exp, scaled(exp));
    }

    Dual power(double exponent) {
        double power = StrictMath.pow(value, exponent);
        return new Dual(power, scaled(exponent * power / value));
    }

    Dual power(Dual exponent) {
        return log().times(exponent).exp();
    }

    Dual tanh() {
        double tanh = StrictMath.tanh(value);
        return new Dual(tanh, scaled(1 - tanh * tanh));
    }

    /** The larger of this and a bound. */
    Dual atLeast(double bound) {
        return value < bound ? constant(bound) : this;
    }

    /** The smaller of this and a bound. */
    Dual atMost(double bound) {
        return value > bound ? constant(bound) : this;
    }

    /** Mean of two, with a share of the second. */
    static Dual between(Dual first, Dual second, Dual share) {
        return first.plus(second.minus(first).times(share));
    }

    static Dual mean(Dual first, Dual second) {
        return new Dual(0.5 * (first.value + second.value), first.mixed(0.5, second, 0.5));
    }
}
