package trimwright.bench;

import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import trimwright.target.TargetBook;
import trimwright.target.TargetFinder;
import trimwright.target.TargetGrid;
import trimwright.target.TargetLookup;

/** Look-up between the nodes of a book of four winds by six angles. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class LookupBenchmark extends Measured {
    private static final TargetGrid GRID =
            new TargetGrid(List.of(7.0, 8.0, 9.0, 10.0), List.of(1.5, 1.6, 1.7, 1.8, 1.9, 2.0));

    private final TargetBook book = new TargetFinder(DemoPlatform.platform(), Map.of()).bookOf(GRID);
    private double place;

    @Benchmark
    public TargetLookup atAngle() {
        return found(book.find(7 + 3 * next(), 1.5 + 0.5 * place));
    }

    @Benchmark
    public TargetLookup bestUpwind() {
        return found(book.findUpwind(7 + 3 * next()));
    }

    /** Places spread over the book: multiples of the golden ratio, less the whole. */
    private double next() {
        place += 0.6180339887498949;
        place -= Math.floor(place);
        return place;
    }

    private static TargetLookup found(TargetLookup lookup) {
        if (lookup.point() == null) {
            throw new IllegalStateException("no target there; a miss is not what is timed");
        }
        return lookup;
    }
}
