package trimwright.weather;

/**
 * What a day's wind is made from.
 *
 * @param speed mean wind at the reference height (m/s), at least 1
 * @param from direction from which it blows, clockwise from north (rad)
 * @param height reference height (m)
 * @param intensity standard deviation of turbulence along the wind over the mean (-)
 * @param spectrum how turbulence is spread over frequency
 * @param swing standard deviation of the slow swings of direction (rad)
 * @param surge standard deviation of the slow swings of speed, over the mean (-)
 * @param puffStrength mean rise in a puff's middle, over the mean (-)
 */
public record WeatherSpec(
        double speed,
        double from,
        double height,
        double intensity,
        TurbulenceSpectrum spectrum,
        double swing,
        double surge,
        double puffStrength) {
    public WeatherSpec {
        if (!(speed >= 1) || !(height > 0) || !(intensity >= 0)) {
            throw new IllegalArgumentException(
                    "wind speed " + speed + " m/s, height " + height + " m, intensity " + intensity);
        }
    }
}
