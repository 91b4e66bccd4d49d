package trimwright.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import trimwright.boat.Boat;
import trimwright.boat.Side;
import trimwright.boat.Whimbrel14;
import trimwright.evidence.ValidatedAgainst;
import trimwright.foil.Flow;
import trimwright.foil.FoilLoad;
import trimwright.foil.RudderModel;
import trimwright.water.WaterState;

/** A rudder of the demo boat, flown so that half of it is in the air. */
class StrutAirValidationTest {
    private static final Boat BOAT = Whimbrel14.boat();
    private static final double STEP = MotionModel.STEP;
    private static final double DEPTH = 0.9;

    private final RudderModel rudder =
            new RudderModel(BOAT.rudder(), BOAT.hulls().spacing() / 2, Side.PORT, WaterState.sea(288.15));
    private final StrutAir air = new StrutAir();
    private final FoilLoad load = new FoilLoad();

    @Test
    void aShortPeakDrawsNoAir() {
        steer(12, 10, 0.1);
        assertTrue(load.ventilationRatio() > 1, "asks for more than inception: " + load.ventilationRatio());
        steer(12, 2, 0.1);
        assertFalse(air.isIn());
        assertEquals(1, air.kept(), 0);
    }

    @Test
    @ValidatedAgainst(
            source = "VENTILATION",
            where =
                    "a fully ventilated strut has a quarter of the lift slope, and air leaves at a much lower angle than it came",
            tolerance = "1e-12 of the lift below inception's; angles of coming and going by the model's own rules")
    void liftOverAngleIsALoop() {
        double[] up = new double[13];
        double[] down = new double[13];
        for (int degrees = 0; degrees <= 12; degrees++) {
            steer(12, degrees, 1);
            up[degrees] = load.lift();
        }
        assertTrue(air.isIn());
        for (int degrees = 12; degrees >= 0; degrees--) {
            steer(12, degrees, 1);
            down[degrees] = load.lift();
        }
        assertFalse(air.isIn());
        assertEquals(up[1], down[1], 1e-12 * Math.abs(up[1]));
        int apart = 0;
        for (int degrees = 1; degrees <= 12; degrees++) {
            double share = down[degrees] / up[degrees];
            assertTrue(share <= 1 + 1e-12 && share > 0.24, degrees + " deg: " + share);
            apart += share < 0.3 ? 1 : 0;
        }
        assertTrue(apart >= 2, apart + " degrees at which the way back has a quarter of the lift");
    }

    @Test
    void airGoesWhereTheBoatIsFarSlower() {
        steer(14, 9, 1);
        assertTrue(air.isIn());
        steer(9.5, 6, 0.5);
        assertTrue(air.isIn());
        steer(8, 6, 0.5);
        assertTrue(load.ventilationRatio() > 0.5, "lift alone would keep it: " + load.ventilationRatio());
        assertFalse(air.isIn());
        assertEquals(1, air.kept(), 0);
    }

    @Test
    void aCopyGoesOnAsTheOther() {
        steer(12, 10, 0.2);
        StrutAir other = air.copy();
        steer(12, 10, 0.1);
        FoilLoad its = new FoilLoad();
        for (int i = 0; i < 5; i++) {
            rudder.strut(new Flow(-12, 0, 0, DEPTH), Math.toRadians(10), other.kept(), its);
            other.note(its, 12, STEP);
        }
        assertEquals(air.kept(), other.kept(), 0);
    }

    private void steer(double speed, double degrees, double seconds) {
        for (int i = 0; i < Math.round(seconds / STEP); i++) {
            rudder.strut(new Flow(-speed, 0, 0, DEPTH), Math.toRadians(degrees), air.kept(), load);
            air.note(load, speed, STEP);
        }
    }
}
