package trimwright.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import trimwright.panel.IdealFlow;
import trimwright.panel.SurfaceFlow;
import trimwright.profile.Contour;
import trimwright.profile.TrailingEdge;
import trimwright.profile.WingProfile;

/** Ideal flow round a wing section of two elements, 100 panels each, flap at 15 degrees. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class PanelBenchmark extends Measured {
    private final List<Contour> elements =
            new WingProfile(0.18, 0.12, 0.4, 0.012, 0.9).elements(Math.toRadians(15), 100, TrailingEdge.BLUNT);
    private final IdealFlow flow = new IdealFlow(elements);

    /** Equations set up and factored. */
    @Benchmark
    public IdealFlow factored() {
        return new IdealFlow(elements);
    }

    /** One more angle of attack once they are. */
    @Benchmark
    public SurfaceFlow atAngle() {
        return flow.at(0.1);
    }
}
