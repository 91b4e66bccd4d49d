package trimwright.sim;

import trimwright.boat.Boat;
import trimwright.course.PlaneLine;
import trimwright.crew.Temper;
import trimwright.motion.Controls;
import trimwright.motion.MotionModel;
import trimwright.motion.MotionState;
import trimwright.motion.Pose;
import trimwright.motion.Rates;
import trimwright.units.Angles;

/** How a boat comes to the start: what she does when the day begins. */
final class Approach {
    /** Speed at the day's zero, and mean speed until the gun (m/s): chosen. */
    private static final double SPEED = 10.5;

    private final Venue venue;
    private final Boat boat;
    private final Temper temper;

    Approach(Venue venue, Boat boat, Temper temper) {
        this.venue = venue;
        this.boat = boat;
        this.temper = temper;
    }

    /** Flying already, on her lane, as far from the line as she sails until the gun. */
    MotionState state(MotionModel model, double windFrom) {
        PlaneLine line = venue.course().start();
        double share = temper.startShare();
        double heading = Angles.compass(line.portEnd().bearingTo(line.starboardEnd()) - Math.PI / 2);
        double back = SPEED * (venue.gun() + temper.startMargin());
        double north = line.portEnd().north()
                + share * (line.starboardEnd().north() - line.portEnd().north())
                - back * StrictMath.cos(heading);
        double east = line.portEnd().east()
                + share * (line.starboardEnd().east() - line.portEnd().east())
                - back * StrictMath.sin(heading);
        int tack = Angles.signed(windFrom - heading) >= 0 ? 1 : -1;
        double roll = tack * Math.toRadians(2);
        double out = tack * boat.crew().yMax();
        double height = model.heightFor(0.9, roll, 0, out);
        Controls controls = new Controls(
                tack * Math.toRadians(28),
                tack * Math.toRadians(16),
                tack * Math.toRadians(10),
                0.5,
                Math.toRadians(3),
                Math.toRadians(3),
                0,
                0,
                0,
                1,
                1,
                out);
        return new MotionState(
                new Pose(north, east, height, heading, roll, 0), new Rates(SPEED, 0, 0, 0, 0, 0), controls);
    }
}
