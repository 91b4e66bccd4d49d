package trimwright.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import trimwright.segment.Tack;
import trimwright.track.Paths;
import trimwright.units.Angles;
import trimwright.wind.SpeedSource;

class LiveBoatTest {
    private static final long TENTH = 100_000_000L;
    private static final long START = 1_778_328_000_000_000_000L;

    private final LiveBoat boat = new LiveBoat(null, null, null);
    private long now = START;

    /** A steady wind from north, felt by a boat that sails at that speed on that heading. */
    private void sail(double seconds, double speed, double headingDeg, double wind) {
        for (int i = 0; i < seconds * 10; i++) {
            now += TENTH;
            double heading = Math.toRadians(headingDeg);
            // Where the wind comes from, in the boat's axes, plus what she makes herself.
            double ahead = wind * Math.cos(heading) + speed;
            double starboard = -wind * Math.sin(heading);
            boat.put("wi", Paths.AWA, now, Math.atan2(starboard, ahead));
            // A reading that never changes at all would be a frozen sensor's.
            boat.put("wi", Paths.AWS, now, Math.hypot(starboard, ahead) + (i % 2) * 1e-3);
            boat.put("gp", Paths.SOG, now, speed + (i % 2) * 1e-3);
            boat.put("gp", Paths.COG, now, Angles.compass(heading));
            boat.put("he", Paths.HEADING, now, Angles.compass(heading + (i % 2) * 1e-4));
            boat.put("ii", Paths.ROLL, now, -0.03 + (i % 2) * 1e-4);
            boat.advance(now);
        }
    }

    private void silence(double seconds) {
        now += (long) (seconds * 1e9);
        boat.advance(now);
    }

    @Test
    void theTrueWindIsThatOfTheTriangleWithItsSide() {
        sail(60, 10, 315, 7);
        LiveFigures figures = boat.figures();
        assertEquals(7, figures.wind().tws(), 0.01);
        assertEquals(0, Angles.signed(figures.wind().twd()), 1e-3);
        assertEquals(Math.toRadians(45), figures.wind().twa(), 2e-3);
        assertEquals(Tack.STARBOARD, figures.wind().tack());
        assertEquals(10 * Math.cos(Math.toRadians(45)), figures.motion().vmg(), 0.02);
        assertEquals(-0.03, figures.motion().heel(), 1e-3);
        assertEquals(SpeedSource.OVER_GROUND, figures.motion().source());
        assertEquals(LiveState.STRAIGHT, figures.state());
    }

    /** Waves of 40 s whose deviation is a tenth of the mean; not known before five minutes have been heard. */
    @Test
    void howGustyItIsIsMeasuredFromTheLastMinutes() {
        for (int i = 0; i < 1600; i++) {
            sail(0.25, 10, 315, 8 * (1 + 0.1 * Math.sqrt(2) * Math.sin(2 * Math.PI * i / 160)));
            if (i == 1000) {
                assertTrue(Double.isNaN(boat.figures().load().turbulence()));
            }
        }
        assertEquals(0.1, boat.figures().load().turbulence(), 0.004);
    }

    @Test
    void aTurnIsEyesOutUntilTheNewCourseIsHeld() {
        sail(30, 10, 315, 7);
        for (int i = 0; i <= 90; i++) {
            sail(0.1, 10, 315 + i, 7);
        }
        assertEquals(LiveState.EYES_OUT, boat.figures().state());
        sail(3, 10, 45, 7);
        assertEquals(LiveState.EYES_OUT, boat.figures().state());
        sail(2, 10, 45, 7);
        assertEquals(LiveState.STRAIGHT, boat.figures().state());
        assertEquals(Tack.PORT, boat.figures().wind().tack());
    }

    @Test
    void aBoatOnHerSideIsEyesOut() {
        sail(10, 10, 315, 7);
        boat.put("ii", Paths.ROLL, now + TENTH, 1.2);
        boat.advance(now + TENTH);
        assertEquals(LiveState.EYES_OUT, boat.figures().state());
    }

