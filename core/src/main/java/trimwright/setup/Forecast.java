package trimwright.setup;

/**
 * The wind and current that a race is expected in.
 *
 * @param meanWind expected mean wind of the race over ground at 10 m (m/s)
 * @param spread standard deviation of that mean, since forecasts err (m/s), 0 or more
 * @param from direction that the wind comes from (rad), clockwise from north
 * @param swing standard deviation of the wind's direction from leg to leg (rad), 0 or more
 * @param turbulence standard deviation of the wind over its mean within the race (-), above 0
 * @param currentTo direction that the water moves to (rad), clockwise from north
 * @param current speed of the water over ground (m/s), 0 or more
 */
public record Forecast(
        double meanWind,
        double spread,
        double from,
        double swing,
        double turbulence,
        double currentTo,
        double current) {
    public Forecast {
        if (!(meanWind > 0) || !(spread >= 0) || !(swing >= 0) || !(turbulence > 0) || !(current >= 0)) {
            throw new IllegalArgumentException("no forecast: mean " + meanWind + " m/s, spread " + spread
                    + " m/s, swing " + swing + " rad, turbulence " + turbulence + ", current " + current + " m/s");
        }
    }

    /** The same with another expected mean wind (m/s). */
    public Forecast withMean(double other) {
        return new Forecast(other, spread, from, swing, turbulence, currentTo, current);
    }
}
