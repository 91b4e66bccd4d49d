package trimwright.track;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class DecimationTest {
    @Test
    void fewSamplesComeBackWhole() {
        ChannelGroup group = group(new long[] {10, 20, 30, 40}, 1, 2, 3, 4);
        Decimation thinned = Decimation.of(group, group.channels().get(0), 15, 40, 10);
        assertArrayEquals(new double[] {2, 3, 4}, valuesOf(thinned));
        assertEquals(20, thinned.timeNanos(0));
    }

    @Test
    void anEmptySpanGivesNothing() {
        ChannelGroup group = group(new long[] {10, 20}, 1, 2);
        assertEquals(0, Decimation.of(group, group.channels().get(0), 21, 99, 4).size());
        assertEquals(0, Decimation.of(group, group.channels().get(0), 30, 5, 4).size());
        ChannelGroup empty = group(new long[0]);
        assertEquals(0, Decimation.of(empty, empty.channels().get(0), 0, 9, 4).size());
    }

    @Test
    void everyBucketKeepsItsLowestAndHighestInTimeOrder() {
        Random random = new Random(5);
        for (int round = 0; round < 200; round++) {
            int n = 50 + random.nextInt(400);
            long[] times = new long[n];
            double[] values = new double[n];
            long time = random.nextInt(1000);
            for (int i = 0; i < n; i++) {
                time += 1 + random.nextInt(50);
                times[i] = time;
                values[i] = random.nextInt(20) == 0 ? Double.NaN : random.nextGaussian();
            }
            ChannelGroup group = group(times, values);
            int buckets = 1 + random.nextInt(20);
            Decimation thinned = Decimation.of(group, group.channels().get(0), times[0], times[n - 1], buckets);
            assertTrue(thinned.size() <= 2 * buckets);
            assertEquals(max(values), max(valuesOf(thinned)));
            assertEquals(-max(negated(values)), -max(negated(valuesOf(thinned))));
            for (int i = 0; i < thinned.size(); i++) {
                assertTrue(i == 0 || thinned.timeNanos(i) > thinned.timeNanos(i - 1));
                int at = Arrays.binarySearch(times, thinned.timeNanos(i));
                assertEquals(values[at], thinned.value(i));
            }
        }
    }

    @Test
    void aBucketOfAbsentSamplesStaysAGap() {
        double[] values = new double[100];
        Arrays.fill(values, 40, 60, Double.NaN);
        long[] times = new long[100];
        Arrays.setAll(times, i -> i);
        ChannelGroup group = group(times, values);
        double[] thinned = valuesOf(Decimation.of(group, group.channels().get(0), 0, 99, 10));
        assertEquals(2, Arrays.stream(thinned).filter(Double::isNaN).count());
    }

    @Test
    void aDayOfAMillionSamplesIsThinnedInTime() {
        int n = 1_000_000;
        long[] times = new long[n];
        double[] values = new double[n];
        for (int i = 0; i < n; i++) {
            times[i] = i * 86_400_000L;
            values[i] = Math.sin(i * 1e-3);
        }
        ChannelGroup group = group(times, values);
        long best = Long.MAX_VALUE;
        for (int round = 0; round < 10; round++) {
            long began = System.nanoTime();
            Decimation.of(group, group.channels().get(0), times[0], times[n - 1], 2000);
            best = Math.min(best, System.nanoTime() - began);
        }
        assertTrue(best < 50_000_000L, "took " + best / 1e6 + " ms");
    }

    private static ChannelGroup group(long[] times, double... values) {
        return new ChannelGroup("g", times, List.of(Channel.of("p", values)));
    }

    private static double[] valuesOf(Decimation thinned) {
        double[] values = new double[thinned.size()];
        Arrays.setAll(values, thinned::value);
        return values;
    }

    private static double max(double[] values) {
        return Arrays.stream(values).filter(v -> !Double.isNaN(v)).max().orElseThrow();
    }

    private static double[] negated(double[] values) {
        return Arrays.stream(values).map(v -> -v).toArray();
    }
}
