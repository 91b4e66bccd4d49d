package trimwright.track;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class ChannelSummaryTest {
    private static final long SECOND = 1_000_000_000L;

    @Test
    void marksGapsRateAndCoverageAreCounted() {
        long[] times = new long[90];
        double[] values = new double[90];
        byte[] marks = new byte[90];
        for (int i = 0; i < 90; i++) {
            // Ten seconds are missing after the 50th sample.
            times[i] = (i < 50 ? i : i + 10) * SECOND;
            values[i] = i;
        }
        marks[3] = (byte) Quality.JUMP.ordinal();
        marks[20] = (byte) Quality.FROZEN.ordinal();
        marks[21] = (byte) Quality.FROZEN.ordinal();
        marks[22] = (byte) Quality.FROZEN.ordinal();
        marks[80] = (byte) Quality.ABSENT.ordinal();
        Channel channel = new Channel("p", values, marks);
        ChannelGroup group = new ChannelGroup("g", times, List.of(channel));
        ChannelSummary summary = ChannelSummary.of(group, channel, 0, 199 * SECOND);
        assertEquals(89, summary.samples());
        assertEquals(1, summary.rate(), 1e-12);
        assertEquals(1, summary.count(Quality.JUMP));
        assertEquals(3, summary.count(Quality.FROZEN));
        assertEquals(0, summary.count(Quality.OUT_OF_RANGE));
        // The frozen three leave a way of 4 s, the missing ten one of 11 s.
        assertEquals(2, summary.gaps());
        assertEquals(11, summary.longestGap(), 1e-12);
        assertEquals((99 - 15) / 199.0, summary.coverage(), 1e-12);
    }

    @Test
    void oneSampleHasNoRate() {
        Channel channel = Channel.of("p", new double[] {1});
        ChannelSummary summary =
                ChannelSummary.of(new ChannelGroup("g", new long[] {5}, List.of(channel)), channel, 0, 10);
        assertEquals(0, summary.rate(), 0);
        assertEquals(0, summary.coverage(), 0);
    }
}
