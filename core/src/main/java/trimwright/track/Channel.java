package trimwright.track;

/** One named quantity over the time stamps of its group: SI, radians, NaN where absent. Owns its arrays. */
public final class Channel {
    private final String path;
    private final double[] values;
    private final byte[] quality;

    /**
     * @param path name, see {@link Paths}
     * @param values one per time stamp, SI; copied
     * @param quality ordinals of {@link Quality}, one per time stamp; copied
     */
    public Channel(String path, double[] values, byte[] quality) {
        if (values.length != quality.length) {
            throw new IllegalArgumentException(path + ": " + values.length + " values, " + quality.length + " marks");
        }
        this.path = path;
        this.values = values.clone();
        this.quality = quality.clone();
    }

    /** A channel whose samples are good, or absent where the value is NaN. */
    public static Channel of(String path, double[] values) {
        byte[] quality = new byte[values.length];
        for (int i = 0; i < values.length; i++) {
            quality[i] = (byte) (Double.isNaN(values[i]) ? Quality.ABSENT : Quality.GOOD).ordinal();
        }
        return new Channel(path, values, quality);
    }

    public String path() {
        return path;
    }

    public int size() {
        return values.length;
    }

    public double get(int i) {
        return values[i];
    }

    public Quality quality(int i) {
        return Quality.values()[quality[i]];
    }

    public boolean isGood(int i) {
        return quality[i] == 0;
    }

    /** A copy of all values. */
    public double[] toArray() {
        return values.clone();
    }

    /** A copy of all quality marks, as ordinals. */
    public byte[] qualityToArray() {
        return quality.clone();
    }

    /** The same values under new quality marks. */
    public Channel withQuality(byte[] marks) {
        return new Channel(path, values, marks);
    }
}
