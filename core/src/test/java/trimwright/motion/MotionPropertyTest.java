package trimwright.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trimwright.air.AirState;
import trimwright.boat.Boat;
import trimwright.boat.Handling;
import trimwright.boat.Whimbrel14;
import trimwright.units.Angles;
import trimwright.water.WaterState;

class MotionPropertyTest {
    /** Two grinders in short bursts (W). */
    private static final double POWER = 900;

    private static final Boat BOAT = Whimbrel14.boat();

    /** Roll, sway and yaw rate at the beginning (deg, m/s, deg/s), speed (m/s). */
    @ParameterizedTest
    @CsvSource({"0, 0, 0, 15", "8, 0.5, 5, 12", "-12, -1, -8, 9", "3, 0, 0, 4"})
    void withoutWindEnergyDoesNotGrow(double roll, double sway, double yaw, double speed) {
        MotionModel model = model();
        Controls controls = controls(1);
        MotionState state = state(model, Math.toRadians(roll), sway, Math.toRadians(yaw), speed, controls);
        LocalWind calm = LocalWind.of(0.01, 0);
        double first = model.energy(state);
        double most = first;
        for (int i = 0; i < 1500; i++) {
            state = model.step(state, new Commands(controls, Commands.FlapWork.TRIM), calm, MotionModel.STEP);
            most = Math.max(most, model.energy(state));
        }
        // A thousandth for the step itself, which is of first order.
        assertTrue(most <= first * 1.001, most + " J after " + first);
        assertTrue(model.energy(state) < 0.6 * first, model.energy(state) + " J of " + first + " left");
    }

    /** At rest the hulls carry what she weighs, and pitched she swings back and comes to rest level: no outside figure, statics. */
    @Test
    void aBoatAtRestFloatsOnHerWeightAndComesLevel() {
        MotionModel model = model();
        Controls controls = controls(1);
        double height = model.heightFor(-0.3, 0, Math.toRadians(3), controls.crew());
        MotionState state =
                new MotionState(new Pose(0, 0, height, 0, 0, Math.toRadians(3)), new Rates(0, 0, 0, 0, 0, 0), controls);
        LocalWind calm = LocalWind.of(0.01, 0);
        double least = 0;
        for (int i = 0; i < 3000; i++) {
            state = model.step(state, new Commands(controls, Commands.FlapWork.TRIM), calm, MotionModel.STEP);
            least = Math.min(least, state.pose().pitch());
        }
        double weight = 9.80665
                * (BOAT.platform().mass()
                        + BOAT.wings().get(0).mass()
                        + BOAT.crew().mass());
        assertEquals(weight, model.loads().hullLift(), 0.01 * weight);
        assertEquals(0, state.rates().climb(), 1e-3);
        assertEquals(0, state.rates().pitch(), 1e-4);
        assertTrue(least < -Math.toRadians(0.2), "she swings past level: " + Math.toDegrees(least));
        assertTrue(
                Math.abs(state.pose().pitch()) < Math.toRadians(1),
                Math.toDegrees(state.pose().pitch()) + " deg");
    }

    @Test
    void aBoatThatLiesOnHerSideOrHerBowsSailsNoMore() {
        MotionModel model = model();
        for (Pose pose :
                new Pose[] {new Pose(0, 0, 2, 0, Math.toRadians(-50), 0), new Pose(0, 0, 2, 0, 0, Math.toRadians(-25))
                }) {
            MotionState state = new MotionState(pose, new Rates(9, 0, 1, 1, 1, 1), controls(1));
            MotionState next = model.step(
                    state, new Commands(controls(1), Commands.FlapWork.TRIM), LocalWind.of(8, 1), MotionModel.STEP);
            assertEquals(pose, next.pose());
            assertEquals(0, next.rates().speed(), 0);
        }
        assertEquals(Mishap.CAPSIZED, Mishap.of(new Pose(0, 0, 2, 0, Math.toRadians(-50), 0)));
        assertEquals(Mishap.NOSE_DIVED, Mishap.of(new Pose(0, 0, 2, 0, 0, Math.toRadians(-25))));
        assertNull(Mishap.of(new Pose(0, 0, 2, 0, Math.toRadians(12), Math.toRadians(-5))));
    }

    @Test
    void aBoatOnTheOtherTackMovesAsInAMirror() {
        MotionModel one = model();
        MotionModel other = model();
        MotionState a = state(one, Math.toRadians(4), 0.3, Math.toRadians(3), 12, controls(1));
        MotionState b = state(other, Math.toRadians(-4), -0.3, Math.toRadians(-3), 12, controls(-1));
        LocalWind fromStarboard = LocalWind.of(8, Math.toRadians(60));
        LocalWind fromPort = LocalWind.of(8, Math.toRadians(-60));
        for (int i = 0; i < 250; i++) {
            a = one.step(a, new Commands(controls(1), Commands.FlapWork.TRIM), fromStarboard, MotionModel.STEP);
            b = other.step(b, new Commands(controls(-1), Commands.FlapWork.TRIM), fromPort, MotionModel.STEP);
        }
        assertEquals(a.pose().north(), b.pose().north(), 1e-6);
        assertEquals(a.pose().east(), -b.pose().east(), 1e-6);
        assertEquals(a.pose().height(), b.pose().height(), 1e-7);
        assertEquals(a.pose().roll(), -b.pose().roll(), 1e-7);
        assertEquals(0, Angles.signed(a.pose().heading() + b.pose().heading()), 1e-7);
        assertEquals(a.rates().surge(), b.rates().surge(), 1e-7);
        assertEquals(one.loads().heeling(), -other.loads().heeling(), 1e-2);
        assertEquals(one.loads().portMain(), other.loads().starboardMain(), 1e-2);
    }

