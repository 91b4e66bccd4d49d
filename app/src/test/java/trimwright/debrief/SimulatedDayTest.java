package trimwright.debrief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.compare.LegLedger;
import trimwright.prepare.TargetRun;
import trimwright.raceday.ScenarioFile;
import trimwright.segment.SailedCourse;
import trimwright.sim.Scenario;
import trimwright.target.TargetBook;
import trimwright.target.TargetFinder;
import trimwright.target.TargetGrid;
import trimwright.units.Units;

/** One short simulated day against its truth; whole days: {@link SimulatedDaysStudyTest}. */
class SimulatedDayTest {
    /** Enough of a book for the crews' cards and a debrief in the winds of that day. */
    static final TargetBook BOOK = book();

    private static TargetBook book() {
        TargetGrid grid = new TargetGrid(
                List.of(Units.fromKnots(10), Units.fromKnots(16), Units.fromKnots(22)),
                List.of(40, 50, 60, 80, 100, 120, 135, 150).stream()
                        .map(Units::fromDegrees)
                        .toList());
        return new TargetFinder(TargetRun.platformOf(SimulatedDay.BOAT.boat(), SimulatedDay.wing()), Map.of())
                .bookOf(grid);
    }

    @Test
    void turnsAndRoundingsOfAShortDayAreFound(@TempDir Path folder) throws IOException {
        TargetBook book = BOOK;
        Scenario scenario = ScenarioFile.draw(3);
        SimulatedDay day = SimulatedDay.of(scenario, 8, folder, book);
        DebriefReport report = day.debrief(book);
        TruthCount count = new TruthCount();
        count.add(day, report);
        assertTrue(count.turnsTrue >= 12, "turns: " + count.turnsTrue);
        // Whole days are held to 0.9 by the study; of the fewer than twenty of each here two or three are allowed more.
        assertTrue(TruthCount.share(count.turnsMatched, count.turnsFound) >= 0.8, count.row("turns"));
        assertTrue(TruthCount.share(count.turnsMatched, count.turnsTrue) >= 0.8, count.row("turns"));
        assertTrue(TruthCount.share(count.phasesMatched, count.phasesFound) >= 0.7, count.row("phases"));
        assertTrue(TruthCount.share(count.phasesMatched, count.phasesTrue) >= 0.7, count.row("phases"));
        assertAimsOfTheGustsThatBlew(report, scenario.weather().intensity());
        double zero = SimulatedDay.zero(report);
        for (BoatDebrief boat : report.boats()) {
            List<Double> ends = day.ends(boat.boat());
            assertTrue(boat.on() != null && !ends.isEmpty());
            SailedCourse.SailedLeg first = boat.on().sailed().legs().get(0);
            assertEquals(ends.get(0), first.span().to() * report.clock().step() - zero, 1.0, boat.boat());
            for (LegLedger ledger : boat.comparison().ledgers()) {
                double sum = ledger.lines().stream()
                        .mapToDouble(LegLedger.Line::loss)
                        .sum();
                assertEquals(ledger.total(), sum, 1e-9 * Math.max(1, Math.abs(ledger.total())));
                for (LegLedger.Line line : ledger.lines()) {
                    double pieces = line.pieces().stream()
                            .mapToDouble(LegLedger.Piece::loss)
                            .sum();
                    assertEquals(line.loss(), pieces, 1e-9 * Math.max(1, Math.abs(line.loss())));
                    assertTrue(line.least() <= line.loss() + 1e-9 && line.loss() <= line.most() + 1e-9);
                }
            }
        }
    }

    /** Puffs, shifts and sensors add to the turbulence that was planted; legs of minutes miss its slow part. */
    private static void assertAimsOfTheGustsThatBlew(DebriefReport report, double planted) {
        List<LegAim> aims =
                report.boats().stream().flatMap(boat -> boat.aims().stream()).toList();
        assertTrue(aims.size() >= report.boats().size(), aims.size() + " aims");
        double mean = aims.stream().mapToDouble(LegAim::turbulence).average().orElseThrow();
        assertTrue(mean > 0.6 * planted && mean < 2 * planted, mean + " measured, planted " + planted);
        assertEquals(aims.size() + 1, LegAimText.table(aims).text().lines().count());
        for (LegAim one : aims) {
            double limit = one.aim().point().getTarget().loads().rightingMoment();
            assertTrue(one.aim().levels().momentAim() <= limit * 1.001 && one.seconds() >= 0);
        }
    }
}
