package trimwright.bench;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Setup;
import trimwright.air.AirState;
import trimwright.wing.PlacedWing;
import trimwright.wing.StripAir;
import trimwright.wing.Wing;
import trimwright.wing.WingAnswer;
import trimwright.wing.WingControl;
import trimwright.wing.WingSensitivity;
import trimwright.wing.WingSetting;
import trimwright.wing.WingSolved;

/** The demo boat's tall wing over the sea, apparent wind of 20 m/s at 25 degrees. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class WingBenchmark extends Measured {
    private static final WingSetting SETTING = new WingSetting(0.2, 0.35, 0.2, 0.5);

    /** A degree more camber, as a trimmer's step. */
    private static final WingSetting BEFORE = new WingSetting(0.2, 0.35 + Math.toRadians(1), 0.2, 0.5);

    @Param({"24", "30", "40"})
    public int strips;

    /** Sections in closed form or from tables. */
    @Param({"closed", "tables"})
    public String sections = "closed";

    private PlacedWing placed = Wing.of(DemoPlatform.wing(), 24).inFreeAir();
    private StripAir air = StripAir.uniform(24, 20, 0.44, AirState.STANDARD);
    private WingSolved neighbour = solved(placed.solve(air, BEFORE));

    @Setup
    public void solveNeighbour() {
        Wing wing = sections.equals("tables")
                ? Wing.of(DemoPlatform.wing(), SampledTable.family(), strips)
                : Wing.of(DemoPlatform.wing(), strips);
        placed = wing.placedAt(0.05, 2.5);
        air = StripAir.uniform(strips, 20, 0.44, 0.05, AirState.STANDARD);
        neighbour = solved(placed.solve(air, BEFORE));
    }

    @Benchmark
    public WingAnswer cold() {
        return placed.solve(air, SETTING);
    }

    @Benchmark
    public WingAnswer warm() {
        return placed.solve(air, SETTING, neighbour);
    }

    @Benchmark
    public WingSensitivity warmWithDerivatives() {
        return solved(placed.solve(air, SETTING, neighbour)).sensitivity();
    }

    /** By sheet, camber, twist and its middle: what the trimmer moves. */
    @Benchmark
    public WingSensitivity warmWithTrimDerivatives() {
        return solved(placed.solve(air, SETTING, neighbour)).sensitivity(WingControl.TRIM);
    }

    private static WingSolved solved(WingAnswer answer) {
        return (WingSolved) answer;
    }
}
