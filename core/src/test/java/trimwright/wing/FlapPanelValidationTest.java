package trimwright.wing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Random;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;
import trimwright.air.AirState;
import trimwright.boat.FlapPanels;
import trimwright.boat.FlapPanels.Make;
import trimwright.evidence.ValidatedAgainst;

/** Wings whose flap has several panels. */
class FlapPanelValidationTest {
    private static final double SPAN = 10;

    @Test
    @ValidatedAgainst(
            source = "PRANDTL-SERIES",
            where =
                    "rectangular wing, aspect ratio 10, flap put over from the foot to 0.3, 0.5, 0.7 of the span: lift, moment",
            tolerance = "0.3 percent of either: 60 strips against a series of 400 terms")
    void aStepOfFlapAngleGivesTheLiftAndMomentOfPrandtlsEquation() {
        for (double share : new double[] {0.3, 0.5, 0.7}) {
            double joint = share * SPAN;
            Wing wing = Wing.of(
                    TestWings.withPanels(TestWings.tapered(SPAN, 1, 1), new FlapPanels(List.of(joint), Make.STIFF)),
                    TestWings.THIN,
                    60);
            double camber = 0.01;
            WingSolved solved = (WingSolved) wing.inFreeAir()
                    .solve(StripAir.uniform(60, 10, 0, AirState.STANDARD), new WingSetting(0, camber, camber, 0.5));
            double q = 0.5 * AirState.STANDARD.density() * 100 * SPAN;
            double effectiveness = 0.7478; // thin aerofoil, flap share 0.4
            double[] a = series(Math.acos(1 - 2 * share), effectiveness * camber, 400);
            double lift = Math.PI * SPAN * a[0];
            double moment = -Math.PI * SPAN * SPAN * a[1] / 4;
            assertEquals(lift, -solved.force().y() / q, 3e-3 * lift, "lift, " + share);
            double aboutMiddle =
                    solved.force().k() / q - SPAN / 2 * solved.force().y() / q;
            assertEquals(moment, -aboutMiddle, 3e-3 * Math.abs(moment), "moment, " + share);
        }
    }

    @Test
    void stripsEndAtJointsAndPanelsFollowTheirMake() {
        List<Double> joints = List.of(7.0, 9.5, 18.0);
        for (Make make : Make.values()) {
            Wing wing = Wing.of(TestWings.withPanels(TestWings.real(), new FlapPanels(joints, make)), 30);
            assertEquals(4, wing.flapPanels());
            for (int i = 1; i < 30; i++) {
                if (wing.flapPanel(i) != wing.flapPanel(i - 1)) {
                    assertEquals(joints.get(wing.flapPanel(i - 1)), wing.node(i), 1e-12);
                } else if (make == Make.STIFF) {
                    assertEquals(wing.flapShare(i - 1), wing.flapShare(i), 0.0);
                }
            }
            assertEquals(make == Make.STIFF ? 0 : wing.stripHeight(0) / 26, wing.flapShare(0), 1e-15);
            assertEquals(make == Make.STIFF ? 1 : wing.stripHeight(29) / 26, wing.flapShare(29), 1e-15);
        }
        assertThrows(
                IllegalArgumentException.class,
                () -> TestWings.withPanels(TestWings.real(), new FlapPanels(List.of(26.0), Make.STIFF)));
        assertThrows(IllegalArgumentException.class, () -> new FlapPanels(List.of(9.0, 8.0), Make.STIFF));
    }

    /** Twisting panels only move strips: the loads must stay. */
    @Test
    void jointsOfATwistingFlapHardlyMoveTheLoads() {
        Random random = new Random(21);
        Wing single = Wing.of(TestWings.real(), 40);
        Wing jointed =
                Wing.of(TestWings.withPanels(TestWings.real(), new FlapPanels(List.of(9.0, 17.0), Make.TWISTING)), 40);
        for (int i = 0; i < 50; i++) {
            double awa = 0.3 + 0.2 * random.nextDouble();
            StripAir air = StripAir.uniform(40, 15, awa, AirState.STANDARD);
            WingSetting setting = new WingSetting(awa - 0.1, 0.4 * random.nextDouble(), 0.2, 0.5);
            WingForce a = ((WingSolved) single.placedAt(0, 2.5).solve(air, setting)).force();
            WingSolved solved = (WingSolved) jointed.placedAt(0, 2.5).solve(air, setting);
            WingForce b = solved.force();
            assertEquals(a.y(), b.y(), 2e-3 * Math.abs(a.y()));
            assertEquals(a.k(), b.k(), 2e-3 * Math.abs(a.k()));
            double sum = 0;
            for (int strip = 0; strip < 40; strip++) {
                sum += solved.hingeMoment(strip);
            }
            double panels = solved.panelHingeMoment(0) + solved.panelHingeMoment(1) + solved.panelHingeMoment(2);
            assertEquals(sum, panels, 1e-9 * Math.abs(sum));
        }
    }

    /**
     * Prandtl's equation by Galerkin's method: circulation 2 b V sum A_n sin n t over height b/2 (1 - cos t), incidence
     * {@code alpha} from t = 0 to {@code end}, chord 1, lift slope 2 pi. The first two terms give lift and moment.
     */
    private static double[] series(double end, double alpha, int terms) {
        double mu = 2 * Math.PI / (4 * SPAN);
        double[][] matrix = new double[terms][terms];
        double[] right = new double[terms];
        for (int m = 1; m <= terms; m++) {
            for (int n = 1; n <= terms; n++) {
                matrix[m - 1][n - 1] =
                        0.5 * (sineCosine(n - m) - sineCosine(n + m)) + (n == m ? mu * n * Math.PI / 2 : 0);
            }
            double below = m == 1 ? end : Math.sin((m - 1) * end) / (m - 1);
            right[m - 1] = mu * alpha * 0.5 * (below - Math.sin((m + 1) * end) / (m + 1));
        }
        RealVector a = new LUDecomposition(new Array2DRowRealMatrix(matrix, false))
                .getSolver()
                .solve(new org.hipparchus.linear.ArrayRealVector(right, false));
        return new double[] {a.getEntry(0), a.getEntry(1)};
    }

    /** Integral of sin t cos k t over 0 to pi. */
    private static double sineCosine(int k) {
        return k % 2 == 0 ? 2.0 / (1 - (double) k * k) : 0;
    }
}
