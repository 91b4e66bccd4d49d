package trimwright.calibration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import trimwright.evidence.ReferenceFiles;
import trimwright.evidence.ReferenceTest;
import trimwright.ingest.IngestResult;
import trimwright.ingest.nmea.NmeaOptions;
import trimwright.ingest.nmea.NmeaReader;
import trimwright.track.BoatTrack;
import trimwright.wind.SailedWind;
import trimwright.wind.SessionClock;
import trimwright.wind.WindOptions;
import trimwright.wind.WindTrack;

/** What real logs tell of their instruments, and what they refuse to. */
class RealLogCalibrationTest {
    private static Calibration calibrate(String file) {
        IngestResult result = NmeaReader.read(ReferenceFiles.bytes(file), NmeaOptions.of("Dunlin"));
        BoatTrack track =
                assertInstanceOf(IngestResult.Tracks.class, result).tracks().get(0);
        SessionClock clock = SessionClock.covering(track.startNanos(), track.endNanos(), SailedWind.rateOf(track));
        WindTrack wind = SailedWind.of(track, clock, null, new WindOptions(2.5, null, WindOptions.Sensors.AS_LOGGED));
        return Calibrations.of(List.of(new Calibrations.Given(wind, null, null, List.of())))
                .get(0);
    }

    /** The wind came from port all the time: the log's own wind angles are 203 to 260 degrees. */
    @ReferenceTest
    void aPassageOnOneTackIsRefused() {
        Calibration.Refused refused =
                assertInstanceOf(Calibration.Refused.class, calibrate("data/rob-passage-2010-11-21.nmea.gz"));
        assertEquals(Calibration.Reason.ONE_TACK, refused.reason());
        assertEquals(0, refused.starboard());
        assertTrue(refused.port() > 600);
    }

    /** At 2 to 4 knots in 7 knots of wind an askew vane hardly shows: the answer has errors that say so, and is not used. */
    @ReferenceTest
    void circlesUnderEngineAnswerForWindAngleAndCompassAsFarAsTheyCan() {
        Calibration.Found found =
                assertInstanceOf(Calibration.Found.class, calibrate("data/rob-swing-2010-11-03.nmea.gz"));
        Estimate angle = found.estimates().get(Unknown.WIND_ANGLE.ordinal());
        Estimate compass = found.estimates().get(Unknown.COMPASS.ordinal());
        assertEquals(Unknown.WIND_ANGLE, angle.unknown());
        assertEquals(Unknown.COMPASS, compass.unknown());
        // Less than the 10 degrees that are reckoned with beforehand, more than what is used.
        assertTrue(angle.standardError() < Math.toRadians(5));
        assertTrue(compass.standardError() < Math.toRadians(3));
        assertTrue(!angle.isTold() && !compass.isTold());
        assertTrue(found.together().stream()
                .anyMatch(one -> one.unknowns().contains(Unknown.COMPASS)
                        && one.unknowns().contains(Unknown.LEEWAY)));
    }
}
