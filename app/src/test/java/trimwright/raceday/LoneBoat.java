package trimwright.raceday;

import java.util.List;
import java.util.Map;
import trimwright.air.AirState;
import trimwright.boat.Boat;
import trimwright.boatfile.BoatFile;
import trimwright.boatfile.BoatFiles;
import trimwright.course.CourseGeometry;
import trimwright.crew.Habits;
import trimwright.crew.SailingAims;
import trimwright.crew.Temper;
import trimwright.crew.Turning;
import trimwright.prepare.TargetRequest;
import trimwright.prepare.TargetRun;
import trimwright.sim.BoatRun;
import trimwright.sim.DemoCourse;
import trimwright.sim.Entry;
import trimwright.sim.Fleet;
import trimwright.sim.Perturbation;
import trimwright.sim.Race;
import trimwright.sim.Scenario;
import trimwright.sim.SensorFaults;
import trimwright.sim.TrueState;
import trimwright.sim.Venue;
import trimwright.target.TargetBook;
import trimwright.target.TargetGrid;
import trimwright.text.Progress;
import trimwright.units.Angles;
import trimwright.units.Units;
import trimwright.water.WaterState;
import trimwright.weather.TurbulenceSpectrum;
import trimwright.weather.WeatherSpec;

/** One boat in a steady wind, with the aims of a small target book round that wind. */
final class LoneBoat {
    static final double WIND_KN = 15;

    /** Samples of half a minute. */
    private static final int WINDOW = 30;

    private static final TargetBook BOOK = book();

    private LoneBoat() {}

    static TargetBook targets() {
        return BOOK;
    }

    /** A race of one lap, sailed for that long (s). */
    static BoatRun sail(Habits habits, double step, double seconds) {
        return sail(habits, Turning.SAILED, step, seconds);
    }

    static BoatRun sail(Habits habits, Turning turning, double step, double seconds) {
        return sail(WIND_KN, habits, turning, step, seconds);
    }

    static BoatRun sail(double windKn, Habits habits, Turning turning, double step, double seconds) {
        BoatFile file = BoatFiles.find("whimbrel14");
        Boat boat = file.boat();
        WeatherSpec steady = new WeatherSpec(Units.fromKnots(windKn), 0, 10, 0, TurbulenceSpectrum.KAIMAL, 0, 0, 0);
        Temper temper = new Temper(Math.toRadians(8), Math.toRadians(1), 0.5, 0.5, 1);
        Scenario scenario = new Scenario(
                1,
                steady,
                Scenario.Wakes.NONE,
                turning,
                List.of(new Entry("Lone", habits, temper, SensorFaults.NONE, Perturbation.NONE)));
        SailingAims aims = AimsCard.of(BOOK);
        Venue venue = new Venue(
                boat,
                boat.wings().get(0).id(),
                aims,
                new CourseGeometry(DemoCourse.of(0, 0, 2)),
                60,
                AirState.STANDARD,
                WaterState.sea(Units.fromCelsius(15)));
        Race race = new Race(scenario, venue, step);
        for (int block = 0; block < seconds / Race.BLOCK && !race.isOver(); block++) {
            Fleet fleet = race.fleet();
            race.advance(0, fleet, block);
        }
        return race.runs().get(0);
    }

    /** Best progress against the wind that she holds for half a minute of straight sailing (m/s). */
    static double upwind(BoatRun run) {
        return best(run, 1);
    }

    /** The same down the wind. */
    static double downwind(BoatRun run) {
        return best(run, -1);
    }

    private static double best(BoatRun run, int sign) {
        List<TrueState> states = run.truth();
        double best = 0;
        for (int i = 0; i + WINDOW < states.size(); i++) {
            double sum = 0;
            for (TrueState state : states.subList(i, i + WINDOW)) {
                double angle = Angles.signed(state.windFrom() - state.heading() + leeway(state));
                sum += state.turning() == 1 ? -100 : sign * state.speed() * Math.cos(angle);
            }
            best = Math.max(best, sum / WINDOW);
        }
        return best;
    }

    /** The true leeway is free of the tack; the course lies to leeward of the bow. */
    private static double leeway(TrueState state) {
        double toBow = Angles.signed(state.windFrom() - state.heading());
        return Math.signum(toBow) * state.leeway();
    }

    private static TargetBook book() {
        BoatFile file = BoatFiles.find("whimbrel14");
        List<Double> winds = List.of(Units.fromKnots(14), Units.fromKnots(16));
        List<Double> angles = TargetRequest.defaultGrid().angles();
        try {
            return TargetRun.of(
                    new TargetRequest(file, file.boat().wings().get(0), new TargetGrid(winds, angles), Map.of()),
                    Progress.NONE);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }
}
