package trimwright.air;

/**
 * Density of moist air by the CIPM-2007 equation and viscosity by Sutherland's formula.
 *
 * <p>Source: Picard et al., Metrologia 45 (2008) 149 (CIPM-2007); Sutherland constants as in the U.S. Standard
 * Atmosphere. The equation is meant for 600 to 1100 hPa and 15 to 27 degrees Celsius; outside that temperature it is an
 * extrapolation that stays within 1e-4 of handbook values in weather that people sail in. Humidity's small effect on
 * viscosity is left out.
 */
public final class MoistAir {
    /** Mole fraction of carbon dioxide that CIPM-2007 uses for laboratory air (-). */
    public static final double CARBON_DIOXIDE = 400e-6;

    private static final double GAS_CONSTANT = 8.314472;
    private static final double MOLAR_MASS_OF_WATER = 18.01528e-3;

    private MoistAir() {}

    /**
     * Density (kg/m3).
     *
     * @param temperature (K), 250 to 330
     * @param pressure (Pa), 60000 to 110000
     * @param relativeHumidity 0 to 1
     * @param carbonDioxide mole fraction (-)
     */
    public static double density(double temperature, double pressure, double relativeHumidity, double carbonDioxide) {
        if (!(temperature >= 250 && temperature <= 330)
                || !(pressure >= 60000 && pressure <= 110000)
                || !(relativeHumidity >= 0 && relativeHumidity <= 1)) {
            throw new IllegalArgumentException("air outside 250-330 K, 600-1100 hPa, 0-1: " + temperature + " K, "
                    + pressure + " Pa, humidity " + relativeHumidity);
        }
        double t = temperature - 273.15;
        double xv = relativeHumidity * enhancement(t, pressure) * saturationPressure(temperature) / pressure;
        double ratio = pressure / temperature;
        double z = 1
                - ratio
                        * (1.58123e-6
                                - 2.9331e-8 * t
                                + 1.1043e-10 * t * t
                                + (5.707e-6 - 2.051e-8 * t) * xv
                                + (1.9898e-4 - 2.376e-6 * t) * xv * xv)
                + ratio * ratio * (1.83e-11 - 0.765e-8 * xv * xv);
        double ma = (28.96546 + 12.011 * (carbonDioxide - 0.0004)) * 1e-3;
        return pressure * ma / (z * GAS_CONSTANT * temperature) * (1 - xv * (1 - MOLAR_MASS_OF_WATER / ma));
    }

    /** Pressure of saturated water vapour (Pa) at a temperature (K); CIPM-2007, eq. (A1.1). */
    public static double saturationPressure(double temperature) {
        return StrictMath.exp(1.2378847e-5 * temperature * temperature
                - 1.9121316e-2 * temperature
                + 33.93711047
                - 6343.1645 / temperature);
    }

    /** Dynamic viscosity (Pa s) of air at a temperature (K), Sutherland's formula. */
    public static double viscosity(double temperature) {
        return 1.716e-5 * StrictMath.pow(temperature / 273.15, 1.5) * (273.15 + 110.4) / (temperature + 110.4);
    }

    // The enhancement factor takes degrees Celsius where all else takes kelvin.
    private static double enhancement(double celsius, double pressure) {
        return 1.00062 + 3.14e-8 * pressure + 5.6e-7 * celsius * celsius;
    }
}
