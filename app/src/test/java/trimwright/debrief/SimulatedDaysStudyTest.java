package trimwright.debrief;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import trimwright.compare.Cause;
import trimwright.crew.Habits;
import trimwright.prepare.BookCache;
import trimwright.prepare.TargetBooks;
import trimwright.prepare.TargetRequest;
import trimwright.raceday.ScenarioFile;
import trimwright.sim.Entry;
import trimwright.sim.Scenario;
import trimwright.target.TargetBook;
import trimwright.text.Progress;
import trimwright.wind.WindOptions;

/**
 * The debrief against the truth of whole simulated days, with counter-runs. It takes minutes a day, so it runs only where
 * {@code -Dtrimwright.study=101,102} names seeds (with {@code -Dtrimwright.study.lines=true} without counter-runs); days stay in {@code target/study} and are used again. It prints the tables
 * of docs/validation.md, where what they showed stands.
 */
@EnabledIfSystemProperty(named = "trimwright.study", matches = "[0-9,]+")
class SimulatedDaysStudyTest {
    private static final int MINUTES = 25;

    private static final WindOptions AS_LOGGED =
            new WindOptions(WindOptions.DEFAULT.longestGap(), null, WindOptions.Sensors.AS_LOGGED);

    @Test
    void tablesOfTheSeedsAskedFor() throws IOException, InterruptedException {
        Path folder = Path.of(System.getProperty("trimwright.root", "."), "target", "study");
        Files.createDirectories(folder);
        TargetBook book = new TargetBooks(new BookCache(folder.resolve("books"), note -> {}))
                .of(TargetRequest.of(SimulatedDay.BOAT, SimulatedDay.wing()), Progress.NONE);
        TruthCount pieces = new TruthCount();
        LineCount air = new LineCount(Cause.OTHER_AIR);
        LineCount trim = new LineCount(Cause.TRIM);
        LineCount height = new LineCount(Cause.HEEL_HEIGHT);
        WakeCount wakes = new WakeCount();
        WindCount winds = new WindCount();
        WindCount windsAsLogged = new WindCount();
        List<DebriefReport> asLogged = new ArrayList<>();
        List<DebriefReport> reports = new ArrayList<>();
        String seeds = System.getProperty("trimwright.study", "");
        boolean judged = !Boolean.getBoolean("trimwright.study.pieces");
        boolean counter = judged && !Boolean.getBoolean("trimwright.study.lines");
        for (String seed : seeds.split(",", -1)) {
            Scenario scenario = ScenarioFile.draw(Integer.parseInt(seed));
            SimulatedDay day = SimulatedDay.of(scenario, MINUTES, folder.resolve(seed), book);
            DebriefReport report = day.debrief(judged ? book : null);
            reports.add(report);
            pieces.add(day, report);
            wakes.add(day, report, book);
            winds.add(day, report);
            DebriefReport logged = day.debrief(judged ? book : null, AS_LOGGED);
            windsAsLogged.add(day, logged);
            asLogged.add(logged);
            if (counter) {
                without(
                        scenario,
                        folder.resolve(seed + "-no-wakes"),
                        book,
                        day,
                        report,
                        air,
                        s -> new Scenario(s.seed(), s.weather(), Scenario.Wakes.NONE, s.entries()));
                without(
                        scenario,
                        folder.resolve(seed + "-no-trim"),
                        book,
                        day,
                        report,
                        trim,
                        s -> with(s, h -> new Habits(1, h.lateEase(), 0, h.rideHeight(), h.lateInversion())));
                without(
                        scenario,
                        folder.resolve(seed + "-no-height"),
                        book,
                        day,
                        report,
                        height,
                        s -> with(s, h -> new Habits(h.momentShare(), h.lateEase(), h.twist(), 0, h.lateInversion())));
            }
            System.out.print(pieces.row("up to seed " + seed));
        }
        if (counter) {
            System.out.print(air.row("other_air") + trim.row("trim") + height.row("heel_height"));
        }
        System.out.print(wakes.row() + windsAsLogged.row("wind as logged") + winds.row("sensors corrected"));
        System.out.print("as logged\n" + LineCount.lines(asLogged) + "sensors corrected\n" + LineCount.lines(reports));
        assertTrue(pieces.turnsTrue > 0);
    }

    private static void without(
            Scenario scenario,
            Path folder,
            TargetBook book,
            SimulatedDay day,
            DebriefReport report,
            LineCount line,
            UnaryOperator<Scenario> removing)
            throws IOException {
        SimulatedDay other = SimulatedDay.of(removing.apply(scenario), MINUTES, folder, book);
        line.add(day, report, other, other.debrief(book));
    }

    private static Scenario with(Scenario scenario, UnaryOperator<Habits> change) {
        List<Entry> entries = scenario.entries().stream()
                .map(entry -> new Entry(
                        entry.name(),
                        change.apply(entry.habits()),
                        entry.temper(),
                        entry.faults(),
                        entry.perturbation()))
                .toList();
        return new Scenario(scenario.seed(), scenario.weather(), scenario.wakes(), entries);
    }
}
