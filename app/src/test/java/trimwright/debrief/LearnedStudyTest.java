package trimwright.debrief;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import trimwright.drills.DrillBoats;
import trimwright.learned.LearnedPlace;
import trimwright.learned.LearnedTargets;
import trimwright.learned.SteadyBlock;
import trimwright.prepare.BookCache;
import trimwright.prepare.TargetBooks;
import trimwright.prepare.TargetRequest;
import trimwright.prepare.TargetRun;
import trimwright.response.SpeedResponse;
import trimwright.season.SessionBlocks;
import trimwright.sim.HiddenBoat;
import trimwright.target.Branch;
import trimwright.target.Target;
import trimwright.target.TargetBook;
import trimwright.target.TargetFinder;
import trimwright.target.TargetGrid;
import trimwright.text.Progress;
import trimwright.units.Units;

/**
 * Learned targets of a season without habits against what the hidden boat can truly do by her own book. It takes half a minute a
 * day and some for the books, so it runs only where {@code -Dtrimwright.learned=1,2,3} names days; these stay in {@code target/season}. It
 * prints the table of docs/validation.md.
 */
@EnabledIfSystemProperty(named = "trimwright.learned", matches = "[0-9,]+")
class LearnedStudyTest {
    private static final List<Integer> WINDS = List.of(10, 12, 14, 16, 18, 20);
    private static final List<Integer> ANGLES = List.of(55, 60, 65, 130, 135, 140, 145, 150);

    @Test
    void learnedTargetsOfTheDaysAskedFor() throws IOException, InterruptedException {
        Path folder = Path.of(System.getProperty("trimwright.root", "."), "target", "season");
        Files.createDirectories(folder);
        TargetBook book = new TargetBooks(new BookCache(folder.resolve("books"), note -> {}))
                .of(TargetRequest.of(SimulatedDay.BOAT, SimulatedDay.wing()), Progress.NONE);
        SpeedResponse response = DrillBoats.response(SimulatedDay.BOAT, SimulatedDay.wing(), book);
        assertTrue(response != null);
        SessionBlocks reader = new SessionBlocks(SimulatedDay.BOAT.boat(), book, response);
        List<SteadyBlock> blocks = new ArrayList<>();
        int days = 0;
        for (String seed : System.getProperty("trimwright.learned", "").split(",", -1)) {
            SimulatedDay.Logged logged = Season.day(Integer.parseInt(seed), folder, book);
            List<SteadyBlock> day = reader.of(days++, logged.tracks(), logged.course(), boat -> true);
            for (SteadyBlock block : day) {
                System.out.printf(
                        Locale.ROOT,
                        "block %s %.1f kn %.0f deg %.4f doubt %.3f %.3f %.3f%n",
                        seed,
                        Units.toKnots(block.wind()),
                        Units.toDegrees(block.angle()),
                        block.logRatio(),
                        block.doubt().offset(),
                        block.doubt().upwash(),
                        block.doubt().factor());
            }
            blocks.addAll(day);
        }
        print(days, LearnedTargets.of(blocks), book, truth());
        assertTrue(blocks.size() > days);
    }

    private static TargetBook truth() {
        TargetGrid grid = new TargetGrid(
                WINDS.stream().map(one -> Units.fromKnots(one)).toList(),
                ANGLES.stream().map(one -> Units.fromDegrees(one)).toList());
        return new TargetFinder(
                        TargetRun.platformOf(
                                HiddenBoat.of(SimulatedDay.BOAT.boat(), Season.HIDDEN), SimulatedDay.wing()),
                        Map.of())
                .bookOf(grid);
    }

    private static void print(int days, LearnedTargets learned, TargetBook model, TargetBook truth) {
        double weights = 0;
        double sum = 0;
        double squares = 0;
        int held = 0;
        int places = 0;
        for (int knots : WINDS) {
            for (int degrees : ANGLES) {
                double wind = Units.fromKnots(knots);
                double angle = Units.fromDegrees(degrees);
                LearnedPlace place = learned.nearest(wind, angle);
                double modelSpeed = speed(model, wind, angle);
                double trueRatio = speed(truth, wind, angle) / modelSpeed;
                if (place.seconds() == 0 || Double.isNaN(trueRatio)) {
                    continue;
                }
                double off = place.ratio() - trueRatio;
                System.out.printf(
                        Locale.ROOT,
                        "%d kn %d deg: model %.2f kn, truly %+.2f %%, learned %+.2f %% (%+.2f to %+.2f), support %.2f, %.1f min, %d sessions%n",
                        knots,
                        degrees,
                        Units.toKnots(modelSpeed),
                        100 * (trueRatio - 1),
                        100 * (place.ratio() - 1),
                        100 * (place.low() - 1),
                        100 * (place.high() - 1),
                        place.support(),
                        place.seconds() / 60,
                        place.sessions());
                if (place.isSupported()) {
                    weights += place.seconds();
                    sum += place.seconds() * off;
                    squares += place.seconds() * off * off;
                    places++;
                    held += place.low() <= trueRatio && trueRatio <= place.high() ? 1 : 0;
                }
            }
        }
        System.out.printf(
                Locale.ROOT,
                "%d days: by time sailed mean off %+.2f %%, root mean square %.2f %%; intervals hold %d of %d places%n",
                days,
                100 * sum / weights,
                100 * Math.sqrt(squares / weights),
                held,
                places);
    }

    private static double speed(TargetBook book, double wind, double angle) {
        Target target = book.find(Branch.FOILING, wind, angle).target();
        return target == null ? Double.NaN : target.boatSpeed();
    }
}
