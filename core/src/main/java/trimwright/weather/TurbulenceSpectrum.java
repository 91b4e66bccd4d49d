package trimwright.weather;

/**
 * Two published spectra of wind turbulence, one-sided, whose integral over frequency is the variance of the component.
 *
 * <p>Source: Burton, Sharpe, Jenkins, Bossanyi, Wind Energy Handbook (2001), equations 2.23 to 2.31, which give the forms
 * and the length scales of IEC 61400-1. The scale below is that standard's {@code Lambda1} = 0.7 z below 60 m, 42 m above.
 */
public enum TurbulenceSpectrum {
    /** Eq. 2.23 with IEC's lengths 8.1 and 2.7 Lambda1; crosswind spread 0.8 of the along-wind spread. */
    KAIMAL(0.8) {
        @Override
        public double alongWind(double frequency, double sigma, double lambda, double speed) {
            return kaimal(frequency, sigma, 8.1 * lambda / speed);
        }

        @Override
        public double crossWind(double frequency, double sigma, double lambda, double speed) {
            return kaimal(frequency, sigma, 2.7 * lambda / speed);
        }
    },
    /** Eqs. 2.24 and 2.26, isotropic, with lengths 3.5 Lambda1 and half of it (2.31). */
    VON_KARMAN(1.0) {
        @Override
        public double alongWind(double frequency, double sigma, double lambda, double speed) {
            double time = 3.5 * lambda / speed;
            double n = frequency * time;
            return sigma * sigma * 4 * time / StrictMath.pow(1 + 70.8 * n * n, 5.0 / 6.0);
        }

        @Override
        public double crossWind(double frequency, double sigma, double lambda, double speed) {
            double time = 1.75 * lambda / speed;
            double n = frequency * time;
            return sigma * sigma * 4 * time * (1 + 755.2 * n * n) / StrictMath.pow(1 + 283.2 * n * n, 11.0 / 6.0);
        }
    };

    private final double crossRatio;

    TurbulenceSpectrum(double crossRatio) {
        this.crossRatio = crossRatio;
    }

    /** Standard deviation crosswind over that along the wind (-). */
    public double crossRatio() {
        return crossRatio;
    }

    /**
     * Density of the component along the mean wind (m2/s2 per Hz).
     *
     * @param frequency at a fixed place (Hz)
     * @param sigma standard deviation of this component (m/s)
     * @param lambda scale Lambda1 (m)
     * @param speed mean wind (m/s)
     */
    public abstract double alongWind(double frequency, double sigma, double lambda, double speed);

    /** Density of the horizontal component across the mean wind; parameters as in {@link #alongWind}. */
    public abstract double crossWind(double frequency, double sigma, double lambda, double speed);

    /** IEC 61400-1: Lambda1 (m) at a height (m). */
    public static double lambda(double height) {
        return 0.7 * Math.min(height, 60.0);
    }

    private static double kaimal(double frequency, double sigma, double time) {
        return sigma * sigma * 4 * time / StrictMath.pow(1 + 6 * frequency * time, 5.0 / 3.0);
    }
}
