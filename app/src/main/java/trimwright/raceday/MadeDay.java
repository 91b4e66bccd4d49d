package trimwright.raceday;

import java.nio.file.Path;
import java.util.List;
import trimwright.sim.BoatRun;

/**
 * A simulated day on disk.
 *
 * @param runs the boats as they sailed
 * @param files what was written
 * @param speed boat seconds for each second of each thread: how many times faster than life one core sailed one boat (-)
 */
public record MadeDay(List<BoatRun> runs, List<Path> files, double speed) {
    public MadeDay {
        runs = List.copyOf(runs);
        files = List.copyOf(files);
    }
}