    @Test
    void aBoatThatLiesStillIsAtTheDockWhicheverWayShePoints() {
        for (int i = 0; i < 100; i++) {
            sail(0.1, 0.2, i * 3, 5);
        }
        assertEquals(LiveState.DOCK, boat.figures().state());
    }

    @Test
    void rideHeightTellsWhetherSheFlies() {
        for (double height : new double[] {0.02, 0.12, 0.5, 0.12, 0.04}) {
            for (int i = 0; i < 5; i++) {
                boat.put("wing", Paths.RIDE_HEIGHT, now + TENTH, height + i * 1e-6);
                sail(0.1, 12, 315, 7);
            }
            boolean up = boat.figures().state() == LiveState.ON_FOILS;
            // Between down and up she does as before.
            assertEquals(height > 0.2 || (height == 0.12 && flew), up, "at " + height);
            flew = up;
        }
    }

    private boolean flew;

    @Test
    void aSilentSensorIsNamedWithItsAgeAndWhatNeededItIsGone() {
        sail(40, 10, 315, 7);
        assertTrue(boat.figures().faults().isEmpty());
        for (int i = 0; i < 80; i++) {
            now += TENTH;
            boat.put("gp", Paths.SOG, now, 10 + (i % 2) * 1e-3);
            boat.put("gp", Paths.COG, now, Math.toRadians(315));
            boat.put("he", Paths.HEADING, now, Math.toRadians(315 + (i % 2) * 1e-3));
            boat.put("ii", Paths.ROLL, now, -0.03 + (i % 2) * 1e-4);
            boat.advance(now);
        }
        LiveFigures figures = boat.figures();
        assertEquals(1, figures.faults().size());
        assertEquals(Sensor.WIND, figures.faults().get(0).sensor());
        assertEquals(SensorFault.Kind.SILENT, figures.faults().get(0).kind());
        assertEquals(8, figures.faults().get(0).seconds(), 0.2);
        assertTrue(Double.isNaN(figures.wind().tws()));
        assertTrue(Double.isNaN(figures.wind().twa()));
        assertFalse(Double.isNaN(figures.motion().speed()));
        silence(10);
        assertEquals(LiveState.NO_DATA, boat.figures().state());
    }

    @Test
    void aFrozenSensorIsNamedAndNotUsed() {
        for (int i = 0; i < 1_300; i++) {
            now += TENTH;
            boat.put("gp", Paths.SOG, now, 7.25);
            boat.advance(now);
        }
        LiveFigures figures = boat.figures();
        assertEquals(Sensor.POSITION, figures.faults().get(0).sensor());
        assertEquals(SensorFault.Kind.FROZEN, figures.faults().get(0).kind());
        assertTrue(Double.isNaN(figures.motion().speed()));
    }

    @Test
    void whatComesLateOrCannotBeIsLeftOut() {
        LiveChannel channel = new LiveChannel(Paths.SOG);
        channel.put(START, 7);
        channel.put(START + TENTH, 8);
        channel.put(START, 9);
        channel.put(START + 2 * TENTH, 400);
        assertEquals(8, channel.fresh(START + 2 * TENTH));
        assertEquals(2, channel.leftOut());
    }

    @Test
    void ofTwoSourcesTheFirstStaysUntilItFallsSilent() {
        for (int i = 0; i < 20; i++) {
            now += TENTH;
            boat.put("a", Paths.SOG, now, 5 + i * 1e-3);
            boat.put("b", Paths.SOG, now, 6 + i * 1e-3);
            boat.advance(now);
        }
        assertEquals(5, boat.figures().motion().speed(), 0.1);
        for (int i = 0; i < 40; i++) {
            now += TENTH;
            boat.put("b", Paths.SOG, now, 6 + i * 1e-3);
            boat.advance(now);
        }
        assertEquals(6, boat.figures().motion().speed(), 0.1);
    }
}
