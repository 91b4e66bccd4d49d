package trimwright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Setup;
import trimwright.debrief.Debrief;
import trimwright.debrief.DebriefOptions;
import trimwright.debrief.DebriefReport;
import trimwright.ingest.IngestResult;
import trimwright.ingest.nmea.NmeaOptions;
import trimwright.ingest.nmea.NmeaReader;
import trimwright.target.TargetBook;
import trimwright.target.TargetFinder;
import trimwright.target.TargetGrid;
import trimwright.track.BoatTrack;
import trimwright.wind.WindOptions;

/** Debrief of the example's log, from tracks at hand to all figures; neither library nor targets are timed. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class DebriefBenchmark extends Measured {
    private static final TargetGrid GRID =
            new TargetGrid(List.of(6.0, 7.0, 8.0, 9.0), List.of(0.8, 1.2, 1.6, 2.0, 2.4));

    private final TargetBook book = new TargetFinder(DemoPlatform.platform(), Map.of()).bookOf(GRID);
    private List<BoatTrack> tracks = List.of();

    @Setup
    public void readLog() throws IOException {
        Path log = Path.of(System.getProperty("trimwright.home", "."), "examples", "saltmere", "dunlin.nmea");
        IngestResult result = NmeaReader.read(Files.readAllBytes(log), NmeaOptions.of("Dunlin"));
        tracks = ((IngestResult.Tracks) result).tracks();
    }

    @Benchmark
    public DebriefReport byOwnBest() {
        return Debrief.of(tracks, DebriefOptions.WITHOUT_BOAT);
    }

    @Benchmark
    public DebriefReport byTargets() {
        return Debrief.of(tracks, new DebriefOptions(DemoPlatform.boat(), book, null, WindOptions.DEFAULT));
    }
}
