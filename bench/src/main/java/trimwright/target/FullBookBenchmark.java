package trimwright.target;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Warmup;
import trimwright.bench.Measured;
import trimwright.boatfile.BoatFile;
import trimwright.boatfile.BoatFiles;
import trimwright.prepare.TargetRequest;
import trimwright.prepare.TargetRun;
import trimwright.text.Progress;
import trimwright.units.Units;

/** The demo boat's full books, 24 winds by 29 angles and both best angles of either wing, on as many threads as there are processors. */
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2)
@Measurement(iterations = 3)
public class FullBookBenchmark extends Measured {
    private final BoatFile boat = BoatFiles.find("whimbrel14");
    private final TargetGrid grid = grid();

    private static TargetGrid grid() {
        List<Double> winds = new ArrayList<>();
        for (int knots = 4; knots <= 27; knots++) {
            winds.add(Units.fromKnots(knots));
        }
        return new TargetGrid(winds, TargetRequest.defaultGrid().angles());
    }

    /** The first round of a process is what a person waits for; JMH prints it as its first to warm up. */
    @Benchmark
    public List<TargetBook> bothWings() throws InterruptedException {
        List<TargetBook> books = new ArrayList<>();
        for (String wing : new String[] {"tall", "short"}) {
            TargetRequest request = new TargetRequest(boat, boat.boat().getWing(wing), grid, Map.of());
            books.add(TargetRun.of(request, Progress.NONE));
        }
        return books;
    }
}
