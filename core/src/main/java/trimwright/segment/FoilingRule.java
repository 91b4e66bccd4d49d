package trimwright.segment;

import org.jspecify.annotations.Nullable;

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
    record BySpeed(double down, double up) implements FoilingRule {
        /** Above the slowest foiling speed by this factor a boat counts as up (chosen: no flutter at the border). */
        private static final double CLEARLY_UP = 1.05;

        /** Of the slowest speed at which a boat foils (m/s); null where that is infinite. */
        public static @Nullable BySpeed above(double slowest) {
            return Double.isInfinite(slowest) ? null : new BySpeed(slowest, CLEARLY_UP * slowest);
        }
    }

    /** Nothing tells: no spells are found. */
    record NotTold() implements FoilingRule {}
}
