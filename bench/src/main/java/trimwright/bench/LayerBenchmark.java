package trimwright.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Warmup;
import trimwright.layer.ViscousAnswer;
import trimwright.layer.ViscousFlow;
import trimwright.layer.ViscousPoint;
import trimwright.profile.Contour;
import trimwright.profile.Naca;
import trimwright.profile.TrailingEdge;
import trimwright.profile.WingProfile;

/** Flow with boundary layers: a NACA 0012 of 160 panels at Reynolds number 1 million, and a wing section with its slot. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 8, time = 1, timeUnit = TimeUnit.SECONDS) // the layers' laws are much to compile
public class LayerBenchmark extends Measured {
    private final List<Contour> aerofoil = List.of(Naca.symmetric(0.12).contour(160, TrailingEdge.BLUNT));
    private final ViscousFlow wing = new ViscousFlow(
            new WingProfile(0.18, 0.12, 0.4, 0.012, 0.9).elements(Math.toRadians(15), 100, TrailingEdge.BLUNT),
            ViscousFlow.QUIET);

    /** Angles of attack 0 to 16 degrees, one after the other, panels and all. */
    @Benchmark
    public @Nullable ViscousPoint polar() {
        ViscousFlow flow = new ViscousFlow(aerofoil, ViscousFlow.QUIET);
        ViscousPoint near = null;
        for (int degrees = 0; degrees <= 16; degrees++) {
            if (flow.at(Math.toRadians(degrees), 1e6, near) instanceof ViscousPoint point) {
                near = point;
            }
        }
        return near;
    }

    /** Two elements of 100 panels, flap 15 degrees, from a first guess. */
    @Benchmark
    public ViscousAnswer twoElements() {
        return wing.at(Math.toRadians(4), 2e6, null);
    }
}
