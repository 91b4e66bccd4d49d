package trimwright.weather;

import trimwright.chance.RandomStream;

/**
 * Wind over a course at its reference height: mean, slow shifts, puffs and turbulence, all frozen into the air and carried
 * over the course by the mean wind; or, where the specification says so, at all places what passes its origin. Same specification and seed, same wind, whoever asks and in whatever order.
 */
public final class WindField implements MovingAir {
    /** Heights at which gusts are read, below the reference and in all: 4 to 28 m for one of 10 m. */
    private static final int BELOW = 1;

    private static final int HEIGHTS = 5;

    private final WeatherSpec spec;
    private final double towardsNorth;
    private final double towardsEast;
    private final WaveSum alongWind;
    private final WaveSum crossWind;
    private final WindShifts shifts;
    private final Puffs puffs;

    public WindField(WeatherSpec spec, long seed) {
        this.spec = spec;
        towardsNorth = -StrictMath.cos(spec.from());
        towardsEast = -StrictMath.sin(spec.from());
        double speed = spec.speed();
        double sigma = spec.intensity() * speed;
        double sigmaCross = sigma * spec.spectrum().crossRatio();
        double lambda = TurbulenceSpectrum.lambda(spec.height());
        TurbulenceSpectrum spectrum = spec.spectrum();
        alongWind = Turbulence.of(
                f -> spectrum.alongWind(f, sigma, lambda, speed),
                lambda,
                speed,
                RandomStream.of(seed, "turbulence along the wind"),
                RandomStream.of(seed, "turbulence along the wind over height"));
        crossWind = Turbulence.of(
                f -> spectrum.crossWind(f, sigmaCross, lambda, speed),
                lambda,
                speed,
                RandomStream.of(seed, "turbulence across the wind"),
                RandomStream.of(seed, "turbulence across the wind over height"));
        shifts = new WindShifts(spec.swing(), spec.surge(), speed, RandomStream.of(seed, "shifts"));
        puffs = new Puffs(spec.puffStrength(), RandomStream.of(seed, "puffs").nextLong());
    }

    public WeatherSpec spec() {
        return spec;
    }

    @Override
    public AirVelocity at(double north, double east, double time) {
        double along = along(north, east, time);
        double across = across(north, east);
        return air(along, across, alongWind.at(along, across), crossWind.at(along, across));
    }

    /** Turbulence alone differs: shifts and puffs are the same at every height, and their slow veer does not turn what differs. */
    @Override
    public AirColumn column(double north, double east, double time) {
        if (spec.intensity() == 0) {
            return new AirColumn(at(north, east, time), GustColumn.ALIKE);
        }
        double along = along(north, east, time);
        double across = across(north, east);
        double[] u = alongWind.column(along, across, BELOW, HEIGHTS);
        double[] v = crossWind.column(along, across, BELOW, HEIGHTS);
        double[] toNorth = new double[HEIGHTS];
        double[] toEast = new double[HEIGHTS];
        for (int i = 0; i < HEIGHTS; i++) {
            double du = u[i] - u[BELOW];
            double dv = v[i] - v[BELOW];
            toNorth[i] = du * towardsNorth - dv * towardsEast;
            toEast[i] = du * towardsEast + dv * towardsNorth;
        }
        return new AirColumn(
                air(along, across, u[BELOW], v[BELOW]),
                new GustColumn(spec.height() - BELOW * WaveSum.SPACING, WaveSum.SPACING, toNorth, toEast));
    }

    /** Shifts and puffs there, with what the turbulence adds along and across the wind (m/s). */
    private AirVelocity air(double along, double across, double turbulentAlong, double turbulentAcross) {
        double[] puff = new double[2];
        puffs.at(along, across, puff);
        double speed = spec.speed() * (1 + shifts.strength(along, across) + puff[0]);
        double veer = shifts.direction(along, across) + puff[1];
        double u = speed + turbulentAlong;
        double v = turbulentAcross;
        double cos = StrictMath.cos(veer);
        double sin = StrictMath.sin(veer);
        double a = u * cos - v * sin;
        double c = u * sin + v * cos;
        return new AirVelocity(a * towardsNorth - c * towardsEast, a * towardsEast + c * towardsNorth);
    }

    private double along(double north, double east, double time) {
        return (isAlike() ? 0 : north * towardsNorth + east * towardsEast) - spec.speed() * time;
    }

    /** Positive to the right of the direction in which the air moves. */
    private double across(double north, double east) {
        return isAlike() ? 0 : -north * towardsEast + east * towardsNorth;
    }

    private boolean isAlike() {
        return spec.unrest() == WeatherSpec.Unrest.EVERYWHERE_ALIKE;
    }
}
