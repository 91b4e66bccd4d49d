package trimwright.hull;

import trimwright.units.Units;
import trimwright.water.FrictionLine;

/**
 * Resistance of a round-bilge catamaran by the regressions of the Southampton series (Molland, Turnock and Hudson, ch.
 * 10). Measured for Froude numbers 0.2 to 1.0, length over the cube root of volume ("slenderness") 6.3 to 9.5, hull
 * spacing over length 0.2 to 0.5. Beyond in slenderness the formulas are continued; docs/theory/hull.md says why.
 *
 * <p>The series' residuary coefficient holds the form drag at the models' Reynolds number; it is taken out here (eq.
 * 10.64), so that form drag is counted once.
 */
public final class RoundBilgeSeries {
    static final double SLENDERNESS_MAX = 9.5;

    /** First Froude number of the regressions and their step (-). */
    private static final int FIRST = 4;

    private static final int LAST = 10;

    /** Table 10.10: 1000 CR = a slenderness^n of one hull, Froude 0.4 to 1.0. */
    private static final double[][] RESIDUARY = {
        {152, -1.76}, {2225, -3.00}, {1702, -2.96}, {896, -2.76}, {533, -2.58}, {273, -2.31}, {122, -1.96}
    };

    /** Table 10.11: interference factor a slenderness^n for spacing over length 0.3, 0.4, 0.5. */
    private static final double[][][] INTERFERENCE = {
        {{.941, .17}, {1.598, -.05}, {1.042, .09}, {.545, .39}, {.338, .61}, {.300, .67}, {.393, .55}},
        {{.730, .28}, {.856, .20}, {.599, .34}, {.456, .47}, {.368, .57}, {.352, .60}, {.541, .40}},
        {{.645, .32}, {.485, .45}, {.555, .36}, {.518, .41}, {.426, .51}, {.414, .52}, {.533, .39}}
    };

    /** Length of the models (m) and viscosity of the tank's water at 15 degrees (m2/s). */
    private static final double MODEL_LENGTH = 1.6;

    private static final double MODEL_VISCOSITY = 1.1386e-6;

    /** Friction of the models at the tabulated Froude numbers (-). */
    private static final double[] MODEL_FRICTION = modelFriction();

    /** Form factors, eq. 10.58 and 10.59. */
    static final double ALONE = 2.76;

    static final double PAIRED = 3.03;
    static final double FORM_POWER = -0.40;

    private RoundBilgeSeries() {}

    /** Residuary coefficient of one hull alone (-) at a tabulated Froude number of 0.4 to 1.0 in tenths. */
    public static double residuary(int froudeTenths, double slenderness) {
        double[] row = RESIDUARY[froudeTenths - FIRST];
        return 1e-3 * row[0] * StrictMath.pow(slenderness, row[1]);
    }

    /** Residuary drag of two hulls over that of the same hulls apart (-), spacing over length held to 0.3 to 0.5. */
    public static double interference(int froudeTenths, double slenderness, double spacingRatio) {
        double at = Math.max(0, Math.min(2, (spacingRatio - 0.3) * 10));
        int i = Math.min(1, (int) at);
        double[] near = INTERFERENCE[i][froudeTenths - FIRST];
        double[] far = INTERFERENCE[i + 1][froudeTenths - FIRST];
        double t = at - i;
        return (1 - t) * near[0] * StrictMath.pow(slenderness, near[1])
                + t * far[0] * StrictMath.pow(slenderness, far[1]);
    }

    /** Form factor 1 + k of one hull alone (-), eq. 10.58. */
    public static double formFactorAlone(double slenderness) {
        return ALONE * StrictMath.pow(slenderness, FORM_POWER);
    }

    /** Form factor 1 + beta k of a catamaran (-), eq. 10.59. */
    public static double formFactorPaired(double slenderness) {
        return PAIRED * StrictMath.pow(slenderness, FORM_POWER);
    }

