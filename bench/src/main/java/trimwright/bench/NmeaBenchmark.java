package trimwright.bench;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import trimwright.ingest.IngestResult;
import trimwright.ingest.nmea.NmeaOptions;
import trimwright.ingest.nmea.NmeaReader;

/** Reading a log of an hour at 10 Hz, five sentences a time, from bytes at hand to tracks. */
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
public class NmeaBenchmark extends Measured {
    private final byte[] log = log();

    /** Read with the result: {@code megabytes} a second, of 10^6 bytes. */
    @AuxCounters
    @State(Scope.Thread)
    public static class Volume {
        public double megabytes;
    }

    @Benchmark
    public IngestResult read(Volume volume) {
        IngestResult result = NmeaReader.read(log, NmeaOptions.of("Dunlin"));
        if (!(result instanceof IngestResult.Tracks) || result.report().issues().total() > 0) {
            throw new IllegalStateException("the log is not read as it was written");
        }
        volume.megabytes += log.length / 1e6;
        return result;
    }

    private static byte[] log() {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < 36_000; i++) {
            double t = i / 10.0;
            String time = String.format(Locale.ROOT, "%02d%02d%04.1f", 12 + i / 36_000, i / 600 % 60, (i % 600) / 10.0);
            double wave = Math.sin(t / 40);
            add(
                    text,
                    "GPRMC,%s,A,40%07.4f,S,110%07.4f,W,%.1f,%.1f,060327,,,A",
                    time,
                    30 + 5 * wave,
                    10 + t / 100,
                    24 + 8 * wave,
                    200 + 40 * wave);
            add(text, "IIVHW,,T,%.1f,M,%.1f,N,,K", 203 + 40 * wave, 23 + 8 * wave);
            add(text, "HEHDT,%.1f,T", 201 + 40 * wave);
            add(text, "WIMWV,%.1f,R,%.1f,N,A", 20 + 5 * wave, 31 + 6 * wave);
            add(text, "IIXDR,A,%.1f,D,ROLL,A,%.1f,D,PITCH", 2 + wave, 0.5 - wave);
        }
        return text.toString().getBytes(StandardCharsets.US_ASCII);
    }

    private static void add(StringBuilder text, String form, Object... values) {
        String body = String.format(Locale.ROOT, form, values);
        int sum = 0;
        for (int i = 0; i < body.length(); i++) {
            sum ^= body.charAt(i);
        }
        text.append('$').append(body).append(String.format(Locale.ROOT, "*%02X\r\n", sum));
    }
}
