package trimwright.sim;

import java.util.ArrayList;
import java.util.List;
import trimwright.air.AirState;
import trimwright.boat.WingSpec;
import trimwright.motion.BoatView;
import trimwright.motion.MotionLoads;
import trimwright.motion.MotionState;
import trimwright.weather.AirVelocity;
import trimwright.weather.WakeSection;
import trimwright.weather.WakeTrail;
import trimwright.wing.Wing;

/** The wake that one boat leaves: a section each block of time, the oldest forgotten. */
final class WakeLaid {
    /** Sections kept: 45 s, in which the wind carries them over 300 m. Chosen. */
    private static final int KEPT = 90;
    /** Height of the wind's reference, down in body axes (m). */
    private static final double REFERENCE = -10;

    private final WingSpec wing;
    private final AirState air;
    private final double wingArea;
    private final List<WakeSection> trail = new ArrayList<>();

    WakeLaid(WingSpec wing, AirState air) {
        this.wing = wing;
        this.air = air;
        wingArea = Wing.area(wing);
    }

    /** The same wing, nothing laid yet. */
    WakeLaid anew() {
        return new WakeLaid(wing, air);
    }

    WakeTrail trail() {
        return new WakeTrail(trail);
    }

    void add(MotionState state, MotionLoads loads, BoatView view, double time, AirVelocity wind) {
        double flowNorth = wind.north() - view.velocityNorth(wing.x(), 0, REFERENCE);
        double flowEast = wind.east() - view.velocityEast(wing.x(), 0, REFERENCE);
        double speed = StrictMath.hypot(flowNorth, flowEast);
        if (speed < 1) {
            return;
        }
        double towards = StrictMath.atan2(flowEast, flowNorth);
        double heading = state.pose().heading();
        double fx = loads.wingForward();
        double fy = loads.wingStarboard();
        double forceNorth = fx * StrictMath.cos(heading) - fy * StrictMath.sin(heading);
        double forceEast = fx * StrictMath.sin(heading) + fy * StrictMath.cos(heading);
        double pressure = 0.5 * air.density() * speed * speed;
        double drag = forceNorth * StrictMath.cos(towards) + forceEast * StrictMath.sin(towards);
        double lift = -forceNorth * StrictMath.sin(towards) + forceEast * StrictMath.cos(towards);
        trail.add(new WakeSection(
                time,
                view.north(wing.x(), 0, REFERENCE),
                view.east(wing.x(), 0, REFERENCE),
                speed,
                towards,
                Math.max(0, drag / pressure),
                lift / pressure,
                wingArea,
                wing.footHeight() + wing.span()));
        if (trail.size() > KEPT) {
            trail.remove(0);
        }
    }
}
