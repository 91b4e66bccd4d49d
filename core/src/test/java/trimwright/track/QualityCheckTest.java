package trimwright.track;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class QualityCheckTest {
    private static final long SECOND = 1_000_000_000L;

    @Test
    void aSpikeIsMarkedAndItsNeighboursAreNot() {
        double[] heading = noise(100, 1.0, 0.01);
        heading[50] = 4.0;
        Channel marked = mark(Paths.HEADING, heading);
        assertMarks(marked, Quality.JUMP, 50);
        assertArrayEquals(heading, marked.toArray(), "values stay as they are");
    }

    @Test
    void headingThroughNorthIsNoJump() {
        double[] heading = new double[100];
        for (int i = 0; i < heading.length; i++) {
            heading[i] = ((6.0 + 0.02 * i) % (2 * Math.PI) + 0.001 * (i % 3)) % (2 * Math.PI);
        }
        assertMarks(mark(Paths.HEADING, heading), Quality.JUMP);
    }

    @Test
    void aNewLevelIsMarkedOnceAndTakenFromThere() {
        double[] speed = noise(100, 3.0, 0.1);
        for (int i = 60; i < 100; i++) {
            speed[i] += 20;
        }
        assertMarks(mark(Paths.SOG, speed), Quality.JUMP, 60);
    }

    @Test
    void valuesThatCannotBeAreMarked() {
        double[] speed = noise(50, 10, 0.5);
        speed[10] = -5;
        speed[20] = 300;
        assertMarks(mark(Paths.AWS, speed), Quality.OUT_OF_RANGE, 10, 20);
    }

    @Test
    void aFrozenSensorIsMarkedAndAMooredBoatIsNot() {
        double[] wind = noise(400, 8, 0.5);
        Arrays.fill(wind, 100, 250, 7.7);
        Channel marked = mark(Paths.AWS, wind);
        for (int i = 0; i < 400; i++) {
            assertEquals(i >= 100 && i < 250 ? Quality.FROZEN : Quality.GOOD, marked.quality(i), "sample " + i);
        }
        double[] still = new double[400];
        assertMarks(mark(Paths.STW, still), Quality.FROZEN);
        assertEquals(Quality.FROZEN, mark(Paths.AWS, still).quality(200));
    }

    @Test
    void aMarkThatIsThereStays() {
        byte[] marks = new byte[3];
        marks[1] = (byte) Quality.TIME_REPAIRED.ordinal();
        ChannelGroup group =
                new ChannelGroup("g", times(3), List.of(new Channel(Paths.AWS, new double[] {5, 900, 5}, marks)));
        assertEquals(
                Quality.TIME_REPAIRED,
                QualityCheck.mark(group).channels().get(0).quality(1));
    }

    @Test
    void absentSamplesAreLeftAlone() {
        double[] wind = noise(60, 8, 0.5);
        wind[5] = Double.NaN;
        assertMarks(mark(Paths.AWS, wind), Quality.ABSENT, 5);
    }

    @Test
    void qualityIsCountedAndLocated() {
        long[] times = times(100);
        for (int i = 50; i < 100; i++) {
            times[i] += 30 * SECOND;
        }
        double[] wind = noise(100, 8, 0.5);
        wind[70] = 200;
        Arrays.fill(wind, 80, 90, Double.NaN);
        ChannelGroup group = QualityCheck.mark(new ChannelGroup("g", times, List.of(Channel.of(Paths.AWS, wind))));
        ChannelQuality quality = ChannelQuality.of(group, group.channels().get(0));
        assertEquals(100, quality.samples());
        assertEquals(10, quality.count(Quality.ABSENT));
        assertEquals(1, quality.count(Quality.OUT_OF_RANGE));
        assertEquals(1.0, quality.rate(), 1e-9);
        assertEquals(
                List.of(
                        new ChannelQuality.Spell(ChannelQuality.Kind.GAP, times[49], times[50]),
                        new ChannelQuality.Spell(ChannelQuality.Kind.OUT_OF_RANGE, times[70], times[70]),
                        new ChannelQuality.Spell(ChannelQuality.Kind.GAP, times[79], times[90])),
                quality.spells());
    }

    private static Channel mark(String path, double[] values) {
        ChannelGroup group = new ChannelGroup("g", times(values.length), List.of(Channel.of(path, values)));
        return QualityCheck.mark(group).channels().get(0);
    }

    private static void assertMarks(Channel channel, Quality quality, int... expected) {
        int[] marked = java.util.stream.IntStream.range(0, channel.size())
                .filter(i -> channel.quality(i) != Quality.GOOD)
                .toArray();
        assertArrayEquals(expected, marked);
        for (int i : marked) {
            assertEquals(quality, channel.quality(i));
        }
    }

    private static long[] times(int n) {
        long[] times = new long[n];
        Arrays.setAll(times, i -> i * SECOND);
        return times;
    }

    private static double[] noise(int n, double mean, double sd) {
        Random random = new Random(3);
        double[] values = new double[n];
        Arrays.setAll(values, i -> mean + sd * random.nextGaussian());
        return values;
    }
}
