package trimwright.response;

import java.util.ArrayList;
import java.util.List;
import trimwright.air.AirState;
import trimwright.boat.Boat;
import trimwright.boat.WingSpec;
import trimwright.crew.ComputedHand;
import trimwright.crew.DrillCrew;
import trimwright.crew.Habits;
import trimwright.crew.HelmOrder;
import trimwright.crew.HelmOrder.Way;
import trimwright.crew.SailingAims;
import trimwright.crew.Sight;
import trimwright.motion.Commands;
import trimwright.motion.MotionModel;
import trimwright.motion.MotionState;
import trimwright.practice.FirstState;
import trimwright.practice.Watch;
import trimwright.units.Angles;
import trimwright.water.WaterState;
import trimwright.weather.AirVelocity;
import trimwright.weather.MovingAir;

/** Sails a boat with the computed crew through one step of an otherwise steady wind from north. */
record GustSail(Boat boat, WingSpec wing, SailingAims aims, AirState air, WaterState water) {
    private static final double STEP = MotionModel.STEP;

    /** Strips of the wing: as in drills. */
    private static final int STRIPS = 16;

    /** Share of the card's speed with which she begins (-), time to settle and time that is looked at (s): chosen. */
    private static final double FIRST_SHARE = 0.95;

    private static final int SETTLING = 60;
    private static final int AFTER = 70;

    GustTrace sail(Way way, double wind, double change) {
        MovingAir blowing = (north, east, time) -> new AirVelocity(-(time < SETTLING ? wind : wind + change), 0);
        MotionModel model =
                new MotionModel(boat, wing, air, water, STRIPS, MotionModel.Lift.LAGGING, MotionModel.Line.LINEAR);
        MotionState state = FirstState.onTheFoils(model, boat, aims, wind, way, FIRST_SHARE);
        Watch watch = new Watch(model, wing, blowing, state);
        DrillCrew crew = new DrillCrew(boat, aims, new ComputedHand(wing, Habits.NONE, 1), new HelmOrder(way, 1));
        int second = (int) Math.round(1 / STEP);
        List<Double> speeds = new ArrayList<>();
        List<Double> targets = new ArrayList<>();
        for (int i = 0; i < (SETTLING + AFTER) * second; i++) {
            double time = i * STEP;
            Sight sight = watch.look(state, time, STEP);
            if (i % second == 0) {
                double now = time < SETTLING ? wind : wind + change;
                speeds.add(sight.speed());
                targets.add(
                        aims.at(now, Math.abs(Angles.signed(-sight.course()))).speed());
            }
            Commands commands = crew.work(sight, STEP);
            state = model.step(state, commands, watch.wind(), STEP);
        }
        return new GustTrace(SETTLING, speeds, targets);
    }
}
