package trimwright.live;

/**
 * An instrument that was heard and cannot be used now.
 *
 * @param seconds since it last said something new (s)
 */
public record SensorFault(Sensor sensor, Kind kind, double seconds) {
    /** What is the matter. */
    public enum Kind {
        /** Nothing came for longer than it may. */
        SILENT,
        /** The same value to the last digit for longer than such an instrument can. */
        FROZEN
    }
}
