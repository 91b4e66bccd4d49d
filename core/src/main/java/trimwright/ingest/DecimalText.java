package trimwright.ingest;

import java.nio.charset.StandardCharsets;

/** Strict decimal numbers out of bytes, without making a text of them. */
public final class DecimalText {
    /** Powers of ten that a double holds exactly. */
    private static final double[] EXACT = new double[23];

    private static final long LARGEST_EXACT = 1L << 53;

    static {
        double power = 1;
        for (int i = 0; i < EXACT.length; i++) {
            EXACT[i] = power;
            power *= 10;
        }
    }

    private DecimalText() {}

    /**
     * The number in {@code bytes[from, to)}: sign, digits, point and digits, exponent; spaces around it are allowed.
     * NaN if it is anything else, also if empty. Correctly rounded: a whole mantissa below 2^53 and a power of ten up to
     * 22 are both exact, so their quotient has one rounding; anything longer goes to the JDK.
     *
     * @param point the byte that separates the fraction
     */
    public static double parse(byte[] bytes, int from, int to, byte point) {
        int i = from;
        int end = to;
        while (i < end && bytes[i] == ' ') {
            i++;
        }
        while (end > i && bytes[end - 1] == ' ') {
            end--;
        }
        int start = i;
        boolean negative = false;
        if (i < end && (bytes[i] == '-' || bytes[i] == '+')) {
            negative = bytes[i] == '-';
            i++;
        }
        long mantissa = 0;
        int digits = 0;
        int decimals = 0;
        boolean fraction = false;
        boolean exact = true;
        for (; i < end; i++) {
            int digit = bytes[i] - '0';
            if (digit >= 0 && digit <= 9) {
                exact &= mantissa < LARGEST_EXACT / 10;
                mantissa = mantissa * 10 + digit;
                digits++;
                if (fraction) {
                    decimals++;
                }
            } else if (bytes[i] == point && !fraction) {
                fraction = true;
            } else {
                break;
            }
        }
        if (digits == 0) {
            return Double.NaN;
        }
        if (i < end) {
            return isExponent(bytes, i, end) ? slow(bytes, start, end, point) : Double.NaN;
        }
        if (!exact || decimals >= EXACT.length) {
            return slow(bytes, start, end, point);
        }
        double value = mantissa / EXACT[decimals];
        return negative ? -value : value;
    }

    private static boolean isExponent(byte[] bytes, int from, int to) {
        int i = from + 1;
        if (bytes[from] != 'e' && bytes[from] != 'E') {
            return false;
        }
        if (i < to && (bytes[i] == '-' || bytes[i] == '+')) {
            i++;
        }
        int first = i;
        while (i < to && bytes[i] >= '0' && bytes[i] <= '9') {
            i++;
        }
        return i == to && i > first && i - first <= 3;
    }

    private static double slow(byte[] bytes, int from, int to, byte point) {
        String text = new String(bytes, from, to - from, StandardCharsets.ISO_8859_1);
        double value = Double.parseDouble(text.replace((char) point, '.'));
        return Double.isInfinite(value) ? Double.NaN : value;
    }
}
