package trimwright.raceday;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import trimwright.crew.Habits;
import trimwright.crew.Turning;
import trimwright.motion.MotionModel;
import trimwright.sim.BoatRun;
import trimwright.sim.Fleet;
import trimwright.sim.TrueState;

/** A branch of a run goes on exactly as the run does, and otherwise only by what it is told to do otherwise. */
class BranchTest {
    private static final Fleet ALONE = new Fleet(List.of(), List.of());

    @Test
    void aBranchGoesOnAsTheRunDoes() {
        // From before the start, on the foils, through rounding and turns.
        BoatRun run = LoneBoat.sail(Habits.NONE, MotionModel.STEP, 55);
        BoatRun branch = run.branch(Habits.NONE, Turning.SAILED);
        BoatRun higher = run.branch(new Habits(1, 0, 0, 0.15, 0), Turning.SAILED);
        for (double until = 60; until <= 130; until += 5) {
            run.advance(ALONE, until);
            branch.advance(ALONE, until);
            higher.advance(ALONE, until);
        }
        assertEquals(130, branch.time(), 1e-6);
        List<TrueState> all = run.truth();
        List<TrueState> since = all.subList(all.size() - branch.truth().size(), all.size());
        assertTrue(since.size() > 70);
        assertEquals(since, branch.truth());
        assertEquals(run.turns(), branch.turns());
        assertNotEquals(since, higher.truth());
    }
}
