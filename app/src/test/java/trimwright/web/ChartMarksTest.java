package trimwright.web;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;
import trimwright.track.Paths;
import trimwright.track.Quality;

class ChartMarksTest {
    private static final long SECOND = 1_000_000_000L;
    private static final byte GOOD = 0;
    private static final byte ABSENT = 1;
    private static final byte JUMP = (byte) Quality.JUMP.ordinal();
    private static final byte FROZEN = (byte) Quality.FROZEN.ordinal();

    @Test
    void everySampleThatIsNeitherGoodNorAbsentIsMarkedWithItsReason() {
        List<double[]> found = marks(GOOD, JUMP, ABSENT, FROZEN, GOOD).between(0, 10 * SECOND, 1000);
        assertArrayEquals(new double[] {1, 3}, found.get(0));
        assertArrayEquals(new double[] {3, 2}, found.get(1));
    }

    @Test
    void onlyThoseOfTheStretchAskedForCome() {
        assertArrayEquals(
                new double[] {2, 3},
                marks(JUMP, JUMP, JUMP, JUMP, JUMP)
                        .between(2 * SECOND, 3 * SECOND, 1000)
                        .get(0));
    }

    @Test
    void aBucketKeepsTheFirstOfEachReasonSoThatNoneIsHiddenByAnother() {
        List<double[]> found = marks(JUMP, JUMP, FROZEN, JUMP, JUMP, JUMP, JUMP, JUMP, JUMP, FROZEN)
                .between(0, 10 * SECOND, 2);
        assertArrayEquals(new double[] {0, 2, 5, 9}, found.get(0));
        assertArrayEquals(new double[] {3, 2, 3, 2}, found.get(1));
    }

    private static ChartMarks marks(byte... quality) {
        long[] times = new long[quality.length];
        for (int i = 0; i < times.length; i++) {
            times[i] = i * SECOND;
        }
        Channel channel = new Channel(Paths.SOG, new double[quality.length], quality);
        return ChartMarks.of(new ChannelGroup("gnss", times, List.of(channel)), channel);
    }
}
