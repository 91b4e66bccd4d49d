package trimwright.raceday;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import trimwright.boat.Boat;
import trimwright.boatfile.BoatFiles;
import trimwright.sim.BoatRun;
import trimwright.sim.Race;
import trimwright.sim.ScenarioDraw;
import trimwright.sim.TrueSpan;
import trimwright.text.Progress;

/** From the start to the reaching mark a crew sails at the mark: it does not change its mind time and again on the way. */
class ReachTest {
    /** Time by which all are round (s): the gun at 60, a leg of some 600 m, and as much again. */
    private static final double SECONDS = 130;

    @Test
    void crewsSailAtTheReachingMarkAndRoundIt() throws InterruptedException {
        Boat boat = BoatFiles.find("whimbrel14").boat();
        for (int seed : List.of(1, 3)) {
            DayPlan plan = DayPlan.of(ScenarioDraw.of(seed), 25);
            Race race =
                    new Race(plan.scenario(), plan.venue(boat, boat.wings().get(0), AimsCard.of(LoneBoat.targets())));
            for (BoatRun run : RaceDay.sail(race, SECONDS, 2, Progress.NONE)) {
                String of = seed + " " + run.entry().name() + ": ";
                assertTrue(run.passages().size() >= 2, of + "is not round: " + run.passages());
                List<String> ways = run.spans().stream()
                        .filter(span -> span.what().equals("straight") && span.leg() == 0)
                        .map(TrueSpan::toString)
                        .toList();
                assertTrue(ways.size() <= 3, of + ways);
            }
        }
    }
}
