package trimwright.weather;

/**
 * By how much the air's velocity at each height over one place differs from that at the reference height because gusts differ
 * over height; the mean wind's own profile is not in it. Straight lines between a few heights, the last value beyond them.
 */
public final class GustColumn {
    /** Gusts that are the same at every height. */
    public static final GustColumn ALIKE = new GustColumn(0, 1, new double[1], new double[1]);

    private final double lowest;
    private final double spacing;
    private final double[] north;
    private final double[] east;

    /**
     * @param lowest height (m) of the first values
     * @param spacing of the heights (m)
     * @param north difference to the north (m/s)
     * @param east difference to the east (m/s)
     */
    GustColumn(double lowest, double spacing, double[] north, double[] east) {
        this.lowest = lowest;
        this.spacing = spacing;
        this.north = north.clone();
        this.east = east.clone();
    }

    /** Difference to the north (m/s) at a height above the water (m). */
    public double north(double height) {
        return at(north, height);
    }

    /** Difference to the east (m/s) at a height above the water (m). */
    public double east(double height) {
        return at(east, height);
    }

    private double at(double[] values, double height) {
        double place = Math.max(0, Math.min(values.length - 1, (height - lowest) / spacing));
        int i = Math.max(0, Math.min(values.length - 2, (int) place));
        int next = Math.min(values.length - 1, i + 1);
        return values[i] + (place - i) * (values[next] - values[i]);
    }
}
