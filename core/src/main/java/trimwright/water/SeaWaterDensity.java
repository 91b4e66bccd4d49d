package trimwright.water;

/**
 * Density of sea water by the international equation of state of 1980 (UNESCO technical papers in marine science 44).
 * Valid for 0 to 42 of practical salinity, -2 to 40 degrees on the temperature scale of 1968. The scale of 1990 differs
 * by 0.01 K at most, which is 0.003 kg/m3 and is left out.
 */
final class SeaWaterDensity {
    private SeaWaterDensity() {}

    /** Density (kg/m3) for practical salinity s (-), temperature t (degrees Celsius) and p, bar above one atmosphere. */
    static double of(double s, double t, double p) {
        double root = Math.sqrt(s);
        double atSurface = 999.842594
                + t * (6.793952e-2 + t * (-9.095290e-3 + t * (1.001685e-4 + t * (-1.120083e-6 + t * 6.536332e-9))))
                + s * (0.824493 + t * (-4.0899e-3 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9))))
                + s * root * (-5.72466e-3 + t * (1.0227e-4 - t * 1.6546e-6))
                + s * s * 4.8314e-4;
        return atSurface / (1 - p / secantBulkModulus(s, root, t, p));
    }

    private static double secantBulkModulus(double s, double root, double t, double p) {
        double k = 19652.21
                + t * (148.4206 + t * (-2.327105 + t * (1.360477e-2 - t * 5.155288e-5)))
                + s * (54.6746 + t * (-0.603459 + t * (1.09987e-2 - t * 6.1670e-5)))
                + s * root * (7.944e-2 + t * (1.6483e-2 - t * 5.3009e-4));
        double a = 3.239908
                + t * (1.43713e-3 + t * (1.16092e-4 - t * 5.77905e-7))
                + s * (2.2838e-3 + t * (-1.0981e-5 - t * 1.6078e-6))
                + s * root * 1.91075e-4;
        double b = 8.50935e-5 + t * (-6.12293e-6 + t * 5.2787e-8) + s * (-9.9348e-7 + t * (2.0816e-8 + t * 9.1697e-10));
        return k + p * (a + p * b);
    }
}
