package trimwright.profile;

import org.hipparchus.analysis.interpolation.SplineInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;

/**
 * An outline measured point by point, as a smooth curve: cubic splines over the length along the chain of points, from the
 * trailing edge round to the trailing edge, which may be blunt.
 */
public final class Outline {
    private static final int FEWEST = 9;

    /** Widest trailing edge over chord (-), chosen: beyond, a point is more likely missing. */
    private static final double WIDEST_EDGE = 0.02;

    private final PolynomialSplineFunction x;

    private final PolynomialSplineFunction y;
    private final double length;
    private final double nose;

    private Outline(PolynomialSplineFunction x, PolynomialSplineFunction y, double length) {
        this.x = x;
        this.y = y;
        this.length = length;
        nose = nose();
    }

    /**
     * Through these points.
     *
     * @throws IllegalArgumentException in words for a person: too few points, points that coincide, an outline that does not
     *     close
     */
    public static Outline through(double[] px, double[] py) {
        int n = px.length;
        if (n < FEWEST) {
            throw new IllegalArgumentException("an outline needs at least " + FEWEST + " points, this has " + n);
        }
        double[] ox = px.clone();
        double[] oy = py.clone();
        double width = StrictMath.hypot(ox[n - 1] - ox[0], oy[n - 1] - oy[0]);
        double chord = 0;
        for (int i = 1; i < n; i++) {
            chord = Math.max(chord, StrictMath.hypot(ox[i] - ox[0], oy[i] - oy[0]));
        }
        if (!(width <= WIDEST_EDGE * chord)) {
            throw new IllegalArgumentException(
                    "the first and the last point lie apart by more than 2 percent of the chord");
        }
        double twice = 0;
        for (int i = 1; i < n; i++) {
            twice += ox[i - 1] * oy[i] - ox[i] * oy[i - 1];
        }
        if (twice < 0) {
            reverse(ox);
            reverse(oy);
        }
        double[] s = new double[n];
        for (int i = 1; i < n; i++) {
            s[i] = s[i - 1] + StrictMath.hypot(ox[i] - ox[i - 1], oy[i] - oy[i - 1]);
            if (!(s[i] > s[i - 1])) {
                throw new IllegalArgumentException("points " + i + " and " + (i + 1) + " of the outline coincide");
            }
        }
        SplineInterpolator splines = new SplineInterpolator();
        return new Outline(splines.interpolate(s, ox), splines.interpolate(s, oy), s[n - 1]);
    }

    private static void reverse(double[] values) {
        for (int i = 0, j = values.length - 1; i < j; i++, j--) {
            double swap = values[i];
            values[i] = values[j];
            values[j] = swap;
        }
    }

    /** Length along the outline where it is farthest from the trailing edge. */
    private double nose() {
        double edgeX = 0.5 * (x.value(0) + x.value(length));
        double edgeY = 0.5 * (y.value(0) + y.value(length));
        double low = 0;
        double high = length;
        int steps = 200;
        while (high - low > 1e-9 * length) {
            double step = (high - low) / steps;
            double best = low;
            double farthest = -1;
            for (int i = 0; i <= steps; i++) {
                double at = Math.min(low + i * step, length);
                double far = StrictMath.hypot(x.value(at) - edgeX, y.value(at) - edgeY);
                if (far > farthest) {
                    farthest = far;
                    best = at;
                }
            }
            low = Math.max(0, best - step);
            high = Math.min(length, best + step);
        }
        return 0.5 * (low + high);
    }

    /** Distance from the nose to the trailing edge. */
    public double chord() {
        return StrictMath.hypot(x.value(nose) - x.value(0), y.value(nose) - y.value(0));
    }

    /** In so many panels, even, cosine spaced along each side between nose and trailing edge. */
    public Contour contour(int panels) {
        return Contour.cosine(panels, side(0), side(length));
    }

    private Contour.Side side(double end) {
        return new Contour.Side(f -> along(x, f, end), f -> along(y, f, end));
    }

    private double along(PolynomialSplineFunction curve, double fraction, double end) {
        return fraction == 1 ? curve.value(end) : curve.value(nose + fraction * (end - nose));
    }
}
