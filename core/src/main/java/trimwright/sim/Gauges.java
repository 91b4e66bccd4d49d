package trimwright.sim;

import trimwright.air.AirState;
import trimwright.boat.Boat;
import trimwright.boat.WingSpec;
import trimwright.motion.BoatView;
import trimwright.motion.Controls;
import trimwright.motion.LocalWind;
import trimwright.motion.MotionLoads;
import trimwright.motion.MotionState;
import trimwright.wing.Wing;

/** What a boat's instruments would show if they were perfect: each quantity at the place of its sensor. */
final class Gauges {
    private final Boat boat;
    private final WingSpec wing;
    private final AirState air;
    private final double bowX;
    private final double wingArea;

    Gauges(Boat boat, WingSpec wing, AirState air, double bowX) {
        this.boat = boat;
        this.wing = wing;
        this.air = air;
        this.bowX = bowX;
        wingArea = Wing.area(wing);
    }

    Moment read(MotionState state, MotionLoads loads, BoatView view, LocalWind wind, double time) {
        double ax = bowX - boat.antenna().aftOfBow();
        double ay = boat.antenna().starboard();
        double az = -boat.crew().height();
        double sx = boat.windSensor().x();
        double sz = -boat.windSensor().height();
        Controls controls = state.controls();
        double ahead = view.windFromAhead(wind, sx, 0, sz);
        double abeam = view.windFromStarboard(wind, sx, 0, sz);
        double pressure = 0.5 * air.density() * (ahead * ahead + abeam * abeam) * wingArea;
        double turning = loads.turningMoment();
        boolean taut = turning * controls.sheet() > 0;
        return new Moment(
                time,
                view.north(ax, ay, az),
                view.east(ax, ay, az),
                view.velocityNorth(ax, ay, az),
                view.velocityEast(ax, ay, az),
                state.pose().heading(),
                state.rates().yaw(),
                state.pose().roll(),
                state.pose().pitch(),
                ahead,
                abeam,
                boat.windSensor().turnsWithWing() ? controls.sheet() : 0,
                -loads.wingStarboard() / Math.max(pressure, 1),
                controls.camber(),
                controls.twist(),
                controls.sheet(),
                taut ? Math.abs(turning) / wing.sheet().lever() : 0,
                view.rideHeight());
    }
}
