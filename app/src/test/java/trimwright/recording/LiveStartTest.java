package trimwright.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import trimwright.boat.Antenna;
import trimwright.course.Course;
import trimwright.course.Line;
import trimwright.course.Mark;
import trimwright.course.Position;
import trimwright.course.Rounding;
import trimwright.live.LiveFigures;
import trimwright.live.LivePlace;
import trimwright.live.LiveState;
import trimwright.start.LineBook;
import trimwright.start.LineTimes;
import trimwright.start.Spread;
import trimwright.start.StartTrial;
import trimwright.wind.SpeedSource;

/** Before a start, by a boat that makes 10 m/s whatever she does, so that 200 m are 20 s. */
class LiveStartTest {
    private static final long GUN = 1_778_328_000_000_000_000L;

    /** A nautical mile is a minute of latitude within half a per cent: enough for whole metres here. */
    private static final double METRE = Math.toRadians(1 / 60.0) / 1852;

    private static final LineBook BOOK = new LineBook(
            List.of(6.0, 9.0), List.of(0.5, 2.0), List.of(List.of(even(), even()), List.of(even(), even())));

    @Test
    void secondsToSpareAreThoseToTheGunLessThoseToTheLine() {
        Map<String, Object> keys = keys(30, -200, BOOK, LiveCalls.Allowed.YES);
        assertEquals(30.0, keys.get("start.to_gun_s"));
        assertEquals(200, number(keys, "start.to_line_m"), 2);
        assertEquals(10, number(keys, "start.spare_s"), 1);
        assertEquals("Hold her back", keys.get("start.text"));
        assertEquals(
                "Full power now", keys(21, -200, BOOK, LiveCalls.Allowed.YES).get("start.text"));
    }

    @Test
    void theBowIsAheadOfTheAntenna() {
        Map<String, Object> keys = new HashMap<>();
        start(BOOK, LiveCalls.Allowed.YES, new Antenna(12, 0)).put(figures(30), place(-200), keys);
        assertEquals(188, number(keys, "start.to_line_m"), 2);
    }

    @Test
    void withoutATableOrInARaceNobodyIsToldWhatToDo() {
        assertEquals("", keys(30, -200, null, LiveCalls.Allowed.YES).get("start.text"));
        assertEquals(Absent.VALUE, keys(30, -200, null, LiveCalls.Allowed.YES).get("start.spare_s"));
        assertEquals("", keys(30, -200, BOOK, LiveCalls.Allowed.NO).get("start.text"));
        assertEquals(10, number(keys(30, -200, BOOK, LiveCalls.Allowed.NO), "start.spare_s"), 1);
    }

    @Test
    void beyondTheLineAndLongBeforeTheGunThereIsNothingToSpare() {
        assertTrue(number(keys(10, 20, BOOK, LiveCalls.Allowed.YES), "start.to_line_m") < 0);
        assertEquals(Absent.VALUE, keys(10, 20, BOOK, LiveCalls.Allowed.YES).get("start.spare_s"));
        assertFalse(keys(400, -200, BOOK, LiveCalls.Allowed.YES).containsKey("start.to_gun_s"));
        assertFalse(keys(-10, 200, BOOK, LiveCalls.Allowed.YES).containsKey("start.to_gun_s"));
    }

    private static Map<String, Object> keys(
            double toGun, double north, @Nullable LineBook book, LiveCalls.Allowed allowed) {
        Map<String, Object> keys = new HashMap<>();
        start(book, allowed, new Antenna(0, 0)).put(figures(toGun), place(north), keys);
        return keys;
    }

    private static double number(Map<String, Object> keys, String name) {
        return keys.get(name) instanceof Double value ? value : Double.NaN;
    }

    private static LiveStart start(@Nullable LineBook book, LiveCalls.Allowed allowed, Antenna antenna) {
        Line line = new Line(new Position(0, -100 * METRE), new Position(0, 100 * METRE));
        Mark mark = new Mark("top", new Position(1000 * METRE, 0), Rounding.PORT);
        Course course = new Course("invented", GUN, line, List.of(mark), line, List.of());
        return new LiveStart(course, GUN, antenna, () -> book, TalkCards.usual(), allowed);
    }

    private static LivePlace place(double north) {
        return new LivePlace(north * METRE, 0, 0, 0);
    }

    private static LiveFigures figures(double toGun) {
        double none = Double.NaN;
        trimwright.live.Gauge gauge = new trimwright.live.Gauge(none, none, none, none);
        return new LiveFigures(
                GUN - Math.round(toGun * 1e9),
                LiveState.ON_FOILS,
                new LiveFigures.Motion(10, SpeedSource.OVER_GROUND, 0, none, none, none),
                new LiveFigures.Wind(8, 1, 1, none, none, null),
                new LiveFigures.Aim(none, LiveFigures.Estimate.NONE, LiveFigures.Estimate.NONE, List.of()),
                new LiveFigures.Trim(gauge, gauge, gauge),
                LiveFigures.Load.NONE,
                List.of());
    }

    private static LineTimes even() {
        return new LineTimes(
                List.of(10.0),
                List.of(StartTrial.DISTANCES.stream()
                        .map(metres -> metres / 10.0)
                        .map(seconds -> new Spread(seconds, seconds, seconds + 4))
                        .toList()));
    }
}
