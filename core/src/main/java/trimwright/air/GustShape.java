package trimwright.air;

/**
 * The discrete gusts of IEC 61400-1 in their own numbers, and the same shapes scaled to a change of wind that is wanted. The
 * standard's amplitudes are for turbines on land and for decades; racing takes the shapes only. Source: IEC-61400-1 in
 * docs/sources.md, through a public copy; ed. 3 turbulence classes.
 */
public enum GustShape {
    /** There from one instant to the next: not of the standard; the worst that a shape can do. */
    AT_ONCE {
        @Override
        public double share(double time, double length) {
            return time > 0 ? 1 : 0;
        }
    },
    /** Extreme coherent gust with change of direction: a half cosine up to the new wind, which stays. */
    COHERENT {
        @Override
        public double share(double time, double length) {
            double t = Math.max(0, Math.min(1, time / length));
            return 0.5 * (1 - StrictMath.cos(Math.PI * t));
        }
    },
    /** Extreme operating gust: a dip, the peak in the middle, a dip, and the wind before. */
    OPERATING {
        @Override
        public double share(double time, double length) {
            return dipAndPeak(time, length) / PEAK;
        }
    };

    /** Length of the coherent gust of the standard (s). */
    public static final double COHERENT_SECONDS = 10;

    /** Length of the operating gust of the standard (s). */
    public static final double OPERATING_SECONDS = 10.5;

    /** Speed of the coherent gust of the standard (m/s). */
    public static final double COHERENT_SPEED = 15;

    /** What the operating gust's formula reaches in its middle: 0.37 times 2. */
    private static final double PEAK = 0.74;

    /**
     * Share of the change of wind (-): 0 before, 1 at the most, negative in a dip.
     *
     * @param time since it began (s)
     * @param length of the gust (s), positive
     */
    public abstract double share(double time, double length);

    /** -0.37 sin(3 pi t / T) (1 - cos(2 pi t / T)) within the gust, 0 outside (-). */
    public static double dipAndPeak(double time, double length) {
        if (time <= 0 || time >= length) {
            return 0;
        }
        double t = time / length;
        return -0.37 * StrictMath.sin(3 * Math.PI * t) * (1 - StrictMath.cos(2 * Math.PI * t));
    }

    /** Standard deviation of the wind (m/s) of normal turbulence: Iref (0.75 V + 5.6). */
    public static double deviation(double intensity, double wind) {
        return intensity * (0.75 * wind + 5.6);
    }

    /** Scale of turbulence (m) at a height (m): 0.7 z below 60 m, 42 m above. */
    public static double scale(double height) {
        return 0.7 * Math.min(60, height);
    }

    /**
     * Amplitude of the standard's operating gust (m/s).
     *
     * @param wind mean (m/s)
     * @param reference wind of the site's class (m/s)
     * @param deviation of the wind (m/s)
     * @param scale of turbulence (m)
     * @param across of what the gust meets (m)
     */
    public static double operatingAmplitude(
            double wind, double reference, double deviation, double scale, double across) {
        double once = 0.8 * 1.4 * reference;
        return Math.min(1.35 * (once - wind), 3.3 * deviation / (1 + 0.1 * across / scale));
    }

    /** Change of direction (rad) of the standard's coherent gust in a wind (m/s): 180 degrees below 4 m/s, 720 degrees m/s over it. */
    public static double coherentTurn(double wind) {
        return wind < 4 ? Math.PI : 4 * Math.PI / wind;
    }

    /** Extreme change of direction (rad): 4 atan(sigma / (V (1 + 0.1 D / Lambda))), with the figures of {@link #operatingAmplitude}. */
    public static double extremeTurn(double wind, double deviation, double scale, double across) {
        return 4 * StrictMath.atan(deviation / (wind * (1 + 0.1 * across / scale)));
    }
}
