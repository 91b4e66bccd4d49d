package trimwright.segment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import trimwright.track.BoatTrack;
import trimwright.track.Paths;
import trimwright.wind.SailedWind;
import trimwright.wind.SessionClock;
import trimwright.wind.SyntheticTrack;
import trimwright.wind.WindOptions;
import trimwright.wind.WindTrack;

/** Turns made by hand: the apparent wind's side is known from heading, speed and wind. */
class SideChangeTest {
    private static final int RATE = 10;

    /** Turns from one heading to another at 15 degrees a second, from second 60 on, in a wind from north of 8 m/s. */
    private static WindTrack track(double from, double to, double speed, double camberAt, double noise) {
        double seconds = Math.abs(to - from) / 15;
        Random random = new Random(7);
        BoatTrack track = new SyntheticTrack(120, RATE)
                .wind(t -> 8, t -> 0)
                .heading(t -> t < 60 ? from : t > 60 + seconds ? to : from + (to - from) * (t - 60) / seconds)
                .speed(t -> speed)
                .with(Paths.CAMBER, t -> Math.toRadians((t < camberAt ? 1 : -1) * 25 + noise * random.nextGaussian()))
                .build();
        return SailedWind.of(
                track, SessionClock.covering(track.startNanos(), track.endNanos(), RATE), null, WindOptions.DEFAULT);
    }

    private static Turn only(WindTrack track) {
        List<Turn> turns = Cutting.of(track, new FoilingRule.NotTold()).turns();
        assertEquals(1, turns.size());
        return turns.get(0);
    }

    @Test
    void inATackTheWindComesOverTheBowWhenItPointsIntoIt() {
        // From 45 degrees on port's side of north: wind from starboard. At 15 degrees a second it points north after 3
        // s.
        WindTrack track = track(-45, 45, 6, 64, 1);
        SideChange change = SideChange.of(track, only(track));
        assertNotNull(change);
        assertEquals(SideChange.Over.BOW, change.over());
        assertEquals(63, change.wind() / (double) RATE, 0.15);
        Integer camber = change.camber();
        assertNotNull(camber);
        assertEquals(64, camber / (double) RATE, 0.15);
    }

    @Test
    void aFastBoatsGybeTakesItOverTheBowAndASlowOnesOverTheStern() {
        // From 140 to 220 degrees; dead downwind after 2.67 s. At 16 m/s the apparent wind is from ahead there, at 4
        // from astern.
        WindTrack fast = track(220, 140, 16, 62, 1);
        SideChange over = SideChange.of(fast, only(fast));
        assertNotNull(over);
        assertEquals(SideChange.Over.BOW, over.over());
        assertEquals(62.67, over.wind() / (double) RATE, 0.15);
        WindTrack slow = track(220, 140, 4, 62, 1);
        SideChange behind = SideChange.of(slow, only(slow));
        assertNotNull(behind);
        assertEquals(SideChange.Over.STERN, behind.over());
        assertEquals(62.67, behind.wind() / (double) RATE, 0.15);
    }

    @Test
    void aCamberThatStaysWhereItWasDidNotComeOver() {
        WindTrack track = track(-45, 45, 6, 1000, 1);
        SideChange change = SideChange.of(track, only(track));
        assertNotNull(change);
        assertNull(change.camber());
    }
}
