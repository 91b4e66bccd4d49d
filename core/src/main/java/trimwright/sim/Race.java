package trimwright.sim;

import java.util.ArrayList;
import java.util.List;
import trimwright.motion.MotionModel;
import trimwright.weather.WindField;

/**
 * A day's race, sailed in blocks of half a second. Between blocks the fleet is looked at once; inside a block each boat sails
 * alone, so that {@link #advance} of different boats may be called in any order or from different threads, and the day comes
 * out the same.
 */
public final class Race {
    /** Length of a block (s). */
    public static final double BLOCK = 0.5;
    /** Time between readings of the instruments (s). */
    public static final double READING = 0.1;

    private final Scenario.Wakes wakes;
    private final List<BoatRun> runs = new ArrayList<>();

    public Race(Scenario scenario, Venue venue) {
        this(scenario, venue, MotionModel.STEP);
    }

    /** @param step of the motion (s); a reading's period must be a whole number of steps */
    public Race(Scenario scenario, Venue venue, double step) {
        WindField field = new WindField(scenario.weather(), scenario.seed());
        for (int i = 0; i < scenario.entries().size(); i++) {
            runs.add(new BoatRun(scenario, i, venue, field, step));
        }
        wakes = scenario.wakes();
    }

    public List<BoatRun> runs() {
        return List.copyOf(runs);
    }

    /** The fleet as it stands between blocks. */
    public Fleet fleet() {
        return new Fleet(
                runs.stream().map(BoatRun::seen).toList(),
                wakes == Scenario.Wakes.FELT ? runs.stream().map(BoatRun::wake).toList() : List.of());
    }

    /** Sails one boat through a block, counted from 0. */
    public void advance(int boat, Fleet fleet, int block) {
        runs.get(boat).advance(fleet, (block + 1) * BLOCK);
    }

    /** Whether all boats have left the course. */
    public boolean isOver() {
        return runs.stream().allMatch(BoatRun::hasLeft);
    }
}
