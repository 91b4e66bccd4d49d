package trimwright.sensors;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.calibration.Calibration;
import trimwright.calibration.Correction;
import trimwright.calibration.Estimate;
import trimwright.calibration.Unknown;
import trimwright.calibration.UpwashBasis;
import trimwright.debrief.BoatDebrief;
import trimwright.debrief.Debrief;
import trimwright.debrief.DebriefOptions;
import trimwright.store.DockChecks;
import trimwright.store.Library;
import trimwright.store.SessionInfo;
import trimwright.store.UtcOffset;
import trimwright.text.JsonOut;
import trimwright.track.BoatTrack;
import trimwright.wind.Quantity;
import trimwright.wind.SyntheticTrack;
import trimwright.wind.WindCaveat;

/** From a document that was accepted to the debrief that takes it off. */
class AcceptedCalibrationTest {
    @TempDir
    Path folder;

    private static final BoatTrack TRACK = new SyntheticTrack(400, 1)
            .heading(t -> t < 200 ? -45 : 45)
            .speed(t -> 9)
            .build();

    private static Estimate told(Unknown unknown, double value) {
        return new Estimate(unknown, value, 0.002, Estimate.Verdict.TOLD);
    }

    private static Calibration.Found found(UpwashBasis upwash) {
        return new Calibration.Found(
                "Dunlin",
                List.of(
                        told(Unknown.WIND_ANGLE, Math.toRadians(2)),
                        told(Unknown.UPWASH, 0),
                        told(Unknown.WIND_SPEED, 0.25),
                        new Estimate(Unknown.COMPASS, Math.toRadians(9), 0.1, Estimate.Verdict.TOO_LITTLE)),
                List.of(),
                List.of(),
                upwash,
                2,
                List.of());
    }

    private CalibrationRequest request() throws IOException {
        Files.createDirectories(folder);
        try (Library library = Library.openOrCreate(folder.resolve("library"))) {
            SessionInfo session = new SessionInfo(
                    "2027-01-15-one",
                    Instant.parse("2027-01-15T12:00:00Z"),
                    Instant.parse("2027-01-15T12:10:00Z"),
                    new UtcOffset(0, UtcOffset.From.LONGITUDE),
                    List.of(),
                    List.of());
            DockChecks none = library.dockChecks(session);
            return new CalibrationRequest(session, null, null, List.of(TRACK), none);
        }
    }

    @Test
    void theDocumentGivesBackWhatIsToldAndNothingElse() throws IOException {
        for (UpwashBasis upwash :
                List.of(new UpwashBasis.OfModel(0.03, 0.2, 0.1, -0.1, 0.001), new UpwashBasis.OfWindAlone(12))) {
            Calibration.Found found = found(upwash);
            String text = JsonOut.text(CalibrationDocument.of(request(), List.of(found)));
            Correction read = CalibrationDocument.corrections(text).get(0);
            assertEquals("Dunlin", read.boat());
            assertFalse(read.has(Unknown.COMPASS));
            assertEquals(3, read.told().size());
            // JSON has fixed decimals.
            assertEquals(found.correction().get(Unknown.WIND_ANGLE), read.get(Unknown.WIND_ANGLE), 1e-5);
            assertEquals(0.25, read.get(Unknown.WIND_SPEED), 1e-6);
            assertEquals(upwash.typical(), read.upwash().typical(), 1e-5);
        }
        assertTrue(CalibrationDocument.corrections(null).isEmpty());
    }

    @Test
    void aDebriefTakesOffWhatWasAcceptedAndSaysSo() {
        BoatDebrief plain = debrief(DebriefOptions.WITHOUT_BOAT);
        Correction correction = found(new UpwashBasis.OfWindAlone(12)).correction();
        BoatDebrief calibrated = debrief(DebriefOptions.WITHOUT_BOAT.with(List.of(correction)));
        assertNull(plain.calibration());
        assertNotNull(calibrated.calibration());
        assertTrue(calibrated.wind().caveats().contains(WindCaveat.SENSOR_CALIBRATED));
        assertFalse(plain.wind().caveats().contains(WindCaveat.SENSOR_CALIBRATED));
        int i = 100;
        assertEquals(plain.wind().get(Quantity.AWS, i) / 1.25, calibrated.wind().get(Quantity.AWS, i), 1e-9);
        assertEquals(
                plain.wind().get(Quantity.AWA, i) - Math.toRadians(2),
                calibrated.wind().get(Quantity.AWA, i),
                1e-9);
        assertEquals(plain.wind().get(Quantity.HEADING, i), calibrated.wind().get(Quantity.HEADING, i), 1e-12);
    }

    private static BoatDebrief debrief(DebriefOptions options) {
        return Debrief.of(List.of(TRACK), options).boats().get(0);
    }
}
