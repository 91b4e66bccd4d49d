package trimwright.raceday;

import java.util.List;
import java.util.Map;
import trimwright.air.AirState;
import trimwright.boat.Boat;
import trimwright.boatfile.BoatFile;
import trimwright.boatfile.BoatFiles;
import trimwright.course.Course;
import trimwright.course.CourseGeometry;
import trimwright.course.Gate;
import trimwright.course.Line;
import trimwright.course.LocalPlane;
import trimwright.course.PlanePoint;
import trimwright.course.Position;
import trimwright.crew.Habits;
import trimwright.crew.Temper;
import trimwright.crew.Turning;
import trimwright.prepare.TargetRequest;
import trimwright.prepare.TargetRun;
import trimwright.sim.BoatRun;
import trimwright.sim.Entry;
import trimwright.sim.Fleet;
import trimwright.sim.Perturbation;
import trimwright.sim.Race;
import trimwright.sim.Scenario;
import trimwright.sim.SensorFaults;
import trimwright.sim.TrueState;
import trimwright.sim.Venue;
import trimwright.target.Target;
import trimwright.target.TargetBook;
import trimwright.target.TargetGrid;
import trimwright.target.TargetMode;
import trimwright.target.TargetPoint;
import trimwright.text.Progress;
import trimwright.units.Angles;
import trimwright.units.Units;
import trimwright.water.WaterState;
import trimwright.weather.TurbulenceSpectrum;
import trimwright.weather.WeatherSpec;

/** One boat in a steady wind on a leg so long that she never turns, with the aims of a book that has that very wind. */
final class LongLeg {
    /** Far more than is sailed (m). */
    private static final double FAR = 30_000;

    private static final double GUN = 10;

    /** Time from the gun until she has gathered speed and settled (s): twice what the longest of the runs needs. */
    private static final double SETTLING = 120;

    /** Time over which progress is taken (s). */
    private static final double JUDGED = 60;

    private final TargetBook book;

    /** @param winds in which legs will be sailed (m/s), rising */
    LongLeg(List<Double> winds) throws InterruptedException {
        BoatFile file = BoatFiles.find("whimbrel14");
        List<Double> angles = TargetRequest.defaultGrid().angles();
        book = TargetRun.of(
                new TargetRequest(file, file.boat().wings().get(0), new TargetGrid(winds, angles), Map.of()),
                Progress.NONE);
    }

    /** Speed made good in steady sailing over that of the book (-). */
    double share(double wind, TargetMode mode) {
        TargetPoint point = book.points().stream()
                .filter(p -> p.mode() == mode && p.trueWindSpeed() == wind && p.isSolved())
                .findFirst()
                .orElseThrow();
        Target target = point.getTarget();
        int sign = mode == TargetMode.UPWIND ? 1 : -1;
        double sum = 0;
        int count = 0;
        for (TrueState state : sail(wind, point.trueWindAngle(), sign).truth()) {
            if (state.time() > GUN + SETTLING) {
                double toBow = Angles.signed(state.windFrom() - state.heading());
                double angle = toBow + Math.signum(toBow) * state.leeway();
                sum += sign * state.speed() * Math.cos(angle);
                count++;
            }
        }
        return sum / count / target.velocityMadeGood();
    }

    private BoatRun sail(double wind, double angle, int sign) {
        Boat boat = BoatFiles.find("whimbrel14").boat();
        Temper temper = new Temper(Math.toRadians(8), Math.toRadians(1), 0.5, 0.5, 1);
        Scenario scenario = new Scenario(
                1,
                new WeatherSpec(wind, 0, 10, 0, TurbulenceSpectrum.KAIMAL, 0, 0, 0),
                Scenario.Wakes.NONE,
                Turning.SAILED,
                List.of(new Entry("Lone", Habits.NONE, temper, SensorFaults.NONE, Perturbation.NONE)));
        Venue venue = new Venue(
                boat,
                boat.wings().get(0).id(),
                AimsCard.of(book),
                new CourseGeometry(course(angle, sign)),
                GUN,
                AirState.STANDARD,
                WaterState.sea(Units.fromCelsius(15)));
        Race race = new Race(scenario, venue);
        for (int block = 0; block < (GUN + SETTLING + JUDGED) / Race.BLOCK; block++) {
            Fleet fleet = race.fleet();
            race.advance(0, fleet, block);
        }
        return race.runs().get(0);
    }

    /** Started on the angle (rad) that is to be sailed, on starboard tack, wind from the north. */
    private static Course course(double angle, int sign) {
        LocalPlane plane = new LocalPlane(new Position(Math.toRadians(31.2), Math.toRadians(-41.5)));
        double half = 100;
        double right = Math.PI / 2 - angle;
        PlanePoint starboardEnd = new PlanePoint(half * Math.cos(right), half * Math.sin(right));
        PlanePoint portEnd = new PlanePoint(-starboardEnd.north(), -starboardEnd.east());
        PlanePoint left = new PlanePoint(sign * FAR, -sign * half);
        PlanePoint far = new PlanePoint(sign * FAR, sign * half);
        return new Course(
                "long leg",
                0,
                new Line(plane.toEarth(portEnd), plane.toEarth(starboardEnd)),
                List.of(new Gate("far", plane.toEarth(left), plane.toEarth(far))),
                new Line(
                        plane.toEarth(new PlanePoint(2 * sign * FAR, -half)),
                        plane.toEarth(new PlanePoint(2 * sign * FAR, half))),
                List.of());
    }
}
