package trimwright.units;

/**
 * Conversions at the edge. Inside the program every number is SI and every angle is in radians; these are the only
 * functions that know other units.
 */
public final class Units {
    /** Metres per second in one knot: exact by definition (international nautical mile 1852 m, SI brochure). */
    public static final double KNOT = 1852.0 / 3600.0;

    /** Standard acceleration of free fall (m/s2): exact by definition (CGPM 1901). */
    public static final double G = 9.80665;

    private Units() {}

    public static double fromKnots(double knots) {
        return knots * KNOT;
    }

    public static double toKnots(double metresPerSecond) {
        return metresPerSecond / KNOT;
    }

    public static double fromKmh(double kilometresPerHour) {
        return kilometresPerHour / 3.6;
    }

    public static double toKmh(double metresPerSecond) {
        return metresPerSecond * 3.6;
    }

    /** Statute miles per hour: 1 mile is 1609.344 m exactly (international yard and pound agreement, 1959). */
    public static double fromMilesPerHour(double milesPerHour) {
        return milesPerHour * (1609.344 / 3600.0);
    }

    /** One bar is 100 kPa exactly. */
    public static double fromBar(double bar) {
        return bar * 100_000.0;
    }

    public static double fromDegrees(double degrees) {
        return degrees * (Math.PI / 180.0);
    }

    public static double toDegrees(double radians) {
        return radians * (180.0 / Math.PI);
    }

    public static double fromCelsius(double celsius) {
        return celsius + 273.15;
    }

    public static double toCelsius(double kelvin) {
        return kelvin - 273.15;
    }
}
