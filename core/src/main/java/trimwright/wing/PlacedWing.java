package trimwright.wing;

import org.jspecify.annotations.Nullable;
import trimwright.boat.FootPlate;

/**
 * A wing at a heel and a height over the water, ready to solve. Immutable; keep it while heel and height stay, since its
 * image in the sea is computed once. Pitch is taken as level.
 */
public final class PlacedWing {
    private final Wing wing;
    private final double heel;
    private final double footHeight;
    // [node][strip]: from the image of a node to a strip; across, the same for all strips.
    private final double[] imageY;
    private final double[] imageAlong;
    private final double[] imageDepth;
    private final double[][] imageNearness;
    private final double[][] imageBound;
    private final double[] lineDistance;
    private final @Nullable PlacedPlate plate;

    private PlacedWing(Wing wing, double heel, double footHeight) {
        this.wing = wing;
        this.heel = heel;
        this.footHeight = footHeight;
        int n = wing.strips();
        int images = hasSea() ? n : -1;
        imageY = new double[images + 1];
        imageAlong = new double[images + 1];
        imageDepth = new double[images + 1];
        imageNearness = Rows.of(images + 1, n);
        imageBound = Rows.of(images + 1, n);
        lineDistance = new double[n];
        if (hasSea()) {
            placeImage(StrictMath.sin(heel), StrictMath.cos(heel));
        }
        FootPlate below = wing.footPlate();
        plate = below == null ? null : PlacedPlate.of(this, below);
    }

    private void placeImage(double sin, double cos) {
        for (int i = 0; i < lineDistance.length; i++) {
            lineDistance[i] = 2 * (footHeight + wing.stripHeight(i) * cos) * sin;
        }
        double lineY = 2 * sin * cos;
        double lineZ = cos * cos - sin * sin;
        for (int k = 0; k < imageY.length; k++) {
            double depth = 2 * (footHeight + wing.node(k) * cos);
            imageDepth[k] = depth;
            imageY[k] = -depth * sin;
            imageAlong[k] = wing.node(k) - depth * cos;
            placeNode(k, lineY, lineZ);
        }
    }

    private void placeNode(int k, double lineY, double lineZ) {
        double along = imageAlong[k];
        double across = imageY[k];
        double[] height = wing.stripHeights();
        double[] nearness = imageNearness[k];
        double[] bound = imageBound[k];
        double aside = across * lineY;
        double across2 = across * across;
        for (int i = 0; i < height.length; i++) {
            double z = along - height[i];
            nearness[i] = 1 / Math.sqrt(across2 + z * z);
        }
        for (int i = 0; i < height.length; i++) {
            double z = along - height[i];
            bound[i] = 1 / ((across2 + z * z) * nearness[i] - aside - lineZ * z);
        }
    }

    static PlacedWing overSea(Wing wing, double heel, double footHeight) {
        if (!(Math.abs(heel) <= 1.4) || !(footHeight > 0 && footHeight < 1000)) {
            throw new IllegalArgumentException(
                    "a wing stands at a heel of -1.4 to 1.4 rad with its foot above the water," + " not at " + heel
                            + " rad and " + footHeight + " m");
        }
        return new PlacedWing(wing, heel, footHeight);
    }

    static PlacedWing inFreeAir(Wing wing) {
        return new PlacedWing(wing, 0, Double.POSITIVE_INFINITY);
    }

    /** Solves from scratch. */
    public WingAnswer solve(StripAir air, WingSetting setting) {
        return solve(air, setting, null);
    }

    /** Solves from the flow of a state nearby, or from scratch if null. Same answer within 1e-10, sooner. */
    public WingAnswer solve(StripAir air, WingSetting setting, @Nullable WingSolved start) {
        return WingEquations.solve(this, air, setting, start);
    }

    /**
     * What the solved wing adds to the air at a point (m, body axes from the step), its image in the sea included. Chords
     * count as lines, so points nearer than about half a chord to the wing are only roughly served.
     */
    public AirVelocity velocityAt(WingSolved solved, double x, double y, double z) {
        return InducedVelocity.at(this, solved, x, y, z);
    }

    public Wing wing() {
        return wing;
    }

    /** Signed roll (rad). */
    public double heel() {
        return heel;
    }

    /** Foot above the water (m), infinite in free air. */
    public double footHeight() {
        return footHeight;
    }

    boolean hasSea() {
        return footHeight < Double.POSITIVE_INFINITY;
    }

    /** The plate under the foot, or null. */
    @Nullable
    PlacedPlate plate() {
        return plate;
    }

    double imageY(int k) {
        return imageY[k];
    }

    /** Along the wing from a node's image to its foot (m): less a strip's height, down to that strip. */
    double imageAlong(int k) {
        return imageAlong[k];
    }

    /** One over the distance of a node's image from each strip (1/m). */
    double[] imageNearness(int k) {
        return imageNearness[k];
    }

    /** From a node to its image (m), down through the sea. */
    double imageDepth(int k) {
        return imageDepth[k];
    }

    /**
     * 1/(r - t.r) of a node's image, seen from each strip, t along the image from foot to head. The image's bound line is a
     * straight one, so each node stands for a line that goes on from it along t without end: the velocity of that of unit
     * strength is {@link #lineDistance}/(4 pi r) of this, forward.
     */
    double[] imageBound(int k) {
        return imageBound[k];
    }

    /** Distance of each strip from the straight line that its image lies on (m), signed as the heel. */
    double[] lineDistance() {
        return lineDistance;
    }
}
