package trimwright.debrief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import trimwright.boatfile.BoatFile;
import trimwright.boatfile.BoatFiles;
import trimwright.fleet.Difference;
import trimwright.fleet.FleetFindings;
import trimwright.fleet.Question;
import trimwright.platform.Platform;
import trimwright.prepare.TargetRequest;
import trimwright.prepare.TargetRun;
import trimwright.segment.PointOfSail;
import trimwright.target.TargetBook;
import trimwright.target.TargetGrid;
import trimwright.text.Progress;
import trimwright.track.BoatTrack;
import trimwright.track.Paths;
import trimwright.units.Units;
import trimwright.wind.SyntheticTrack;

/** Trims of a made fleet in the demo boat: the same trim changes nothing, one that gives heel away costs. */
class TheirTrimTest {
    private static final double HEEL = 4;

    private static BoatTrack boat(String name) {
        BoatTrack track = new SyntheticTrack(200, 5)
                .wind(t -> 8 + 0.2 * Math.sin(t / 9), t -> 0)
                .heading(t -> -48)
                .speed(t -> 14)
                // Wind from starboard: heel to windward is to starboard.
                .attitude(t -> HEEL, t -> 1)
                .with(Paths.RIDE_HEIGHT, t -> 0.9)
                .build();
        return new BoatTrack(name, track.groups());
    }

    private static Difference told(Question question, double value) {
        double wind = Units.fromKnots(16);
        return new Difference(
                "one",
                PointOfSail.UPWIND,
                question,
                value,
                value - 0.01,
                value + 0.01,
                0.005,
                1e-4,
                true,
                new Difference.Evidence(300, 3, wind, wind, 0, 10));
    }

    private static double made(Difference... told) throws InterruptedException {
        BoatFile file = BoatFiles.find("whimbrel14");
        TargetGrid grid = new TargetGrid(
                List.of(Units.fromKnots(16)), List.of(Math.toRadians(50), Math.toRadians(60), Math.toRadians(140)));
        TargetBook book =
                TargetRun.of(new TargetRequest(file, file.boat().getWing("tall"), grid, Map.of()), Progress.NONE);
        Platform platform = TargetRun.platformOf(file.boat(), file.boat().getWing("tall"));
        DebriefReport report =
                Debrief.of(List.of(boat("one"), boat("two"), boat("three")), DebriefOptions.WITHOUT_BOAT);
        List<TheirTrim> trims = TheirTrim.of(new FleetFindings(120, List.of(told)), report.boats(), platform, book);
        assertEquals(1, trims.size());
        return trims.get(0).made();
    }

    @Test
    void theSameTrimMakesNoDifference() throws InterruptedException {
        assertEquals(0, made(told(Question.HEEL, 0)), 1e-6);
    }

    @Test
    void lessHeelToWindwardCostsAndMoreHelps() throws InterruptedException {
        double less = made(told(Question.HEEL, Math.toRadians(-4)));
        double more = made(told(Question.HEEL, Math.toRadians(1)));
        // Righting moment binds at 16 knots: weight to windward is speed (trade's knowledge, common practice, no
        // source).
        assertTrue(Units.toKnots(less) < -0.2, "" + Units.toKnots(less));
        assertTrue(more > 0, "" + more);
    }

    @Test
    void whatTheModelCannotHoldIsNotAsked() {
        FleetFindings load = new FleetFindings(120, List.of(told(Question.SHEET_LOAD, 300)));
        BoatFile file = BoatFiles.find("whimbrel14");
        Platform platform = TargetRun.platformOf(file.boat(), file.boat().getWing("tall"));
        TargetBook none = new TargetBook("a", "b", "1", new TargetGrid(List.of(8.0), List.of(1.0)), List.of());
        assertEquals(List.of(), TheirTrim.of(load, List.of(), platform, none));
    }
}
