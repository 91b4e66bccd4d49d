package trimwright.debrief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import trimwright.target.Attitude;
import trimwright.target.Band;
import trimwright.target.Branch;
import trimwright.target.Loads;
import trimwright.target.Target;
import trimwright.target.TargetBook;
import trimwright.target.TargetGrid;
import trimwright.target.TargetMode;
import trimwright.target.TargetPoint;
import trimwright.target.TrimBands;
import trimwright.target.TrimSetting;
import trimwright.track.Channel;
import trimwright.wind.SyntheticTrack;

class TargetSpeedsTest {
    private static final int RATE = 5;
    private static final double WIND = 8;

    /** 100 s each close-hauled, on a reach and before the wind, in a steady wind that is a node of the book. */
    private static Channel speeds(TargetBook book) {
        SyntheticTrack track = new SyntheticTrack(300, RATE)
                .wind(t -> WIND, t -> 0)
                .heading(t -> t < 100 ? 45 : t < 200 ? 90 : 140)
                .speed(t -> 9);
        BoatDebrief boat = Debrief.of(List.of(track.build()), DebriefOptions.WITHOUT_BOAT)
                .boats()
                .get(0);
        return TargetSpeeds.of(boat, book);
    }

    @Test
    void onBeatsAndRunsItIsTheSpeedOfTheBestVmgAndOnAReachThatAtTheAngleSailed() {
        Channel speeds = speeds(book(List.of(4.0, WIND, 12.0)));
        assertEquals(11, speeds.get(50 * RATE), 1e-9);
        assertEquals(8, speeds.get(150 * RATE), 1e-6);
        assertEquals(13, speeds.get(250 * RATE), 1e-9);
    }

    @Test
    void inAWindThatTheBookDoesNotKnowThereIsNone() {
        Channel speeds = speeds(book(List.of(12.0, 14.0, 16.0)));
        for (int i = 0; i < speeds.size(); i++) {
            assertTrue(Double.isNaN(speeds.get(i)), "at " + i);
        }
    }

    /** 5 m/s and one more for each 30 degrees; best VMG at 11 and 13 m/s. */
    private static TargetBook book(List<Double> winds) {
        List<Double> angles = new ArrayList<>();
        for (int degrees = 30; degrees <= 150; degrees += 10) {
            angles.add(Math.toRadians(degrees));
        }
        List<TargetPoint> points = new ArrayList<>();
        for (double wind : winds) {
            for (double angle : angles) {
                points.add(point(TargetMode.ANGLE, wind, angle, 5 + Math.toDegrees(angle) / 30));
            }
            points.add(point(TargetMode.UPWIND, wind, Math.toRadians(45), 11));
            points.add(point(TargetMode.DOWNWIND, wind, Math.toRadians(135), 13));
        }
        return new TargetBook("test", "test", "test", new TargetGrid(winds, angles), points);
    }

    private static TargetPoint point(TargetMode mode, double wind, double angle, double speed) {
        Band none = new Band(0, 0);
        Target target = new Target(
                speed,
                speed * Math.abs(Math.cos(angle)),
                0.3,
                15,
                new TrimSetting(0, 0, 0.5, 0),
                new TrimBands(none, none, none),
                new Attitude(0, 1, 0, 0, 0, 0, 0, 0),
                new Loads(0, 0, 0, 1, 0, 0),
                Set.of(),
                Set.of());
        return TargetPoint.solved(mode, Branch.FOILING, wind, angle, target);
    }
}
