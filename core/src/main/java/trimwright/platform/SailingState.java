package trimwright.platform;

import java.util.Arrays;

/** A steady state of the boat, free of the tack: one number a {@link Variable}. Immutable. */
public final class SailingState {
    private final double[] values;

    private SailingState(double[] values) {
        this.values = values;
    }

    /** All zero but the share of twist at half height, which is even. */
    public static SailingState upright() {
        return new SailingState(new double[Variable.count()]).with(Variable.TWIST_MID_RATIO, 0.5);
    }

    /** From scaled values in the order of {@link Variable}. */
    public static SailingState ofScaled(double[] scaled) {
        double[] values = new double[Variable.count()];
        for (int i = 0; i < values.length; i++) {
            values[i] = scaled[i] * Variable.at(i).scale();
        }
        return new SailingState(values);
    }

    /** Each value over its scale, in the order of {@link Variable}. */
    public double[] scaled() {
        double[] scaled = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            scaled[i] = values[i] / Variable.at(i).scale();
        }
        return scaled;
    }

    public double get(Variable variable) {
        return values[variable.ordinal()];
    }

    public SailingState with(Variable variable, double value) {
        double[] copy = values.clone();
        copy[variable.ordinal()] = value;
        return new SailingState(copy);
    }

    /** Whether every value is the same to the last bit. */
    public boolean isSame(SailingState other) {
        return Arrays.equals(values, other.values);
    }

    /** Incidence of the leeward elevator (rad). */
    public double leewardElevator() {
        return get(Variable.ELEVATOR) + get(Variable.ELEVATOR_DIFFERENTIAL);
    }

    /** Incidence of the windward elevator (rad). */
    public double windwardElevator() {
        return get(Variable.ELEVATOR) - get(Variable.ELEVATOR_DIFFERENTIAL);
    }

    /** True wind angle from the bow (rad): the one from the course less the leeway. */
    public double trueWindAngleToBow() {
        return get(Variable.TRUE_WIND_ANGLE) - get(Variable.LEEWAY);
    }
}
