package trimwright.magnetic;

/**
 * The earth's main field by the World Magnetic Model (source WMM-2025). The model's own error of variation is about 0.4
 * degrees in middle latitudes (from memory); iron on board, which a compass feels too, is no part of it.
 *
 * @param north component along true north (nT)
 * @param east component along true east (nT)
 * @param down component along the vertical (nT)
 */
public record MagneticField(double north, double east, double down) {
    /** Radius of the model's sphere (m): mean radius of the earth, by the model's report. */
    private static final double RADIUS = 6_371_200;
    /** WGS 84: semi-major axis (m) and flattening. */
    private static final double A = 6_378_137;

    private static final double F = 1 / 298.257223563;

    /** Whether the model holds in that decimal year. */
    public static boolean isValid(double year) {
        return year >= Wmm2025.EPOCH && year < Wmm2025.END;
    }

    /**
     * The field at a place and time.
     *
     * @param latitude geodetic, WGS 84 (rad), not at a pole, where there is no north
     * @param longitude (rad)
     * @param height over the ellipsoid (m)
     * @param year decimal, within the years of {@link #isValid}
     * @throws IllegalArgumentException outside these
     */
    public static MagneticField at(double latitude, double longitude, double height, double year) {
        if (!isValid(year) || !(Math.abs(latitude) < Math.PI / 2)) {
            throw new IllegalArgumentException("no field for year " + year + " at latitude " + latitude);
        }
        // Geodetic to geocentric.
        double e2 = F * (2 - F);
        double sin = StrictMath.sin(latitude);
        double cos = StrictMath.cos(latitude);
        double normal = A / Math.sqrt(1 - e2 * sin * sin);
        double p = (normal + height) * cos;
        double z = (normal * (1 - e2) + height) * sin;
        double r = Math.sqrt(p * p + z * z);
        double s = z / r;
        double c = p / r;

        int top = Wmm2025.DEGREE;
        double[][] legendre = new double[top + 1][top + 1];
        double[][] slope = new double[top + 1][top + 1];
        fill(legendre, slope, s, c);
        double x = 0;
        double y = 0;
        double down = 0;
        double ratio = RADIUS / r;
        double power = ratio * ratio;
        for (int n = 1; n <= top; n++) {
            power *= ratio;
            for (int m = 0; m <= n; m++) {
                double g = Wmm2025.g(n, m, year);
                double h = Wmm2025.h(n, m, year);
                double along = g * StrictMath.cos(m * longitude) + h * StrictMath.sin(m * longitude);
                double across = g * StrictMath.sin(m * longitude) - h * StrictMath.cos(m * longitude);
                x -= power * along * slope[n][m];
                y += power * m * across * legendre[n][m] / c;
                down -= power * (n + 1) * along * legendre[n][m];
            }
        }
        // Back from the sphere's vertical to the ellipsoid's.
        double sinTurn = s * cos - c * sin;
        double cosTurn = c * cos + s * sin;
        return new MagneticField(x * cosTurn - down * sinTurn, y, x * sinTurn + down * cosTurn);
    }

    /** Variation (magnetic declination): magnetic north east of true north (rad), east positive. */
    public double variation() {
        return StrictMath.atan2(east, north);
    }

    /**
     * Associated Legendre functions of the sine of latitude, semi-normalised after Schmidt, and their derivatives by
     * latitude, by the usual recurrences in degree.
     */
    private static void fill(double[][] p, double[][] dp, double s, double c) {
        p[0][0] = 1;
        for (int n = 1; n < p.length; n++) {
            for (int m = 0; m <= n; m++) {
                if (m == n) {
                    double k = n == 1 ? 1 : Math.sqrt((2.0 * n - 1) / (2.0 * n));
                    p[n][m] = k * c * p[n - 1][m - 1];
                    dp[n][m] = k * (c * dp[n - 1][m - 1] - s * p[n - 1][m - 1]);
                } else {
                    double k = Math.sqrt((double) n * n - (double) m * m);
                    double before = n > m + 1 ? Math.sqrt((n - 1.0) * (n - 1.0) - (double) m * m) : 0;
                    double twoBefore = n > m + 1 ? p[n - 2][m] : 0;
                    double dTwoBefore = n > m + 1 ? dp[n - 2][m] : 0;
                    p[n][m] = ((2 * n - 1) * s * p[n - 1][m] - before * twoBefore) / k;
                    dp[n][m] = ((2 * n - 1) * (s * dp[n - 1][m] + c * p[n - 1][m]) - before * dTwoBefore) / k;
                }
            }
        }
    }
}
