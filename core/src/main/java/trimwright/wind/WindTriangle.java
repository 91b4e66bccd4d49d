package trimwright.wind;

import trimwright.air.ApparentWind;
import trimwright.air.TrueWind;

/**
 * True wind from apparent wind in three dimensions. The sensor measures along the boat's x and y axes, which heel and
 * pitch tilt; the true wind and the boat's velocity are taken as horizontal, so the two measured components give it
 * exactly: no small-angle form. Derivation: docs/theory/analysis.md, "True wind". Left out: upwash of the wing.
 */
public final class WindTriangle {
    /** Beyond this cosine of heel or pitch (some 84 deg) the sensor lies on its side and tells nothing (chosen). */
    private static final double LEAST_COSINE = 0.1;

    private WindTriangle() {}

    /** The true wind; both members are NaN where the boat lies on its side. */
    public static TrueWind trueWind(ApparentWind measured, Attitude attitude, BoatVelocity velocity) {
        return level(measured, attitude).trueWind(velocity.ahead(), velocity.starboard());
    }

    /** What a sensor held level would have measured; NaN where the boat lies on its side. */
    public static ApparentWind level(ApparentWind measured, Attitude attitude) {
        double cosPitch = StrictMath.cos(attitude.pitch());
        double cosRoll = StrictMath.cos(attitude.roll());
        if (cosPitch < LEAST_COSINE || cosRoll < LEAST_COSINE) {
            return new ApparentWind(Double.NaN, Double.NaN);
        }
        // Components of where the wind comes from, along the tilted axes.
        double alongX = measured.speed() * StrictMath.cos(measured.angle());
        double alongY = measured.speed() * StrictMath.sin(measured.angle());
        // Rows of the rotation from level to boat axes for a horizontal vector, solved for that vector.
        double ahead = alongX / cosPitch;
        double starboard =
                (alongY - StrictMath.sin(attitude.pitch()) * StrictMath.sin(attitude.roll()) * ahead) / cosRoll;
        return ApparentWind.fromComponents(ahead, starboard);
    }
}
