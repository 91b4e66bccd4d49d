package trimwright.live;

/** Takes values as they are found in a stream. */
public interface Values {
    /**
     * @param boat whose it is
     * @param source device and kind of sentence
     * @param path channel, see {@link trimwright.track.Paths}
     * @param value SI; NaN is passed over
     */
    void take(String boat, String source, String path, long arrivalNanos, double value);
}
