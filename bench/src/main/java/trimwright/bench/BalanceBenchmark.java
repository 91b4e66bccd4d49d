package trimwright.bench;

import java.util.Objects;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import trimwright.platform.Balance;
import trimwright.platform.Balanced;
import trimwright.platform.Balancer;
import trimwright.platform.Conditions;
import trimwright.platform.Equilibrium;
import trimwright.platform.Platform;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.platform.WingLoad;

/** All loads of the demo boat in one state, and the search for the state in which they cancel. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class BalanceBenchmark extends Measured {
    private final Platform platform = DemoPlatform.platform();
    private final Conditions conditions = DemoPlatform.conditions();
    private final SailingState guess = DemoPlatform.foiling();
    private final SailingState faster = guess.with(Variable.BOAT_SPEED, guess.get(Variable.BOAT_SPEED) + 0.1);
    private final SailingState higher = guess.with(Variable.RIDE_HEIGHT, guess.get(Variable.RIDE_HEIGHT) + 0.02);
    private final Balancer balancer = new Balancer(platform, conditions, Balancer.FOILING);
    private final WingLoad start = Objects.requireNonNull(platform.wingLoad(guess, conditions, null));

    public BalanceBenchmark() {
        if (!(balancer.balance(guess) instanceof Balanced)) {
            throw new IllegalStateException("the guess leads to no balance; there is nothing to time");
        }
    }

    /** Forces where the wing keeps its place over the sea. */
    @Benchmark
    public @Nullable Balance residual() {
        return platform.balance(faster, conditions, start);
    }

    /** Forces where the wing has moved, so that its image in the sea is made anew. */
    @Benchmark
    public @Nullable Balance residualWithImage() {
        return platform.balance(higher, conditions, start);
    }

    @Benchmark
    public Equilibrium balanceFromGuess() {
        return balancer.balance(guess);
    }
}
