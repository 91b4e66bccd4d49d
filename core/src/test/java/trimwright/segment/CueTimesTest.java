package trimwright.segment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import trimwright.track.BoatTrack;
import trimwright.track.Paths;
import trimwright.wind.SailedWind;
import trimwright.wind.SessionClock;
import trimwright.wind.SyntheticTrack;
import trimwright.wind.WindOptions;
import trimwright.wind.WindTrack;

/** A turn made by hand, 15 degrees a second from second 60 on in a wind from north: when its cues come follows from the triangle. */
class CueTimesTest {
    private static final int RATE = 10;
    private static final double WIND = 8;
    private static final double SPEED = 6;

    private static SyntheticTrack base(double from, double to) {
        double seconds = Math.abs(to - from) / 15;
        return new SyntheticTrack(120, RATE)
                .wind(t -> WIND, t -> 0)
                .heading(t -> t < 60 ? from : t > 60 + seconds ? to : from + (to - from) * (t - 60) / seconds)
                .speed(t -> SPEED);
    }

    private static WindTrack of(SyntheticTrack made) {
        BoatTrack track = made.build();
        return SailedWind.of(
                track, SessionClock.covering(track.startNanos(), track.endNanos(), RATE), null, WindOptions.DEFAULT);
    }

    private static Turn only(WindTrack track) {
        List<Turn> turns = Cutting.of(track, new FoilingRule.NotTold()).turns();
        assertEquals(1, turns.size());
        return turns.get(0);
    }

    /** Second at which a bow that turns from that heading has the apparent wind at an angle on its starboard side. */
    private static double when(double heading, double awa) {
        for (double t = 60; t < 70; t += 0.001) {
            double true1 = Math.toRadians(-(heading + 15 * (t - 60)));
            double felt = Math.atan2(WIND * Math.sin(true1), WIND * Math.cos(true1) + SPEED);
            if (felt <= awa) {
                return t;
            }
        }
        throw new IllegalArgumentException("never");
    }

    @Test
    void aTacksCuesFallWhereTheTriangleHasThem() {
        WindTrack track = of(base(-45, 45)
                .with(Paths.CAMBER, t -> Math.toRadians(t < 63.5 ? 25 : Math.max(-25, 25 - 25 * (t - 63.5))))
                .with(Paths.SHEET, t -> Math.toRadians(t < 59 ? 5 : t < 63.5 ? 9 : t < 65 ? -12 : -6)));
        CueTimes cues = CueTimes.of(track, only(track), Math.toRadians(10), Math.toRadians(15));
        assertAt(when(-45, Math.toRadians(10)), cues.over());
        assertAt(63, cues.across());
        assertAt(63.7, cues.camber());
        assertAt(when(-45, Math.toRadians(-15)), cues.on());
        assertAt(65, cues.sheet());
        Double eased = cues.eased();
        assertNotNull(eased);
        assertEquals(Math.toRadians(4), eased, Math.toRadians(0.3));
    }

    @Test
    void aBearAwayHasItsTrueWindAngleAndItsSheet() {
        WindTrack track = of(base(-45, -135).with(Paths.SHEET, t -> Math.toRadians(t < 60 ? 5 : t < 64 ? 20 : 10)));
        CueTimes cues = CueTimes.of(track, only(track), Double.NaN, Math.toRadians(100));
        assertAt(60 + 55 / 15.0, cues.on());
        assertAt(64, cues.sheet());
        assertNull(cues.over());
        assertNull(cues.across());
    }

    @Test
    void whatIsNotLoggedIsNotTold() {
        WindTrack track = of(base(-45, 45));
        CueTimes cues = CueTimes.of(track, only(track), Math.toRadians(10), Math.toRadians(15));
        assertNull(cues.camber());
        assertNull(cues.sheet());
        assertNull(cues.eased());
        assertAt(63, cues.across());
    }

    private static void assertAt(double second, @Nullable Integer instant) {
        assertNotNull(instant);
        // The wind is smoothed and a reading is of a tenth of a second: a few tenths.
        assertEquals(second, instant / (double) RATE, 0.35);
    }
}
