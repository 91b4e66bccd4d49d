package trimwright.target;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import trimwright.bench.DemoPlatform;
import trimwright.bench.Measured;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.target.search.Answer;

/** Search for the demo boat's best trim, in a wind of 8 m/s. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class TargetBenchmark extends Measured {
    private static final double WIND = 8;
    private static final double STEP = Math.toRadians(5);

    private final TargetFinder finder = new TargetFinder(DemoPlatform.platform(), Map.of());
    private final List<Double> angles = angles();
    private final Task task = new Task(DemoPlatform.platform(), DemoPlatform.conditions(), Branch.FOILING, Map.of());
    private final Answer[] neighbours = neighbours();
    private int turn;

    private static List<Double> angles() {
        List<Double> angles = new ArrayList<>();
        for (int degrees = 30; degrees <= 170; degrees += 5) {
            angles.add(Math.toRadians(degrees));
        }
        return angles;
    }

    private Answer[] neighbours() {
        Answer first = Objects.requireNonNull(new Ladder(task).first());
        Answer second = task.atAngle(angleOf(first) + STEP, first.x(), first);
        if (!second.isConverged()) {
            throw new IllegalStateException("no answer five degrees on; there is nothing to time");
        }
        return new Answer[] {first, second};
    }

    private static double angleOf(Answer answer) {
        return SailingState.ofScaled(answer.x()).get(Variable.TRUE_WIND_ANGLE);
    }

    /** Best trim at one angle from the answer five degrees beside it, bands not included; to and fro. */
    @Benchmark
    public Answer warmPoint() {
        turn = 1 - turn;
        Answer from = neighbours[turn];
        return task.atAngle(angleOf(neighbours[1 - turn]), from.x(), from);
    }

    /** A row of the default book: both branches at 29 angles, best up and down the wind, bands, loads, limits. */
    @Benchmark
    public List<TargetPoint> oneWind() {
        return finder.pointsAt(WIND, angles);
    }
}
