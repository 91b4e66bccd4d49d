package trimwright.section;

/**
 * Computed answers of one outline at one Reynolds number, over flap angle and place between both stalls.
 *
 * <p>By flap angle: the angles of attack of stall on either side, and each {@link SectionQuantity} at the places of the
 * {@link TableGrid}.
 */
public final class SectionColumn {
    private final double[] low;
    private final double[] high;
    private final double[][][] value;
    private final int filled;

    /**
     * Keeps the arrays.
     *
     * @param low by flap angle: stall at negative lift (rad)
     * @param high by flap angle: stall at positive lift (rad), above low
     * @param value by quantity, flap angle, place
     * @param filled number of places without a computed answer of their own
     */
    public SectionColumn(double[] low, double[] high, double[][][] value, int filled) {
        this.low = low;
        this.high = high;
        this.value = value;
        this.filled = filled;
        if (value.length != SectionQuantity.values().length) {
            throw new IllegalArgumentException("a column has " + SectionQuantity.values().length + " quantities");
        }
        for (int j = 0; j < low.length; j++) {
            if (!(low[j] < high[j])) {
                throw new IllegalArgumentException("stall at " + low[j] + " and " + high[j] + " rad leaves no range");
            }
            for (double[][] quantity : value) {
                for (double number : quantity[j]) {
                    if (!(Math.abs(number) < Double.POSITIVE_INFINITY)) {
                        throw new IllegalArgumentException("a place of the column has no number");
                    }
                }
            }
        }
    }

    /** Angle of attack (rad) of stall at negative lift, at a flap angle of the grid. */
    public double low(int flap) {
        return low[flap];
    }

    /** Angle of attack (rad) of stall at positive lift. */
    public double high(int flap) {
        return high[flap];
    }

    public double value(SectionQuantity quantity, int flap, int place) {
        return value[quantity.ordinal()][flap][place];
    }

    /** Flap angles. */
    public int flaps() {
        return low.length;
    }

    /** Places with no computed answer of their own, filled from their neighbours. */
    public int filled() {
        return filled;
    }
}
