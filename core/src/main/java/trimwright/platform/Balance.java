package trimwright.platform;

/** All loads on the boat in one state, in balance or not. */
public final class Balance {
    private final Platform platform;
    private final SailingState state;
    private final Conditions conditions;
    private final WingLoad wing;
    private final WaterLoad water;
    private final ForceSum total = new ForceSum();
    private final ForceSum fixed;

    Balance(
            Platform platform,
            SailingState state,
            Conditions conditions,
            WingLoad wing,
            WaterLoad water,
            ForceSum fixed) {
        this.platform = platform;
        this.state = state;
        this.conditions = conditions;
        this.wing = wing;
        this.water = water;
        this.fixed = fixed;
        total.add(wing.force());
        total.add(water.force());
        total.add(fixed);
    }

    public SailingState state() {
        return state;
    }

    public Conditions conditions() {
        return conditions;
    }

    public WingLoad wing() {
        return wing;
    }

    public WaterLoad water() {
        return water;
    }

    /** Sum of all forces and moments about the origin of the body axes: zero in balance. */
    public ForceSum total() {
        return total;
    }

    /** Weights and windage. */
    public ForceSum fixed() {
        return fixed;
    }

    /** {@link Platform#rightingMoment} of this state. */
    public double rightingMoment() {
        return platform.rightingMoment(state, conditions, water);
    }

    /** The same with the crew as far to windward as it goes, all else as it is. */
    public double rightingMomentWithCrewOut() {
        SailingState out =
                state.with(Variable.CREW_PLACE, platform.boat().crew().yMax());
        return platform.rightingMoment(out, conditions, water);
    }

    /** Largest force over weight, or moment over weight times length, that is left over (-). */
    public double residual() {
        double most = 0;
        for (double part : left()) {
            most = Math.max(most, Math.abs(part));
        }
        return most;
    }

    /** What is left of surge, sway, heave over weight and of roll, pitch, yaw over weight times length (-). */
    double[] left() {
        return scaled(total, platform);
    }

    /** Forces over weight, moments over weight times length (-). */
    static double[] scaled(ForceSum sum, Platform platform) {
        double weight = platform.weight();
        double moment = weight * platform.length();
        return new double[] {
            sum.x() / weight, sum.y() / weight, sum.z() / weight, sum.k() / moment, sum.m() / moment, sum.n() / moment
        };
    }
}
