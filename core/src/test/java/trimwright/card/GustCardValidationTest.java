package trimwright.card;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import org.junit.jupiter.api.Test;
import trimwright.evidence.ValidatedAgainst;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.units.Units;

class GustCardValidationTest {
    /** Charnock's constant of the open sea (IEC 61400-3), von Karman's constant, gravity. */
    private static final double CHARNOCK = 0.011;

    private static final double KARMAN = 0.4;

    private static final double GRAVITY = 9.81;

    /** Wind (m/s) at a height (m) over the sea for a wind at 10 m, by the log law with Charnock's roughness. */
    private static double windAt(double height, double wind) {
        double friction = 0.04 * wind;
        for (int i = 0; i < 200; i++) {
            double roughness = CHARNOCK * friction * friction / GRAVITY;
            friction = KARMAN * wind / Math.log(10 / roughness);
        }
        return friction / KARMAN * Math.log(height * GRAVITY / (CHARNOCK * friction * friction));
    }

    /**
     * A wing that stands still meets a gust at the same incidence, so its moment grows as the dynamic pressure: closed form.
     * From foot to head that ratio differs by under 0.3 per cent in the log law; the rest is Reynolds number.
     */
    @Test
    @ValidatedAgainst(
            source = "CHARNOCK",
            where = "log law worked out in the test; moment over dynamic pressure constant at fixed incidence",
            tolerance = "1 per cent: the lift at fixed incidence grows a little with Reynolds number")
    void aStandingWingsMomentGrowsAsTheDynamicPressure() {
        SailingState still = SailingState.upright()
                .with(Variable.BOAT_SPEED, 1e-6)
                .with(Variable.TRUE_WIND_ANGLE, Units.fromDegrees(30))
                .with(Variable.SHEET, Units.fromDegrees(24))
                .with(Variable.CAMBER, Units.fromDegrees(15))
                .with(Variable.TWIST, Units.fromDegrees(10))
                .with(Variable.RIDE_HEIGHT, 0.8);
        for (double windKn : new double[] {10, 14, 18}) {
            double wind = Units.fromKnots(windKn);
            for (double gustKn : new double[] {-4, 2, 6}) {
                double gust = wind + Units.fromKnots(gustKn);
                double before = moment(still, wind);
                double after = moment(still, gust);
                double ratio = Math.pow(windAt(14, gust) / windAt(14, wind), 2);
                assertEquals(ratio, after / before, 0.01 * ratio, windKn + " kn, " + gustKn);
            }
        }
    }

    private static double moment(SailingState state, double wind) {
        TrimmedWing.Held held = new TrimmedWing(DemoTargets.PLATFORM, state, wind).asTrimmed();
        assertNotNull(held);
        return held.heelingMoment();
    }
}
