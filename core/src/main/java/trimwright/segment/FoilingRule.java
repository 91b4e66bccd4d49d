package trimwright.segment;

/** How it is told whether the boat flies. */
public sealed interface FoilingRule {
    /**
     * By the hulls' height above the water.
     *
     * @param down at or below this the boat is down (m)
     * @param up at or above this it flies (m); in between it does as before
     */
    record ByRideHeight(double down, double up) implements FoilingRule {
        /** Down when the hulls touch, up when clear of small waves (chosen). */
        public static final ByRideHeight DEFAULT = new ByRideHeight(0.05, 0.20);
    }

    /**
     * By speed alone, for logs without ride height.
     *
     * @param down at or below this the boat is down (m/s)
     * @param up at or above this it flies (m/s)
     */
    record BySpeed(double down, double up) implements FoilingRule {}

    /** Nothing tells: no spells are found. */
    record NotTold() implements FoilingRule {}
}
