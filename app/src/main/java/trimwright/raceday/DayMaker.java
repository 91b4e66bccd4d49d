package trimwright.raceday;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import trimwright.boat.Boat;
import trimwright.boat.WingSpec;
import trimwright.sim.BoatRun;
import trimwright.sim.Race;
import trimwright.sim.Scenario;
import trimwright.target.TargetBook;
import trimwright.text.Progress;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/** Makes a simulated day: sails it and writes it down. */
public final class DayMaker {
    private final Boat boat;
    private final WingSpec wing;
    private final TargetBook book;
    private final int threads;

    /**
     * @param boat as its file says; the boats that sail differ from it as the scenario says
     * @param wing that all carry
     * @param book from which the crews take their aims
     * @param threads on which boats are sailed; the day does not depend on it
     */
    public DayMaker(Boat boat, WingSpec wing, TargetBook book, int threads) {
        this.boat = boat;
        this.wing = wing;
        this.book = book;
        this.threads = threads;
    }

    /** Steps that {@link Progress} is told about. */
    public static long steps(int minutes) {
        return RaceDay.blocks(minutes * 60.0);
    }

    /**
     * Sails and writes.
     *
     * @param minutes length of the logs at most; the number of laps follows from it
     * @param folder where the files go
     */
    public MadeDay make(Scenario scenario, int minutes, Path folder, Progress progress) throws InterruptedException {
        DayPlan plan = DayPlan.of(scenario, minutes);
        Race race = new Race(scenario, plan.venue(boat, wing, AimsCard.of(book)));
        long start = System.nanoTime();
        List<BoatRun> runs = RaceDay.sail(race, plan.seconds(), threads, progress);
        double took = (System.nanoTime() - start) / 1e9;
        double sailed = runs.stream().mapToDouble(BoatRun::time).sum();
        try {
            return new MadeDay(runs, DayFiles.write(DayFiles.of(plan, runs), folder), sailed / took / threads);
        } catch (IOException e) {
            throw new UserInputException(Texts.of("raceday.unwritable", folder, String.valueOf(e.getMessage())), e);
        }
    }
}
