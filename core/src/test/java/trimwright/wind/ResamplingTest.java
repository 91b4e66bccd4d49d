package trimwright.wind;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import trimwright.track.BoatTrack;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;
import trimwright.track.Quality;

class ResamplingTest {
    private static final String PATH = "some.path";

    private static double[] onto(SessionClock clock, double[] seconds, double[] values, Quantity.Kind kind) {
        return Resampling.onto(clock, track(seconds, Channel.of(PATH, values)), PATH, kind, 2.5);
    }

    private static BoatTrack track(double[] seconds, Channel channel) {
        long[] times = new long[seconds.length];
        for (int i = 0; i < times.length; i++) {
            times[i] = Math.round(seconds[i] * 1e9);
        }
        return new BoatTrack("Dunlin", List.of(new ChannelGroup("g", times, List.of(channel))));
    }

    private static SessionClock clock(double seconds, int rate) {
        return SessionClock.covering(0, (long) (seconds * 1e9), rate);
    }

    @Test
    void directionsAreJoinedTheShortWayRoundNorth() {
        double[] out = onto(
                clock(2, 2),
                new double[] {0, 1, 2},
                new double[] {Math.toRadians(350), Math.toRadians(10), Math.toRadians(350)},
                Quantity.Kind.COMPASS);
        assertEquals(0, Math.toDegrees(out[1]) % 360, 1e-9);
        assertEquals(10, Math.toDegrees(out[2]), 1e-9);
        assertTrue(Math.abs(Math.IEEEremainder(Math.toDegrees(out[3]), 360)) < 1e-9);
    }

    @Test
    void signedAnglesAreJoinedTheShortWayRoundTheStern() {
        double[] out = onto(
                clock(1, 2),
                new double[] {0, 1},
                new double[] {Math.toRadians(178), Math.toRadians(-178)},
                Quantity.Kind.SIGNED);
        assertEquals(180, Math.abs(Math.toDegrees(out[1])), 1e-9);
    }

    @Test
    void aLongGapAndBothEndsStayAbsent() {
        double[] out = onto(
                clock(12, 1), new double[] {1, 2, 3, 8, 9, 10}, new double[] {1, 2, 3, 8, 9, 10}, Quantity.Kind.PLAIN);
        assertTrue(Double.isNaN(out[0]));
        assertEquals(3, out[3], 0);
        for (int i = 4; i < 8; i++) {
            assertTrue(Double.isNaN(out[i]), "second " + i);
        }
        assertEquals(8, out[8], 0);
        assertTrue(Double.isNaN(out[11]));
    }

    @Test
    void aSlowChannelIsBridgedOverThreeOfItsOwnIntervals() {
        double[] seconds = {0, 2, 4, 10, 12, 19};
        double[] out = onto(clock(19, 1), seconds, seconds, Quantity.Kind.PLAIN);
        assertEquals(7, out[7], 1e-12);
        assertTrue(Double.isNaN(out[15]));
    }

    @Test
    void aFastChannelIsAveragedOverEachStep() {
        double[] seconds = new double[41];
        double[] values = new double[41];
        for (int i = 0; i < seconds.length; i++) {
            seconds[i] = i * 0.1;
            values[i] = i % 2 == 0 ? 1 : -1;
        }
        double[] out = onto(clock(4, 1), seconds, values, Quantity.Kind.PLAIN);
        assertEquals(0, out[2], 1e-12);
    }

    @Test
    void marksThatSpeakAgainstASampleKeepItOut() {
        byte jump = (byte) Quality.JUMP.ordinal();
        byte repaired = (byte) Quality.TIME_REPAIRED.ordinal();
        Channel channel = new Channel(PATH, new double[] {0, 99, 2, 3}, new byte[] {0, jump, repaired, 0});
        double[] out =
                Resampling.onto(clock(3, 1), track(new double[] {0, 1, 2, 3}, channel), PATH, Quantity.Kind.PLAIN, 2.5);
        assertEquals(1, out[1], 1e-12);
        assertEquals(2, out[2], 1e-12);
    }

    @Test
    void aClockStartsOnAWholeStepAndRefusesWrongTimes() {
        SessionClock clock = SessionClock.covering(1_234_567_890L, 5_000_000_000L, 5);
        assertEquals(1_200_000_000L, clock.startNanos());
        assertEquals(20, clock.size());
        long twentyYears = 20L * 365 * 86_400 * 1_000_000_000L;
        assertThrows(IllegalArgumentException.class, () -> SessionClock.covering(0, twentyYears, 1));
    }
}
