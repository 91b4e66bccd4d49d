package trimwright.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.cli.CliRun;
import trimwright.ingest.journal.JournalSource;
import trimwright.live.LiveBoat;
import trimwright.store.StoredSession;
import trimwright.track.BoatTrack;
import trimwright.units.Angles;
import trimwright.units.Units;
import trimwright.wind.Quantity;
import trimwright.wind.SailedWind;
import trimwright.wind.SessionClock;
import trimwright.wind.WindOptions;
import trimwright.wind.WindTrack;

/** The same bytes, followed live and debriefed: how far a filter may lie from a smoother. */
class LiveAgreesWithDebriefTest {
    private static final Path ROOT = Path.of(System.getProperty("trimwright.root", ".."));

    /** The filter knows the past only: root mean square difference from the smoother over the example (kn, deg). */
    private static final double SPEED_KN = 0.7;

    private static final double DIRECTION_DEG = 8.0;

    /** What is left of it in the mean, where a filter's lag cancels. */
    private static final double MEAN_KN = 0.1;

    private static final double MEAN_DEG = 1.0;

    private record Shown(long nanos, double tws, double twd) {}

    @Test
    void theWindOfARecordedDayIsTheDebriefsToWhatTheFilterCannotKnow(@TempDir Path folder) {
        Path log = ROOT.resolve("examples/saltmere/dunlin.nmea");
        CliRun brought =
                CliRun.in(folder, "import", log.toString(), "--boat-name", "Dunlin", "--library", folder.toString());
        assertEquals(0, brought.exit(), brought.err());
        LiveBoat boat = new LiveBoat(null, null, null);
        LiveBoard board = new LiveBoard(() -> boat, "Dunlin", EventMode.PRACTICE, 1);
        List<Shown> shown = new ArrayList<>();
        BoatTrack track;
        try (StoredSession session = StoredSession.open(folder, "latest")) {
            track = session.tracksOf(session.info().sources().get(0)).get(0);
            Replay.atOnce(session, new Follower() {
                @Override
                public void take(JournalSource source, long arrivalNanos, byte[] bytes) {
                    board.take(source, arrivalNanos, bytes);
                }

                @Override
                public void tick(long now) {
                    board.tick(now);
                    var wind = boat.figures().wind();
                    shown.add(new Shown(boat.figures().timeNanos(), wind.tws(), wind.twd()));
                }
            });
        }
        assertNotNull(board.state().get("boat.Dunlin.tws_kn"));
        SessionClock clock = SessionClock.covering(track.startNanos(), track.endNanos(), SailedWind.rateOf(track));
        WindTrack debriefed = SailedWind.of(track, clock, null, WindOptions.DEFAULT);
        double speeds = 0;
        double ways = 0;
        double faster = 0;
        double veered = 0;
        int count = 0;
        for (Shown one : shown) {
            // What is shown is of a block that began three seconds before.
            int at = (int) ((one.nanos() - 2_500_000_000L - clock.startNanos()) / clock.stepNanos());
            double tws = at < 0 || at >= clock.size() ? Double.NaN : debriefed.get(Quantity.TWS, at);
            if (!Double.isNaN(tws) && !Double.isNaN(one.tws()) && at * clock.step() > 60) {
                double twd = debriefed.get(Quantity.TWD, at);
                double way = Angles.difference(one.twd(), twd);
                faster += one.tws() - tws;
                veered += way;
                speeds += (one.tws() - tws) * (one.tws() - tws);
                ways += way * way;
                count++;
            }
        }
        assertTrue(count > 500, "only " + count + " instants");
        double speedKn = Units.toKnots(Math.sqrt(speeds / count));
        double directionDeg = Units.toDegrees(Math.sqrt(ways / count));
        double meanKn = Units.toKnots(faster / count);
        double meanDeg = Units.toDegrees(veered / count);
        assertTrue(speedKn < SPEED_KN, "TWS " + speedKn + " kn");
        assertTrue(directionDeg < DIRECTION_DEG, "TWD " + directionDeg + " deg");
        assertEquals(0, meanKn, MEAN_KN);
        assertEquals(0, meanDeg, MEAN_DEG);
    }
}