    @Test
    void easingIsFastAndHaulingAgainstALoadIsSlow() {
        Actuators actuators = new Actuators(BOAT.wings().get(0).sheet(), BOAT.handling());
        Controls from = controls(1);
        Commands out = new Commands(withSheet(from, from.sheet() + 0.5), Commands.FlapWork.TRIM);
        Commands in = new Commands(withSheet(from, from.sheet() - 0.5), Commands.FlapWork.TRIM);
        double load = 8000;
        double eased = actuators.move(from, out, load, POWER, 0.1).sheet() - from.sheet();
        double hauled =
                from.sheet() - actuators.move(from, in, load, POWER, 0.1).sheet();
        assertTrue(eased > 0 && hauled > 0);
        assertTrue(eased > 5 * hauled, eased + " rad out, " + hauled + " rad in");
        // No more power than two grinders give in short bursts, 900 W, less the tackle's losses.
        assertTrue(load * hauled / 0.1 <= 900, load * hauled / 0.1 + " W");
    }

    /** The boat file is the one source of the rates that it states: twice the figure, twice as far in a step. */
    @Test
    void controlsGoAsFastAsTheBoatFileSays() {
        Handling stated = Objects.requireNonNull(BOAT.handling());
        Handling.ControlRates rates = stated.rates();
        Handling doubled = new Handling(
                new Handling.ControlRates(
                        2 * rates.sheetEase(), 2 * rates.sheetHaul(), 2 * rates.camber(), 2 * rates.twist()),
                stated.grinders(),
                stated.sheetWork(),
                stated.oilEfficiency(),
                stated.oilUsers(),
                null);
        Controls from = controls(1);
        Controls aim = new Controls(
                from.sheet() + 1, from.camber() + 1, from.twist() + 1, 0.5, 0, 0, 0, 0, 0, 1, 1, from.crew());
        Commands commands = new Commands(aim, Commands.FlapWork.TRIM);
        Controls slow = new Actuators(BOAT.wings().get(0).sheet(), stated).move(from, commands, 100, POWER, 0.1);
        Controls fast = new Actuators(BOAT.wings().get(0).sheet(), doubled).move(from, commands, 100, POWER, 0.1);
        assertEquals(rates.sheetEase() * 0.1, slow.sheet() - from.sheet(), 1e-12);
        assertEquals(rates.camber() * 0.1, slow.camber() - from.camber(), 1e-12);
        assertEquals(rates.twist() * 0.1, slow.twist() - from.twist(), 1e-12);
        assertEquals(2 * (slow.sheet() - from.sheet()), fast.sheet() - from.sheet(), 1e-12);
        assertEquals(2 * (slow.camber() - from.camber()), fast.camber() - from.camber(), 1e-12);
        assertEquals(2 * (slow.twist() - from.twist()), fast.twist() - from.twist(), 1e-12);
        // A file without the table moves as the demo boat, which has the figures of the reference.
        Controls unsaid = new Actuators(BOAT.wings().get(0).sheet(), null).move(from, commands, 100, POWER, 0.1);
        assertEquals(slow, unsaid);
    }

    private static MotionModel model() {
        return new MotionModel(BOAT, BOAT.wings().get(0), AirState.STANDARD, WaterState.sea(288.15), 16);
    }

    private static MotionState state(
            MotionModel model, double roll, double sway, double yaw, double speed, Controls controls) {
        double height = model.heightFor(0.6, roll, 0, controls.crew());
        return new MotionState(new Pose(0, 0, height, 0, roll, 0), new Rates(speed, sway, 0, 0, 0, yaw), controls);
    }

    private static Controls controls(int tack) {
        return new Controls(
                tack * Math.toRadians(20),
                tack * Math.toRadians(20),
                tack * Math.toRadians(10),
                0.5,
                Math.toRadians(tack > 0 ? 4 : 2),
                Math.toRadians(tack > 0 ? 2 : 4),
                0,
                tack * Math.toRadians(1),
                0,
                1,
                1,
                tack * 2.0);
    }

    private static Controls withSheet(Controls c, double sheet) {
        return new Controls(
                sheet,
                c.camber(),
                c.twist(),
                c.twistMid(),
                c.portRake(),
                c.starboardRake(),
                c.elevator(),
                c.differential(),
                c.rudder(),
                c.portBoard(),
                c.starboardBoard(),
                c.crew());
    }
}
