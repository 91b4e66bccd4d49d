package trimwright.segment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import trimwright.evidence.ReferenceFiles;
import trimwright.evidence.ReferenceTest;
import trimwright.ingest.IngestResult;
import trimwright.ingest.nmea.NmeaOptions;
import trimwright.ingest.nmea.NmeaReader;
import trimwright.track.BoatTrack;
import trimwright.wind.Quantity;
import trimwright.wind.SailedWind;
import trimwright.wind.SessionClock;
import trimwright.wind.WindOptions;
import trimwright.wind.WindTrack;

/** What is known of three real logs must come out of cutting them up. */
class RealDaysTest {
    private record Day(WindTrack wind, Pieces pieces) {
        double secondsInPhases() {
            return pieces.phases().stream()
                            .mapToInt(phase -> phase.span().length())
                            .sum()
                    * wind.clock().step();
        }
    }

    private static Day day(String file) {
        IngestResult result = NmeaReader.read(ReferenceFiles.bytes(file), NmeaOptions.of("Dunlin"));
        BoatTrack track =
                assertInstanceOf(IngestResult.Tracks.class, result).tracks().get(0);
        SessionClock clock = SessionClock.covering(track.startNanos(), track.endNanos(), SailedWind.rateOf(track));
        WindTrack wind = SailedWind.of(track, clock, null, WindOptions.DEFAULT);
        return new Day(wind, Cutting.of(wind, new FoilingRule.NotTold()));
    }

    @ReferenceTest
    void aPassageDownwindIsOneLegWithoutTurns() {
        Day day = day("data/rob-passage-2010-11-21.nmea.gz");
        assertEquals(1, day.pieces.legs().size());
        assertEquals(PointOfSail.DOWNWIND, day.pieces.legs().get(0).kind());
        assertEquals(0, day.pieces.turns().size());
        assertTrue(day.secondsInPhases() > 0.85 * 1327);
    }

    @ReferenceTest
    void aCloseReachIsOnePhase() {
        Day day = day("data/gpsd-sail-146s.log");
        assertEquals(1, day.pieces.legs().size());
        assertEquals(PointOfSail.REACHING, day.pieces.legs().get(0).kind());
        assertEquals(Tack.STARBOARD, day.pieces.phases().get(0).tack());
        assertTrue(day.secondsInPhases() > 140);
    }

    /** Circles at a degree a second hold their course by the letter of the rule; what is steered into the wind is not sailed. */
    @ReferenceTest
    void circlesUnderEngineGiveNoSailingIntoTheWind() {
        Day day = day("data/rob-swing-2010-11-03.nmea.gz");
        for (Phase phase : day.pieces.phases()) {
            double angle = day.wind.mean(
                    Quantity.TWA, phase.span().from(), phase.span().to());
            assertTrue(Math.abs(angle) > Math.toRadians(20), "phase at " + Math.toDegrees(angle));
        }
        assertTrue(day.secondsInPhases() < 0.45 * 1335, "phases last " + day.secondsInPhases());
    }
}
