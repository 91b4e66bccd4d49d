package trimwright.layer;

import trimwright.arithmetic.Exponential;
import trimwright.arithmetic.Logarithm;

/**
 * A number with its first derivatives by the four unknowns of one station and by the place of the stagnation point: every formula
 * of the layer is written once and brings its derivatives with it. Which station that is, the later or the earlier of an interval,
 * the caller says by making the other one's numbers constants.
 */
final class Dual {
    final double value;
    private final double byStress;
    private final double byTheta;
    private final double byDisplaced;
    private final double bySpeed;
    private final double byShift;

    // Fields and no array: numbers that live for one formula then need no memory, which decides the speed of a layer.
    private Dual(double value, double byStress, double byTheta, double byDisplaced, double bySpeed, double byShift) {
        this.value = value;
        this.byStress = byStress;
        this.byTheta = byTheta;
        this.byDisplaced = byDisplaced;
        this.bySpeed = bySpeed;
        this.byShift = byShift;
    }

    static Dual constant(double value) {
        return new Dual(value, 0, 0, 0, 0, 0);
    }

    /** The unknown of that number, see {@link Unknowns}. */
    static Dual unknown(double value, int number) {
        return new Dual(
                value,
                number == Unknowns.STRESS ? 1 : 0,
                number == Unknowns.THETA ? 1 : 0,
                number == Unknowns.DISPLACED ? 1 : 0,
                number == Unknowns.SPEED ? 1 : 0,
                number == Unknowns.SHIFT ? 1 : 0);
    }

    /** A distance that moves with the stagnation point at a rate. */
    static Dual distance(double value, double rate) {
        return new Dual(value, 0, 0, 0, 0, rate);
    }

    /** The same number without derivatives. */
    Dual fixed() {
        return constant(value);
    }

    /** Value known from elsewhere, with the derivatives of an expression that is zero there: an implicit solution. */
    static Dual implicit(double value, Dual zero, double zeroByValue) {
        return zero.scaled(value, -1 / zeroByValue);
    }

    double slope(int number) {
        return switch (number) {
            case Unknowns.STRESS -> byStress;
            case Unknowns.THETA -> byTheta;
            case Unknowns.DISPLACED -> byDisplaced;
            case Unknowns.SPEED -> bySpeed;
            default -> byShift;
        };
    }

    private Dual scaled(double result, double factor) {
        return new Dual(
                result, factor * byStress, factor * byTheta, factor * byDisplaced, factor * bySpeed, factor * byShift);
    }

    private Dual mixed(double result, double mine, Dual other, double others) {
        return new Dual(
                result,
                mine * byStress + others * other.byStress,
                mine * byTheta + others * other.byTheta,
                mine * byDisplaced + others * other.byDisplaced,
                mine * bySpeed + others * other.bySpeed,
                mine * byShift + others * other.byShift);
    }

    Dual plus(Dual other) {
        return mixed(value + other.value, 1, other, 1);
    }

    Dual minus(Dual other) {
        return mixed(value - other.value, 1, other, -1);
    }

    Dual times(Dual other) {
        return mixed(value * other.value, other.value, other, value);
    }

    Dual over(Dual other) {
        double inverse = 1 / other.value;
        double quotient = value * inverse;
        return mixed(quotient, inverse, other, -quotient * inverse);
    }

    Dual plus(double other) {
        return scaled(value + other, 1);
    }

    Dual minus(double other) {
        return scaled(value - other, 1);
    }

    Dual times(double other) {
        return scaled(value * other, other);
    }

    /** A number less this. */
    Dual from(double other) {
        return scaled(other - value, -1);
    }

    /** A number over this. */
    Dual under(double other) {
        return scaled(other / value, -other / (value * value));
    }

    Dual squared() {
        return scaled(value * value, 2 * value);
    }

    Dual cubed() {
        return scaled(value * value * value, 3 * value * value);
    }

    Dual root() {
        double root = Math.sqrt(value);
        return scaled(root, 0.5 / root);
    }

    Dual log() {
        return scaled(Logarithm.of(value), 1 / value);
    }

    Dual exp() {
        double exp = Exponential.of(value);
        return scaled(exp, exp);
    }

    Dual power(double exponent) {
        double power = Exponential.power(value, exponent);
        return scaled(power, exponent * power / value);
    }

    Dual power(Dual exponent) {
        return log().times(exponent).exp();
    }

    Dual tanh() {
        double tanh = Exponential.tanh(value);
        return scaled(tanh, 1 - tanh * tanh);
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
        return first.mixed(0.5 * (first.value + second.value), 0.5, second, 0.5);
    }
}
