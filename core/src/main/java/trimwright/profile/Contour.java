package trimwright.profile;

import java.util.function.DoubleUnaryOperator;

/**
 * The outline of one element, as corner points in the order trailing edge, upper side, leading edge, lower side, trailing edge.
 * The first and the last point are the same place, or the two corners of a blunt trailing edge. Lengths in chords of reference
 * or metres, as the maker chose; x downstream, y to the side that positive angles lift to.
 */
public final class Contour {
    private final double[] x;
    private final double[] y;

    private Contour(double[] x, double[] y) {
        this.x = x;
        this.y = y;
    }

    /**
     * Of these points.
     *
     * @throws IllegalArgumentException with fewer than 9 points, points that are not numbers or coincide with the next, an
     *     outline that runs the other way round
     */
    public static Contour of(double[] x, double[] y) {
        if (x.length != y.length || x.length < 9) {
            throw new IllegalArgumentException(
                    "a contour needs at least 9 points, x and y alike, not " + x.length + " and " + y.length);
        }
        Contour contour = new Contour(x.clone(), y.clone());
        for (int i = 1; i < x.length; i++) {
            if (!(contour.length(i - 1) > 0) || !(contour.length(i - 1) < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("points " + (i - 1) + " and " + i + " of a contour coincide");
            }
        }
        if (!(contour.area() > 0)) {
            throw new IllegalArgumentException("a contour runs from the trailing edge over the upper side first");
        }
        return contour;
    }

    /**
     * With the points of both sides at the same fractions of the chord, cosine spaced: exactly as many panels on the upper
     * as on the lower side.
     *
     * @param panels in all, even
     * @param upper x and y of the upper side at a fraction (0 leading to 1 trailing edge) of the way
     * @param lower the same for the lower side; both must meet at 0
     */
    static Contour cosine(int panels, Side upper, Side lower) {
        if (panels < 8 || panels % 2 != 0) {
            throw new IllegalArgumentException("panels come in even numbers from 8 on, not " + panels);
        }
        int half = panels / 2;
        double[] x = new double[panels + 1];
        double[] y = new double[panels + 1];
        for (int i = 0; i <= half; i++) {
            double at = i == half ? 1 : 0.5 * (1 - StrictMath.cos(Math.PI * i / half));
            x[half - i] = upper.x().applyAsDouble(at);
            y[half - i] = upper.y().applyAsDouble(at);
            x[half + i] = lower.x().applyAsDouble(at);
            y[half + i] = lower.y().applyAsDouble(at);
        }
        return of(x, y);
    }

    /** One side of an element as a curve over the fraction of the way from leading to trailing edge. */
    record Side(DoubleUnaryOperator x, DoubleUnaryOperator y) {}

    /** Number of points, both corners of the trailing edge counted though they be one place. */
    public int points() {
        return x.length;
    }

    public double x(int i) {
        return x[i];
    }

    public double y(int i) {
        return y[i];
    }

    /** Length of the panel from point i to the next. */
    public double length(int i) {
        return StrictMath.hypot(x[i + 1] - x[i], y[i + 1] - y[i]);
    }

    /** Area inside, positive. */
    public double area() {
        double twice = 0;
        for (int i = 0; i < x.length; i++) {
            int next = (i + 1) % x.length;
            twice += x[i] * y[next] - x[next] * y[i];
        }
        return 0.5 * twice;
    }

    /** Enlarged about the origin. */
    public Contour scaled(double factor) {
        if (!(factor > 0)) {
            throw new IllegalArgumentException("a contour is scaled by a positive factor, not " + factor);
        }
        return mapped((px, py) -> factor * px, (px, py) -> factor * py);
    }

    public Contour moved(double dx, double dy) {
        return mapped((px, py) -> px + dx, (px, py) -> py + dy);
    }

    /** Turned about a point by an angle (rad), positive: trailing edge down, nose up. */
    public Contour turned(double angle, double aboutX, double aboutY) {
        double cos = StrictMath.cos(angle);
        double sin = StrictMath.sin(angle);
        return mapped(
                (px, py) -> aboutX + (cos * (px - aboutX) + sin * (py - aboutY)),
                (px, py) -> aboutY + (cos * (py - aboutY) - sin * (px - aboutX)));
    }

    /** Mirrored in the x axis, to the bit. */
    public Contour mirrored() {
        int n = x.length;
        double[] mx = new double[n];
        double[] my = new double[n];
        for (int i = 0; i < n; i++) {
            mx[i] = x[n - 1 - i];
            my[i] = -y[n - 1 - i];
        }
        return new Contour(mx, my);
    }

    private Contour mapped(Map toX, Map toY) {
        double[] mx = new double[x.length];
        double[] my = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            mx[i] = toX.of(x[i], y[i]);
            my[i] = toY.of(x[i], y[i]);
        }
        return new Contour(mx, my);
    }

    @FunctionalInterface
    private interface Map {
        double of(double x, double y);
    }
}
