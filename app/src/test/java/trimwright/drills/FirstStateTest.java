package trimwright.drills;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trimwright.air.AirState;
import trimwright.boat.Boat;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFiles;
import trimwright.crew.HelmOrder.Way;
import trimwright.crew.SailingAims;
import trimwright.motion.Commands;
import trimwright.motion.LocalWind;
import trimwright.motion.MotionModel;
import trimwright.motion.MotionState;
import trimwright.motion.Rates;
import trimwright.practice.FirstState;
import trimwright.raceday.AimsCard;
import trimwright.raceday.LoneBoatBook;
import trimwright.units.Units;
import trimwright.water.WaterState;

/** Where a drill begins she neither leaps nor falls; physics, no outside figure. */
class FirstStateTest {
    private static final Boat BOAT = BoatFiles.find("whimbrel14").boat();
    private static final WingSpec WING = BOAT.wings().get(0);

    @ParameterizedTest
    @CsvSource({
        "14, UPWIND, 0.9, 0",
        "14, DOWNWIND, 0.95, 0",
        "16, UPWIND, 1, 0",
        "16, DOWNWIND, 0.9, 0",
        "15, UPWIND, 0.6, 1"
    })
    void sheBeginsAtRestOnHerFoils(double knots, Way way, double share, double windwardBoard) {
        SailingAims aims = AimsCard.of(LoneBoatBook.get());
        MotionModel model = new MotionModel(BOAT, WING, AirState.STANDARD, WaterState.sea(Units.fromCelsius(15)), 16);
        double wind = Units.fromKnots(knots);
        MotionState first = FirstState.onTheFoils(model, BOAT, aims, wind, way, share);
        double step = 1e-4;
        Rates next = model.step(
                        first, new Commands(first.controls(), Commands.FlapWork.TRIM), LocalWind.of(wind, 0), step)
                .rates();
        assertEquals(windwardBoard, first.controls().starboardBoard(), 0);
        assertEquals(1, first.controls().portBoard(), 0);
        assertEquals(0, next.climb() / step, 0.05, "m/s2 up");
        assertEquals(0, next.pitch() / step, Math.toRadians(0.2), "rad/s2 of pitch");
        assertTrue(first.controls().portRake() < BOAT.mainFoil().rakeMax());
    }
}
