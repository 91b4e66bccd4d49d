package trimwright.wing;

import org.jspecify.annotations.Nullable;

/**
 * A wing at a heel and a height over the water, ready to solve. Immutable; keep it while heel and height stay, since its
 * image in the sea is computed once. Pitch is taken as level.
 */
public final class PlacedWing {
    private final Wing wing;
    private final double heel;
    private final double footHeight;
    // [node][strip]: vectors from the image of a node to a strip.
    private final double[][] imageY;
    private final double[][] imageZ;
    private final double[][] imageDistance;
    private final double[][] imageBound;

    private PlacedWing(Wing wing, double heel, double footHeight) {
        this.wing = wing;
        this.heel = heel;
        this.footHeight = footHeight;
        int n = wing.strips();
        int images = hasSea() ? n : -1;
        imageY = new double[images + 1][n];
        imageZ = new double[images + 1][n];
        imageDistance = new double[images + 1][n];
        imageBound = new double[Math.max(images, 0)][n];
        for (int k = 0; k <= images; k++) {
            placeNode(k);
        }
        for (int j = 0; j < images; j++) {
            for (int i = 0; i < n; i++) {
                imageBound[j][i] = bound(i, j + 1, j);
            }
        }
    }

    private void placeNode(int k) {
        double depth = imageDepth(k);
        double across = -depth * Math.sin(heel);
        double along = wing.node(k) - depth * Math.cos(heel);
        double[] y = imageY[k];
        double[] z = imageZ[k];
        double[] distance = imageDistance[k];
        for (int i = 0; i < y.length; i++) {
            y[i] = across;
            z[i] = along - wing.stripHeight(i);
            distance[i] = Math.sqrt(y[i] * y[i] + z[i] * z[i]);
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

    /** How the solved wing answers small changes of trim and wind: exact derivatives at the solution. */
    public WingSensitivity sensitivity(StripAir air, WingSetting setting, WingSolved solved) {
        return solved.sensitivity();
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

    double[] imageY(int k) {
        return imageY[k];
    }

    double[] imageZ(int k) {
        return imageZ[k];
    }

    double[] imageDistance(int k) {
        return imageDistance[k];
    }

    /** From a node to its image (m), down through the sea. */
    double imageDepth(int k) {
        return 2 * (footHeight + wing.node(k) * Math.cos(heel));
    }

    /** Forward velocity of a strip's image's bound line at each strip, for unit circulation. */
    double[] imageBound(int j) {
        return imageBound[j];
    }

    // Bound segment from one node to another, seen from a strip; all lie in the y-z plane.
    private double bound(int strip, int from, int to) {
        double y1 = imageY[from][strip];
        double z1 = imageZ[from][strip];
        double y2 = imageY[to][strip];
        double z2 = imageZ[to][strip];
        double r1 = imageDistance[from][strip];
        double r2 = imageDistance[to][strip];
        return (r1 + r2) * (y1 * z2 - z1 * y2) / (4 * Math.PI * r1 * r2 * (r1 * r2 + y1 * y2 + z1 * z2));
    }
}
