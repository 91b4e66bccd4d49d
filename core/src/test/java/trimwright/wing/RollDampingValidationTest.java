package trimwright.wing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import trimwright.air.AirState;
import trimwright.boat.WingSpec;
import trimwright.evidence.ValidatedAgainst;

/** What a rolling wing sets against its roll, by the air that each strip meets. */
class RollDampingValidationTest {
    private static final AirState AIR = AirState.STANDARD;
    private static final double SPEED = 15;
    private static final double RATE = 1e-3;
    private static final int STRIPS = 60;

    /**
     * Glauert's series for an elliptic wing that rolls about its middle has one term, A2: moment over that of strips which do not
     * feel each other AR / (AR + 4). Strips: 2 pi q/V p times the integral of chord times distance squared, pi/8 c0 (b/2)^3.
     */
    @Test
    @ValidatedAgainst(
            source = "LIFTING-LINE-SERIES",
            where =
                    "elliptic wing in roll, one term of Glauert's series worked by hand: strip theory times AR / (AR + 4)",
            tolerance = "0.6 percent: 60 strips with ends cut off")
    void anEllipticWingFollowsStripTheoryTimesItsFactor() {
        for (double span : new double[] {6, 10}) {
            double chord = 1;
            Wing wing = Wing.of(TestWings.elliptic(span, chord), TestWings.THIN, STRIPS);
            double[] y = new double[STRIPS];
            for (int i = 0; i < STRIPS; i++) {
                y[i] = RATE * (wing.stripHeight(i) - span / 2);
            }
            WingForce force = solve(wing.inFreeAir(), y).force();
            double moment = force.k() + span / 2 * force.y();
            double area = Math.PI / 4 * span * chord;
            double aspect = span * span / area;
            double strips =
                    0.5 * AIR.density() * SPEED * 2 * Math.PI * RATE * Math.PI / 8 * chord * Math.pow(span / 2, 3);
            assertEquals(aspect / (aspect + 4), Math.abs(moment) / strips, 6e-3, "aspect ratio " + aspect);
        }
    }

    /** The boat's wing rolls about its foot over the sea: less than strips alone, more than half of that; always against the roll. */
    @Test
    @ValidatedAgainst(
            source = "LIFTING-LINE-SERIES",
            where =
                    "strip theory as the upper bound of what a lifting line in roll gives; AR / (AR + 4) of a wing about its middle as the lower",
            tolerance = "bounds")
    void aBoatsWingLiesBetweenItsBounds() {
        WingSpec spec = TestWings.real();
        Wing wing = Wing.of(spec, TestWings.THIN, STRIPS);
        double[] y = new double[STRIPS];
        double strips = 0;
        for (int i = 0; i < STRIPS; i++) {
            double arm = spec.footHeight() + wing.stripHeight(i);
            y[i] = RATE * arm;
            strips += 0.5
                    * AIR.density()
                    * SPEED
                    * 2
                    * Math.PI
                    * RATE
                    * wing.stripChord(i)
                    * wing.stripWidth(i)
                    * arm
                    * arm;
        }
        WingForce force = solve(wing.placedAt(0, 2.5), y).force();
        // Air from port at the head pushes to starboard: starboard side down, against a roll to port.
        double moment = force.k() - -spec.footHeight() * force.y();
        double aspect = wing.span() * wing.span() / wing.area();
        double share = moment / strips;
        assertTrue(share < 1 && share > aspect / (aspect + 4), share + " of strip theory");
    }

    private static WingSolved solve(PlacedWing placed, double[] aside) {
        double[] x = new double[aside.length];
        java.util.Arrays.fill(x, -SPEED);
        StripAir air = new StripAir(x, aside, new double[aside.length], AIR);
        return assertInstanceOf(WingSolved.class, placed.solve(air, new WingSetting(0, 0, 0, 0.5)));
    }
}
