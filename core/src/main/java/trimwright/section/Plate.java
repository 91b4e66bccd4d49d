package trimwright.section;

/**
 * A plate in fully separated flow, any angle: what a stalled section becomes.
 *
 * <p>Sources: Hoerner, normal force 1/(0.222 + 0.283/sin a) of a plate of endless span; Kirchhoff and Rayleigh, centre of
 * pressure 0.5 - 0.75 cos a/(4 + pi sin a) of the chord; Viterna and Corrigan, drag abeam of a finite span
 * 1.11 + 0.018 AR. Smoothed over 0.02 of sin a where the formulas have a corner (chosen; under 1e-4 at 20 degrees).
 */
public final class Plate {
    /** Hoerner's normal force at 90 degrees, endless span (-). */
    public static final double DRAG_ABEAM_2D = 1 / (0.222 + 0.283);

    private static final double CORNER = 0.02;

    private Plate() {}

    /** Drag coefficient abeam (-) of a wing of an aspect ratio (-): rises to the two-dimensional value and stays. */
    public static double dragAbeam(double aspectRatio) {
        return Math.min(1.11 + 0.018 * aspectRatio, DRAG_ABEAM_2D);
    }

    /** Size of sin a (-), rounded at zero. */
    static double size(double sin) {
        return Math.sqrt(sin * sin + CORNER * CORNER);
    }

    /** Normal force coefficient (-) for sin a, scaled to a drag abeam; odd in a. */
    static double normal(double sin, double size, double dragAbeam) {
        return dragAbeam / DRAG_ABEAM_2D * sin / (0.283 + 0.222 * size);
    }

    /** Its derivative by sin a. */
    static double normalSlope(double sin, double size, double dragAbeam) {
        double d = 0.283 + 0.222 * size;
        return dragAbeam / DRAG_ABEAM_2D * (d - 0.222 * sin * sin / size) / (d * d);
    }

    /** Normal force coefficient (-) at an angle a (rad) of the stream to the plate, endless span. */
    public static double normalForce(double a) {
        double sin = StrictMath.sin(a);
        return normal(sin, size(sin), DRAG_ABEAM_2D);
    }

    /** Centre of pressure aft of the leading edge over chord (-) at an angle a (rad). */
    public static double centreOfPressure(double a) {
        return centre(StrictMath.cos(a), size(StrictMath.sin(a)));
    }

    static double centre(double cos, double size) {
        return 0.5 - 0.75 * cos / (4 + Math.PI * size);
    }

    /** Derivative of the centre of pressure by a. */
    static double centreSlope(double sin, double cos, double size) {
        double d = 4 + Math.PI * size;
        return 0.75 * (sin * d + cos * Math.PI * sin * cos / size) / (d * d);
    }
}
