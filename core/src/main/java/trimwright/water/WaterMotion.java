package trimwright.water;

/** The sea around a boat at one instant: where its surface is and how the water moves. */
public interface WaterMotion {
    /** Flat water at rest. */
    WaterMotion STILL = new WaterMotion() {
        @Override
        public double elevation(double north, double east) {
            return 0;
        }

        @Override
        public WaterPoint at(double north, double east, double depth) {
            return new WaterPoint(depth, 0, 0, 0);
        }
    };

    /** Height of the surface above the undisturbed one (m), at a place north and east of the origin (m). */
    double elevation(double north, double east);

    /** The water at a place north and east of the origin (m), so far below the undisturbed surface (m), negative above it. */
    WaterPoint at(double north, double east, double depth);
}
