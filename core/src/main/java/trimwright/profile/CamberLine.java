package trimwright.profile;

import java.util.function.DoubleUnaryOperator;

/** Mean line of an aerofoil: height and slope (-) over the fraction of the chord. */
record CamberLine(DoubleUnaryOperator heightAt, DoubleUnaryOperator slopeAt) {
    static final CamberLine STRAIGHT = new CamberLine(x -> 0, x -> 0);

    double height(double x) {
        return heightAt.applyAsDouble(x);
    }

    /** Sine of the line's inclination. */
    double sine(double x) {
        double slope = slopeAt.applyAsDouble(x);
        return slope / Math.sqrt(1 + slope * slope);
    }

    double cosine(double x) {
        double slope = slopeAt.applyAsDouble(x);
        return 1 / Math.sqrt(1 + slope * slope);
    }
}
