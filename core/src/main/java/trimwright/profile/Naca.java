package trimwright.profile;

import org.jspecify.annotations.Nullable;

/**
 * NACA aerofoils of the 4-digit and the plain 5-digit family, chord 1 from (0, 0) to (1, 0).
 *
 * <p>Source: NACA-FAMILIES. The last coefficient of thickness is -0.1015, or -0.1036 for a sharp trailing edge. Left out: 5-digit lines with reflex,
 * modified leading edges.
 */
public final class Naca {
    /** Of 5-digit lines 210 to 250: where the line's cubic ends, and its coefficient at a design lift of 0.3. */
    private static final double[][] FIVE_DIGIT_LINES = {
        {0.0580, 361.4}, {0.1260, 51.64}, {0.2025, 15.957}, {0.2900, 6.643}, {0.3910, 3.230}
    };

    private final double thickness;
    private final CamberLine line;

    private Naca(double thickness, CamberLine line) {
        this.thickness = thickness;
        this.line = line;
    }

    /** Of the digits after the word NACA; null if they name no member of the two families. */
    public static @Nullable Naca find(String digits) {
        if (!digits.matches("[0-9]{4,5}")) {
            return null;
        }
        double thickness = Integer.parseInt(digits.substring(digits.length() - 2)) / 100.0;
        if (!(thickness >= 0.01 && thickness <= 0.4)) {
            return null;
        }
        CamberLine line = digits.length() == 4
                ? fourDigitLine(digits.charAt(0) - '0', digits.charAt(1) - '0')
                : fiveDigitLine(digits.charAt(0) - '0', digits.charAt(1) - '0', digits.charAt(2) - '0');
        return line == null ? null : new Naca(thickness, line);
    }

    /** Symmetric, of this thickness over chord (-), above 0, up to 0.4. */
    public static Naca symmetric(double thickness) {
        if (!(thickness > 0 && thickness <= 0.4)) {
            throw new IllegalArgumentException("thickness over chord is above 0 and at most 0.4, not " + thickness);
        }
        return new Naca(thickness, CamberLine.STRAIGHT);
    }

    private static @Nullable CamberLine fourDigitLine(int hundredths, int tenths) {
        if (hundredths == 0 && tenths == 0) {
            return CamberLine.STRAIGHT;
        }
        if (hundredths == 0 || tenths == 0) {
            return null;
        }
        double m = hundredths / 100.0;
        double p = tenths / 10.0;
        return new CamberLine(
                x -> x < p
                        ? m / (p * p) * (2 * p * x - x * x)
                        : m / ((1 - p) * (1 - p)) * (1 - 2 * p + 2 * p * x - x * x),
                x -> x < p ? 2 * m / (p * p) * (p - x) : 2 * m / ((1 - p) * (1 - p)) * (p - x));
    }

    private static @Nullable CamberLine fiveDigitLine(int design, int twentieths, int reflex) {
        if (design == 0 || reflex != 0 || twentieths < 1 || twentieths > FIVE_DIGIT_LINES.length) {
            return null;
        }
        double end = FIVE_DIGIT_LINES[twentieths - 1][0];
        double k = FIVE_DIGIT_LINES[twentieths - 1][1] * design / 2.0 / 6;
        return new CamberLine(
                x -> x < end
                        ? k * (x * x * x - 3 * end * x * x + end * end * (3 - end) * x)
                        : k * end * end * end * (1 - x),
                x -> x < end ? k * (3 * x * x - 6 * end * x + end * end * (3 - end)) : -k * end * end * end);
    }

    /** Half thickness over chord at a fraction of the chord. */
    private double halfThickness(double x, TrailingEdge edge) {
        double last = edge == TrailingEdge.SHARP ? -0.1036 : -0.1015;
        double polynomial = -0.1260 + x * (-0.3516 + x * (0.2843 + x * last));
        return x == 1 && edge == TrailingEdge.SHARP ? 0 : 5 * thickness * (0.2969 * Math.sqrt(x) + x * polynomial);
    }

    /** The outline in so many panels, even, cosine spaced along the chord. */
    public Contour contour(int panels, TrailingEdge edge) {
        return Contour.cosine(panels, side(1, edge), side(-1, edge));
    }

    private Contour.Side side(int sign, TrailingEdge edge) {
        return new Contour.Side(
                x -> x - sign * halfThickness(x, edge) * line.sine(x),
                x -> line.height(x) + sign * halfThickness(x, edge) * line.cosine(x));
    }
}
