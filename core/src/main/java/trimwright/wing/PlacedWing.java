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
    private final double[][] imageZ;
    private final double[][] imageDistance;
    private final double[][] imageNearness;
    private final double[][] imageBound;
    private final @Nullable PlacedPlate plate;

    private PlacedWing(Wing wing, double heel, double footHeight) {
        this.wing = wing;
        this.heel = heel;
        this.footHeight = footHeight;
        int n = wing.strips();
        int images = hasSea() ? n : -1;
        imageY = new double[images + 1];
        imageZ = new double[images + 1][n];
        imageDistance = new double[images + 1][n];
        imageNearness = new double[images + 1][n];
        imageBound = new double[Math.max(images, 0)][n];
        for (int k = 0; k <= images; k++) {
            placeNode(k);
        }
        for (int j = 0; j < images; j++) {
            placeBound(j);
        }
        FootPlate below = wing.footPlate();
        plate = below == null ? null : PlacedPlate.of(this, below);
    }

    private void placeNode(int k) {
        double across = -imageDepth(k) * StrictMath.sin(heel);
        double along = wing.node(k) - imageDepth(k) * StrictMath.cos(heel);
        double[] z = imageZ[k];
        double[] distance = imageDistance[k];
        double[] nearness = imageNearness[k];
        for (int i = 0; i < z.length; i++) {
            z[i] = along - wing.stripHeight(i);
            distance[i] = Math.sqrt(across * across + z[i] * z[i]);
            nearness[i] = 1 / distance[i];
        }
        imageY[k] = across;
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

    double[] imageZ(int k) {
        return imageZ[k];
    }

    double[] imageDistance(int k) {
        return imageDistance[k];
    }

    /** One over the distance. */
    double[] imageNearness(int k) {
        return imageNearness[k];
    }

    /** From a node to its image (m), down through the sea. */
    double imageDepth(int k) {
        return 2 * (footHeight + wing.node(k) * StrictMath.cos(heel));
    }

    /** Forward velocity of a strip's image's bound line at each strip, for unit circulation. */
    double[] imageBound(int j) {
        return imageBound[j];
    }

    /** 1/(r1 r2 + r1.r2) of the ends of a strip's image, seen from each strip. */
    void boundClearance(int j, double[] to) {
        double[] z1 = imageZ[j + 1];
        double[] r1 = imageDistance[j + 1];
        double[] z2 = imageZ[j];
        double[] r2 = imageDistance[j];
        double across = imageY[j + 1] * imageY[j];
        for (int i = 0; i < to.length; i++) {
            to[i] = 1 / (r1[i] * r2[i] + across + z1[i] * z2[i]);
        }
    }

    // From node j+1 to node j; all lie in the y-z plane of the strips.
    private void placeBound(int j) {
        double[] to = imageBound[j];
        boundClearance(j, to);
        double[] z1 = imageZ[j + 1];
        double[] r1 = imageDistance[j + 1];
        double[] near1 = imageNearness[j + 1];
        double[] z2 = imageZ[j];
        double[] r2 = imageDistance[j];
        double[] near2 = imageNearness[j];
        double y1 = imageY[j + 1] / (4 * Math.PI);
        double y2 = imageY[j] / (4 * Math.PI);
        for (int i = 0; i < to.length; i++) {
            to[i] *= (r1[i] + r2[i]) * near1[i] * near2[i] * (y1 * z2[i] - z1[i] * y2);
        }
    }
}
