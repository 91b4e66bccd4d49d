package trimwright.weather;

import trimwright.chance.RandomStream;

/**
 * Wind over a course at its reference height: mean, slow shifts, puffs and turbulence, all frozen into the air and carried
 * over the course by the mean wind; or, where the specification says so, at all places what passes its origin. Same specification and seed, same wind, whoever asks and in whatever order.
 */
public final class WindField implements MovingAir {
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
                RandomStream.of(seed, "turbulence along the wind"));
        crossWind = Turbulence.of(
                f -> spectrum.crossWind(f, sigmaCross, lambda, speed),
                lambda,
                speed,
                RandomStream.of(seed, "turbulence across the wind"));
        shifts = new WindShifts(spec.swing(), spec.surge(), speed, RandomStream.of(seed, "shifts"));
        puffs = new Puffs(spec.puffStrength(), RandomStream.of(seed, "puffs").nextLong());
    }

    public WeatherSpec spec() {
        return spec;
    }

    @Override
    public AirVelocity at(double north, double east, double time) {
        boolean alike = spec.unrest() == WeatherSpec.Unrest.EVERYWHERE_ALIKE;
        double along = (alike ? 0 : north * towardsNorth + east * towardsEast) - spec.speed() * time;
        // Positive to the right of the direction in which the air moves.
        double across = alike ? 0 : -north * towardsEast + east * towardsNorth;
        double[] puff = new double[2];
        puffs.at(along, across, puff);
        double speed = spec.speed() * (1 + shifts.strength(along, across) + puff[0]);
        double veer = shifts.direction(along, across) + puff[1];
        double u = speed + alongWind.at(along, across);
        double v = crossWind.at(along, across);
        double cos = StrictMath.cos(veer);
        double sin = StrictMath.sin(veer);
        double a = u * cos - v * sin;
        double c = u * sin + v * cos;
        return new AirVelocity(a * towardsNorth - c * towardsEast, a * towardsEast + c * towardsNorth);
    }
}
