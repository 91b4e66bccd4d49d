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
 * @param unrest where all that changes comes from
 */
public record WeatherSpec(
        double speed,
        double from,
        double height,
        double intensity,
        TurbulenceSpectrum spectrum,
        double swing,
        double surge,
        double puffStrength,
        Unrest unrest) {
    /** Where gusts, puffs and shifts come from. */
    public enum Unrest {
        /** Down the wind: each place has its own, later than the places to windward of it. */
        CARRIED,
        /** From nowhere: at one time the wind is the same at all places, so that boats apart sail in one wind. */
        EVERYWHERE_ALIKE
    }

    public WeatherSpec {
        if (!(speed >= 1) || !(height > 0) || !(intensity >= 0)) {
            throw new IllegalArgumentException(
                    "wind speed " + speed + " m/s, height " + height + " m, intensity " + intensity);
        }
    }
    /** Unrest is carried down the wind. */
    public WeatherSpec(
            double speed,
            double from,
            double height,
            double intensity,
            TurbulenceSpectrum spectrum,
            double swing,
            double surge,
            double puffStrength) {
        this(speed, from, height, intensity, spectrum, swing, surge, puffStrength, Unrest.CARRIED);
    }

    /** The same wind with its unrest from elsewhere. */
    public WeatherSpec with(Unrest other) {
        return new WeatherSpec(speed, from, height, intensity, spectrum, swing, surge, puffStrength, other);
    }
}
