package trimwright.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import trimwright.bench.Measured;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;

/** A group of 100,000 rows (nearly three hours at 10 Hz) and ten channels, written to disk and read back. */
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
public class ParquetBenchmark extends Measured {
    private static final int ROWS = 100_000;
    private static final int CHANNELS = 10;

    private final Parquet parquet = new Parquet();
    private final ChannelGroup group = group();
    private final GroupInfo info = new GroupInfo(
            "all",
            "all.parquet",
            ROWS,
            group.timeNanos(0),
            group.timeNanos(ROWS - 1),
            group.channels().stream().map(Channel::path).toList());
    private Path folder = Path.of("");

    /** Rows a second. */
    @AuxCounters
    @State(Scope.Thread)
    public static class Volume {
        public long rows;
    }

    /** Values that wander, as a sensor's do, in steps of 0.001. */
    private static ChannelGroup group() {
        Random random = new Random(1);
        long[] times = new long[ROWS];
        for (int i = 0; i < ROWS; i++) {
            times[i] = 1_800_000_000_000_000_000L + 100_000_000L * i;
        }
        List<Channel> channels = new ArrayList<>();
        for (int c = 0; c < CHANNELS; c++) {
            double[] values = new double[ROWS];
            long thousandths = 0;
            for (int i = 0; i < ROWS; i++) {
                thousandths += Math.round(20 * random.nextGaussian());
                values[i] = thousandths / 1000.0;
            }
            channels.add(Channel.of("bench.channel" + c, values));
        }
        return new ChannelGroup("all", times, channels);
    }

    @Setup
    public void writeOnce() throws IOException {
        folder = Files.createTempDirectory("trimwright-bench");
        parquet.write(group, folder.resolve(info.file()));
    }

    @TearDown
    public void clear() throws IOException {
        parquet.close();
        Files.delete(folder.resolve(info.file()));
        Files.delete(folder);
    }

    /** Forced to disk each time, as an import does. */
    @Benchmark
    public void write(Volume volume) throws IOException {
        Path file = folder.resolve("again.parquet");
        parquet.write(group, file);
        Files.delete(file);
        volume.rows += ROWS;
    }

    @Benchmark
    public ChannelGroup read(Volume volume) {
        volume.rows += ROWS;
        return parquet.read(info, folder.resolve(info.file()));
    }
}
