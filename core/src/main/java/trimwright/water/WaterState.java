package trimwright.water;

import trimwright.units.Units;

/**
 * Water at the surface. Density by the international equation of state of 1980, viscosity by Sharqawy, Lienhard and
 * Zubair (2010), vapour pressure by Hyland and Wexler with the salt's share as in Sharqawy; docs/theory/foil.md. Valid
 * for 0 to 40 degrees Celsius.
 *
 * @param density (kg/m3)
 * @param kinematicViscosity (m2/s)
 * @param vapourPressure (Pa)
 */
public record WaterState(double density, double kinematicViscosity, double vapourPressure) {
    /** Standard atmosphere at the surface (Pa): exact by definition (CGPM 1954). */
    public static final double ATMOSPHERE = 101_325.0;

    /** Practical salinity of standard sea water (-). */
    private static final double PRACTICAL_SALINITY = 35.0;

    /** The same by mass (kg/kg): 35.16504 g/kg by definition of the reference-composition scale. */
    private static final double SALT_BY_MASS = 0.03516504;

    public WaterState {
        if (!(density > 0 && kinematicViscosity > 0 && vapourPressure > 0)) {
            throw new IllegalArgumentException("density, viscosity and vapour pressure of water must be positive, not "
                    + density + " kg/m3, " + kinematicViscosity + " m2/s, " + vapourPressure + " Pa");
        }
    }

    /** Standard sea water of that temperature (K). */
    public static WaterState sea(double temperature) {
        return of(PRACTICAL_SALINITY, SALT_BY_MASS, temperature);
    }

    /** Fresh water of that temperature (K). */
    public static WaterState fresh(double temperature) {
        return of(0, 0, temperature);
    }

    /** Pressure of a stream of that speed (m/s): half density times speed squared (Pa). */
    public double dynamicPressure(double speed) {
        return 0.5 * density * speed * speed;
    }

    /** Absolute pressure at that depth (m, down) above the pressure at which the water boils (Pa). */
    public double pressureAboveVapour(double depth) {
        return ATMOSPHERE + density * Units.G * depth - vapourPressure;
    }

    /** Growth of the pressure with depth (Pa/m). */
    public double pressureSlope() {
        return density * Units.G;
    }

    /** Cavitation number (-) at that depth (m, down) and speed (m/s); infinite at rest. */
    public double cavitationNumber(double depth, double speed) {
        return pressureAboveVapour(depth) / dynamicPressure(speed);
    }

    private static WaterState of(double practicalSalinity, double saltByMass, double temperature) {
        double t = Units.toCelsius(temperature);
        if (!(t >= 0 && t <= 40)) {
            throw new IllegalArgumentException("water temperature must be 0 to 40 degrees Celsius, not " + t);
        }
        double density = SeaWaterDensity.of(practicalSalinity, t, 0);
        return new WaterState(
                density, dynamicViscosity(saltByMass, t) / density, vapourPressure(saltByMass, temperature));
    }

    /** Dynamic viscosity (Pa s), salt by mass s (kg/kg), t in degrees Celsius; Sharqawy et al. (2010), eq. 22-23. */
    private static double dynamicViscosity(double s, double t) {
        double shifted = t + 64.993;
        double pure = 4.2844e-5 + 1 / (0.157 * shifted * shifted - 91.296);
        double a = 1.541 + t * (1.998e-2 - t * 9.52e-5);
        double b = 7.974 + t * (-7.561e-2 + t * 4.724e-4);
        return pure * (1 + s * (a + b * s));
    }

    /** Vapour pressure (Pa), salt by mass s (kg/kg), temperature (K). */
    private static double vapourPressure(double s, double temperature) {
        double pure = StrictMath.exp(-5.8002206e3 / temperature
                + 1.3914993
                + temperature * (-4.8640239e-2 + temperature * (4.1764768e-5 - temperature * 1.4452093e-8))
                + 6.5459673 * StrictMath.log(temperature));
        return pure / (1 + 0.57357 * s / (1 - s));
    }
}
