package trimwright.setup;

/**
 * One leg of the course to be sailed.
 *
 * @param bearing from its start to its end (rad), clockwise from north
 * @param length over ground (m), above 0
 */
public record RaceLeg(double bearing, double length) {
    public RaceLeg {
        if (!(length > 0)) {
            throw new IllegalArgumentException("a leg of " + length + " m");
        }
    }
}