    /** Wetted area over the root of volume times length, one hull at rest (-); eq. 10.89. */
    public static double wettedAreaCoefficient(double beamOverDraft, double blockCoefficient) {
        double r = beamOverDraft;
        double cb = blockCoefficient;
        return 6.554
                - 1.226 * r
                + 0.216 * r * r
                + cb * (-15.409 + 4.468 * r - 0.694 * r * r)
                + cb * cb * (15.404 - 4.527 * r + 0.655 * r * r);
    }

    /**
     * Form factor and wave-making coefficient on wetted area (-), with their slopes. Waves: residuary less the models' form
     * drag. Below Froude 0.4 they are scaled with the fourth power of the Froude number (assumed), above 1.0 held.
     *
     * @param paired 1 with an equal second hull in the water, 0 without, between where it is lightly loaded (-)
     */
    static SeriesPoint at(double froude, double slenderness, double spacingRatio, double paired) {
        SeriesPoint point = new SeriesPoint(slenderness, paired);
        double at = Math.min(froude * 10, LAST);
        int i = Math.min((int) at, LAST - 1);
        double t = at - i;
        double r = 1 - t;
        // Cubic through the nodes with slopes from their neighbours (Catmull and Rom)
        add(point, i - 1, -0.5 * r * r * t, 0.5 * r * (3 * t - 1), spacingRatio);
        add(point, i, r * r * (1 + 2 * t) + 0.5 * t * t * r, 0.5 * t * (2 - 3 * t) - 6 * t * r, spacingRatio);
        add(point, i + 1, t * t * (1 + 2 * r) + 0.5 * r * r * t, 6 * t * r + 0.5 * r * (1 - 3 * t), spacingRatio);
        add(point, i + 2, -0.5 * t * t * r, -0.5 * t * (2 - 3 * t), spacingRatio);
        point.endWaves(froude * 10 < LAST ? 10 : 0);
        return point;
    }

    /** Adds a node with its weight and that weight's slope; beyond both ends the table is mirrored. */
    private static void add(SeriesPoint point, int tenths, double weight, double weightSlope, double spacingRatio) {
        int i = Math.abs(tenths > LAST ? 2 * LAST - tenths : tenths);
        double slow = i < FIRST ? square(square((double) i / FIRST)) : 1;
        int from = Math.max(i, FIRST);
        double[] row = RESIDUARY[from - FIRST];
        double at = Math.max(0, Math.min(2, (spacingRatio - 0.3) * 10));
        int k = Math.min(1, (int) at);
        double[] near = INTERFERENCE[k][from - FIRST];
        double[] far = INTERFERENCE[k + 1][from - FIRST];
        double t = at - k;
        double alone = 1e-3 * row[0] * point.power(row[1]);
        double low = (1 - t) * near[0] * point.power(near[1]);
        double high = t * far[0] * point.power(far[1]);
        double pair = low + high;
        double pairSlope = (near[1] * low + far[1] * high) / point.slenderness;
        double both = 1 + point.paired * (pair - 1);
        double value = both * alone - (point.form - 1) * MODEL_FRICTION[from];
        double bySlenderness = point.paired * pairSlope * alone
                + both * alone * row[1] / point.slenderness
                - point.formBySlenderness * MODEL_FRICTION[from];
        double byPaired = (pair - 1) * alone - point.formByPaired * MODEL_FRICTION[from];
        point.addWaves(slow * weight, slow * weightSlope, value, bySlenderness, byPaired);
    }

    private static double square(double a) {
        return a * a;
    }

    private static double[] modelFriction() {
        double[] friction = new double[LAST + 1];
        for (int i = 0; i <= LAST; i++) {
            double speed = 0.1 * i * Math.sqrt(Units.G * MODEL_LENGTH);
            friction[i] = FrictionLine.coefficient(speed * MODEL_LENGTH / MODEL_VISCOSITY);
        }
        return friction;
    }
}
