package trimwright.raceday;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import trimwright.boat.Boat;
import trimwright.boat.WingSpec;
import trimwright.course.Course;
import trimwright.course.Line;
import trimwright.course.LocalPlane;
import trimwright.course.Mark;
import trimwright.course.PlanePoint;
import trimwright.course.Position;
import trimwright.course.Rounding;
import trimwright.sim.Race;
import trimwright.sim.Scenario;
import trimwright.target.TargetBook;
import trimwright.text.Progress;

/**
 * Days on which boats sail one long leg and do not see each other. Without marks, boundary and right of way, and in a wind
 * that is everywhere alike, a crew turns at the same times whatever else is changed: twins of such a day differ by that.
 */
public final class LongLegs {
    private static final Position CENTRE = new Position(Math.toRadians(31.2), Math.toRadians(-41.5));
    private static final Instant ZERO = Instant.parse("2027-03-06T13:00:00Z");
    private static final double GUN = 60;

    /** Further than any boat comes (m). */
    private static final double FAR = 18_000;

    private LongLegs() {}

    /** Where the mark lies. */
    public enum Way {
        UPWIND(0),
        DOWNWIND(900);

        private final double begin;

        Way(double begin) {
            this.begin = begin;
        }

        /** Time at which its logs begin, from the first's (s): both make one session. */
        public double begin() {
            return begin;
        }
    }

    /**
     * Sails what is judged between two times (s), writes logs and truth as of any simulated day, and what is found in
     * branches of it.
     */
    public static void make(
            Scenario scenario, Way way, int from, int to, Boat boat, WingSpec wing, TargetBook book, Path folder)
            throws IOException {
        long zero = (ZERO.getEpochSecond() + Math.round(way.begin())) * 1_000_000_000L;
        Course course = course(scenario.weather().from(), way, zero + Math.round(GUN * 1e9));
        DayPlan plan = new DayPlan(scenario, course, zero, BranchedLegs.sailed(to));
        Race race = new Race(scenario, plan.venue(boat, wing, AimsCard.of(book)));
        List<Pulse> pulses = BranchedLegs.of(race, scenario, way, book, from, to);
        DayFiles.write(DayFiles.of(plan, race.runs()), folder);
        Files.write(
                folder.resolve("pulses.csv"), pulses.stream().map(Pulse::line).toList());
    }

    /** Sails for that long (s) and writes logs and truth, without branches. */
    public static void sail(
            Scenario scenario, Way way, double seconds, Boat boat, WingSpec wing, TargetBook book, Path folder)
            throws IOException, InterruptedException {
        long zero = (ZERO.getEpochSecond() + Math.round(way.begin())) * 1_000_000_000L;
        Course course = course(scenario.weather().from(), way, zero + Math.round(GUN * 1e9));
        DayPlan plan = new DayPlan(scenario, course, zero, seconds);
        Race race = new Race(scenario, plan.venue(boat, wing, AimsCard.of(book)));
        DayFiles.write(DayFiles.of(plan, RaceDay.sail(race, seconds, 1, Progress.NONE)), folder);
    }

    /** What {@link #make} found in branches. */
    public static List<Pulse> pulses(Path folder) throws IOException {
        return Files.readAllLines(folder.resolve("pulses.csv")).stream()
                .map(Pulse::of)
                .toList();
    }

    /** The start of the invented regatta, reached across the wind; then one mark far up or down the wind. */
    private static Course course(double windFrom, Way way, long gunNanos) {
        LocalPlane plane = new LocalPlane(CENTRE);
        double sign = way == Way.UPWIND ? 1 : -1;
        return new Course(
                "a long leg",
                gunNanos,
                new Line(place(plane, windFrom, 700, 120), place(plane, windFrom, 940, 120)),
                List.of(new Mark("far", place(plane, windFrom, sign * FAR, 0), Rounding.PORT)),
                new Line(
                        place(plane, windFrom, sign * (FAR + 300), -50 * sign),
                        place(plane, windFrom, sign * (FAR + 300), 50 * sign)),
                List.of());
    }

    private static Position place(LocalPlane plane, double windFrom, double up, double right) {
        return plane.toEarth(new PlanePoint(
                up * StrictMath.cos(windFrom) - right * StrictMath.sin(windFrom),
                up * StrictMath.sin(windFrom) + right * StrictMath.cos(windFrom)));
    }
}
