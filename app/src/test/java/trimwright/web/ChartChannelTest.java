package trimwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;
import trimwright.track.Decimation;
import trimwright.track.Paths;
import trimwright.track.Quality;

class ChartChannelTest {
    private static final long SECOND = 1_000_000_000L;

    @Test
    void speedIsShownInKnotsAndDoubtfulSamplesAreLeftOut() {
        byte jump = (byte) Quality.JUMP.ordinal();
        Channel channel =
                new Channel(Paths.SOG, new double[] {1852.0 / 3600, 99, 2 * 1852.0 / 3600}, new byte[] {0, jump, 0});
        Decimation shown = ready(channel, 1).between(0, 10 * SECOND, 100);
        assertEquals(2, shown.size());
        assertEquals(1, shown.value(0), 1e-12);
        assertEquals(2, shown.value(1), 1e-12);
    }

    @Test
    void aHeadingThatCrossesNorthDoesNotJump() {
        double[] values = new double[60];
        for (int i = 0; i < values.length; i++) {
            values[i] = Math.toRadians((350 + i / 3.0) % 360);
        }
        Decimation shown = ready(Channel.of(Paths.HEADING, values), 1).between(0, 60 * SECOND, 100);
        for (int i = 1; i < shown.size(); i++) {
            assertEquals(1 / 3.0, shown.value(i) - shown.value(i - 1), 1e-9);
        }
        assertEquals(350, (shown.value(0) + 360) % 360, 1e-9);
    }

    @Test
    void aGapBreaksTheLineAndASlowSensorDoesNot() {
        long[] times = {0, SECOND, 2 * SECOND, 12 * SECOND, 13 * SECOND};
        ChannelGroup group = new ChannelGroup("g", times, List.of(Channel.of(Paths.AWS, new double[] {1, 1, 1, 1, 1})));
        Decimation shown = ChartChannel.of(group, group.channels().get(0)).between(0, 20 * SECOND, 100);
        assertEquals(6, shown.size());
        assertTrue(Double.isNaN(shown.value(3)));
        Decimation slow =
                ready(Channel.of(Paths.AWS, new double[] {1, 1, 1, 1, 1}), 8).between(0, 40 * SECOND, 100);
        for (int i = 0; i < slow.size(); i++) {
            assertFalse(Double.isNaN(slow.value(i)));
        }
    }

    @Test
    void theLineLeavesThePictureOnBothSides() {
        double[] values = new double[100];
        Decimation shown = ready(Channel.of(Paths.AWS, values), 1).between(50 * SECOND, 52 * SECOND, 10);
        assertEquals(50 * SECOND, shown.timeNanos(0));
        assertEquals(53 * SECOND, shown.timeNanos(shown.size() - 1));
        Decimation between = ready(Channel.of(Paths.AWS, values), 1).between(50 * SECOND + 1, 50 * SECOND + 2, 10);
        assertEquals(2, between.size());
    }

    @Test
    void anAbsentChannelGivesNothing() {
        Decimation shown = ready(Channel.of(Paths.AWA, new double[] {Double.NaN, Double.NaN}), 1)
                .between(0, SECOND, 10);
        assertEquals(0, shown.size());
    }

    @Test
    void anotherDevicesChannelIsShownInTheSameLane() {
        assertEquals("wind_angle", ChannelFace.of(Paths.AWA + "@cc").lane());
        assertEquals("other", ChannelFace.of("engine.oil").lane());
    }

    private static ChartChannel ready(Channel channel, long seconds) {
        long[] times = new long[channel.size()];
        for (int i = 0; i < times.length; i++) {
            times[i] = i * seconds * SECOND;
        }
        return ChartChannel.of(new ChannelGroup("g", times, List.of(channel)), channel);
    }
}
