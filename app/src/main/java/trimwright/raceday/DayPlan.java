package trimwright.raceday;

import java.time.Instant;
import trimwright.air.AirState;
import trimwright.boat.Boat;
import trimwright.boat.WingSpec;
import trimwright.course.Course;
import trimwright.course.CourseGeometry;
import trimwright.crew.SailingAims;
import trimwright.sim.DemoCourse;
import trimwright.sim.Scenario;
import trimwright.sim.Venue;
import trimwright.units.Units;
import trimwright.water.WaterState;

/**
 * When and where a simulated day is sailed.
 *
 * @param scenario what it is made from
 * @param course laid to its mean wind
 * @param zeroNanos time at which the logs begin (ns since 1970, UTC)
 * @param seconds length of the logs at most (s)
 */
record DayPlan(Scenario scenario, Course course, long zeroNanos, double seconds) {
    /** First of the logs: an invented afternoon. */
    private static final Instant ZERO = Instant.parse("2027-03-06T13:00:00Z");

    private static final double GUN = 60;
    /** Time that a lap takes, chosen a little long: laps are so many that the last boat finishes (min). */
    private static final double LAP_MINUTES = 7.5;

    private static final long NANOS = 1_000_000_000L;
    /** Temperature of the sea (K): that of the standard atmosphere, as for the targets. */
    private static final double TEMPERATURE = Units.fromCelsius(15);

    static DayPlan of(Scenario scenario, int minutes) {
        long zero = ZERO.getEpochSecond() * NANOS;
        int laps = Math.max(1, (int) Math.floor(minutes / LAP_MINUTES));
        Course course = DemoCourse.of(scenario.weather().from(), zero + Math.round(GUN * NANOS), laps);
        return new DayPlan(scenario, course, zero, minutes * 60.0);
    }

    Venue venue(Boat boat, WingSpec wing, SailingAims aims) {
        return new Venue(
                boat, wing.id(), aims, new CourseGeometry(course), GUN, AirState.STANDARD, WaterState.sea(TEMPERATURE));
    }
}
