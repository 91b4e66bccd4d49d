package trimwright.air;

/**
 * What the aerodynamics needs to know of the air.
 *
 * @param density (kg/m3), positive
 * @param kinematicViscosity (m2/s), positive
 */
public record AirState(double density, double kinematicViscosity) {
    /** Dry air of the standard atmosphere at sea level (ISA: 15 degrees Celsius, 101325 Pa). */
    public static final AirState STANDARD = of(288.15, 101325.0, 0.0);

    public AirState {
        if (!(density > 0) || !(kinematicViscosity > 0)) {
            throw new IllegalArgumentException("air needs positive density and viscosity, not " + density + " kg/m3, "
                    + kinematicViscosity + " m2/s");
        }
    }

    /**
     * Moist air with 400 ppm of carbon dioxide.
     *
     * @param temperature (K), 250 to 330
     * @param pressure (Pa), 60000 to 110000
     * @param relativeHumidity 0 to 1
     */
    public static AirState of(double temperature, double pressure, double relativeHumidity) {
        double density = MoistAir.density(temperature, pressure, relativeHumidity, MoistAir.CARBON_DIOXIDE);
        return new AirState(density, MoistAir.viscosity(temperature) / density);
    }
}
