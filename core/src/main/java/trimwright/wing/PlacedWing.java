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
    private final double[] imageY;
    private final double[] imageZ;
    private final double[] imageDistance;
    private final double[] imageBound;

    private PlacedWing(Wing wing, double heel, double footHeight) {
        this.wing = wing;
        this.heel = heel;
        this.footHeight = footHeight;
        int n = hasSea() ? wing.strips() : 0;
        imageY = new double[n * (n + 1)];
        imageZ = new double[n * (n + 1)];
        imageDistance = new double[n * (n + 1)];
        imageBound = new double[n * n];
        double sin = Math.sin(heel);
        double cos = Math.cos(heel);
        for (int i = 0; i < n; i++) {
            int row = i * (n + 1);
            for (int k = 0; k <= n; k++) {
                double depth = 2 * (footHeight + wing.node(k) * cos);
                imageY[row + k] = -depth * sin;
                imageZ[row + k] = wing.node(k) - wing.stripHeight(i) - depth * cos;
                imageDistance[row + k] = Math.hypot(imageY[row + k], imageZ[row + k]);
            }
            for (int j = 0; j < n; j++) {
                imageBound[i * n + j] = bound(row + j + 1, row + j);
            }
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
        return WingSensitivity.at(this, air, setting, solved);
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

    double[] imageY() {
        return imageY;
    }

    double[] imageZ() {
        return imageZ;
    }

    double[] imageDistance() {
        return imageDistance;
    }

    /** Forward velocity of the image's bound lines at each strip, for unit circulation. */
    double[] imageBound() {
        return imageBound;
    }

    // Bound segment from one node to another, indices into the vectors from node to strip; all lie in the y-z plane.
    private double bound(int from, int to) {
        double cross = imageY[from] * imageZ[to] - imageZ[from] * imageY[to];
        double dot = imageY[from] * imageY[to] + imageZ[from] * imageZ[to];
        double r1 = imageDistance[from];
        double r2 = imageDistance[to];
        return (r1 + r2) * cross / (4 * Math.PI * r1 * r2 * (r1 * r2 + dot));
    }
}
