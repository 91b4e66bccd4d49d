package trimwright.raceday;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import trimwright.sim.BoatRun;
import trimwright.sim.Fleet;
import trimwright.sim.Race;
import trimwright.text.Progress;

/**
 * Sails a race on a fixed pool of threads, block by block. Inside a block no boat sees another's work, so the day is the
 * same on any number of threads.
 */
public final class RaceDay {
    private RaceDay() {}

    /** Blocks in that many seconds: the steps that {@link Progress} is told about. */
    public static int blocks(double seconds) {
        return (int) Math.ceil(seconds / Race.BLOCK);
    }

    /** Sails for that long (s), or until all have finished. */
    public static List<BoatRun> sail(Race race, double seconds, int threads, Progress progress)
            throws InterruptedException {
        ExecutorService pool = Executors.newFixedThreadPool(threads, task -> {
            Thread thread = new Thread(task, "boats");
            thread.setDaemon(true);
            return thread;
        });
        try {
            for (int block = 0; block < blocks(seconds) && !race.isOver(); block++) {
                sailBlock(race, block, pool);
                progress.done(1);
            }
        } catch (ExecutionException e) {
            throw new IllegalStateException("a boat could not be sailed", e.getCause());
        } finally {
            pool.shutdownNow();
        }
        return race.runs();
    }

    private static void sailBlock(Race race, int block, ExecutorService pool)
            throws InterruptedException, ExecutionException {
        Fleet fleet = race.fleet();
        List<Callable<Void>> tasks = new ArrayList<>();
        for (int boat = 0; boat < race.runs().size(); boat++) {
            int index = boat;
            tasks.add(() -> {
                race.advance(index, fleet, block);
                return null;
            });
        }
        for (Future<Void> done : pool.invokeAll(tasks)) {
            done.get();
        }
    }
}
