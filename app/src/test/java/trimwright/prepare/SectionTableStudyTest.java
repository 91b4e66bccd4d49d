package trimwright.prepare;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFiles;
import trimwright.polar.TableError;
import trimwright.profile.WingProfile;
import trimwright.section.SectionFamily;
import trimwright.section.SectionShape;
import trimwright.text.Progress;
import trimwright.wing.Wing;

/**
 * Error of the demo wing's tables at random places off their nodes, against flow computed directly. Some minutes of computing
 * for the table (kept in {@code target/sections}) and some seconds an outline: {@code -Dtrimwright.sections.outlines=400}
 * gives 10,000 places; {@code -Dtrimwright.sections.minutes=30} ends it earlier. Figures: docs/validation.md.
 */
@EnabledIfSystemProperty(named = "trimwright.sections.outlines", matches = "[0-9]+")
class SectionTableStudyTest {
    private static final int ANGLES = 25;

    /** No outline is begun later than this after the table is there; those that were are the first of all. */
    private static final long MINUTES = Long.getLong("trimwright.sections.minutes", 24 * 60);

    private static final double FLAP_USED = Math.toRadians(25);

    /** Place between the stalls about which lift changes its side at 10 to 20 degrees of flap. */
    private static final double WITH_FLAP = -0.4;

    @Test
    void errorOffTheNodes() throws InterruptedException {
        int outlines = Integer.getInteger("trimwright.sections.outlines", 0);
        WingSpec wing = BoatFiles.find("whimbrel14").boat().getWing("tall");
        Path folder = Path.of(System.getProperty("trimwright.target", "target"), "sections");
        long begin = System.nanoTime();
        SectionFamily family = new SectionTables(new TableCache(folder, note -> {}))
                .of(wing, Progress.NONE)
                .family();
        System.out.printf(Locale.ROOT, "table after %.0f s%n", (System.nanoTime() - begin) / 1e9);
        List<Integer> pieces = new ArrayList<>();
        for (int i = 0; i < outlines; i++) {
            pieces.add(i);
        }
        long until = System.nanoTime() + TimeUnit.MINUTES.toNanos(MINUTES);
        List<TableError> errors = InParallel.map(
                "outlines", pieces, i -> System.nanoTime() < until ? at(family, wing, i) : new TableError());
        long done = errors.stream()
                .filter(error -> error.missing() + error.rows().size() > 0)
                .count();
        List<double[]> rows =
                errors.stream().flatMap(error -> error.rows().stream()).toList();
        int missing = errors.stream().mapToInt(TableError::missing).sum();
        System.out.println(done + " outlines, " + rows.size() + " places, " + missing
                + " more where the flow computed directly has no answer");
        // Column 6 is the flap angle, 9 the place between the stalls.
        List<double[]> flapUsed = list(rows, row -> row[6] < FLAP_USED && row[9] < 0.9 && row[9] > WITH_FLAP);
        print("flap to 25 degrees, lift with the flap, to 90 % of the way to stall", flapUsed);
        print("the last tenth before stall", list(rows, row -> row[6] < FLAP_USED && row[9] >= 0.9));
        print("flap over 25 degrees", list(rows, row -> row[6] >= FLAP_USED && row[9] > WITH_FLAP));
        print("lift against the flap", list(rows, row -> row[9] <= WITH_FLAP));
        print("all", rows);
        List<double[]> byLift = new ArrayList<>(rows);
        byLift.sort(Comparator.comparingDouble((double[] row) -> -Math.abs(row[0])));
        for (double[] row : byLift.subList(0, Math.min(10, byLift.size()))) {
            System.out.printf(
                    Locale.ROOT,
                    "off by %.3f in lift: alpha %.2f, flap %.2f, Re %.2e, thickness %.3f, place %.2f, lift %.3f%n",
                    row[0],
                    Math.toDegrees(row[5]),
                    Math.toDegrees(row[6]),
                    row[7],
                    row[8],
                    row[9],
                    row[10]);
        }
        // Half again what 587 places showed: 0.020 and 0.037.
        assertEquals(0, rms(flapUsed, 0), 0.03, "rms of lift");
        assertEquals(0, rms(flapUsed, 2), 0.06, "rms of drag, share");
    }

    private static TableError at(SectionFamily family, WingSpec wing, int seed) {
        Random random = new Random(1000L + seed);
        SectionShape ends = Wing.shapeAt(wing, 0);
        SectionShape shape = new SectionShape(
                ends.flapChordRatio(), ends.turningAxisRatio(), ends.slotGapRatio(), 0.12 + 0.08 * random.nextDouble());
        WingProfile profile = FlowRequest.profileOf(shape);
        double flap = Math.toRadians(1 + 38 * random.nextDouble());
        double reynolds = 5e5 * Math.exp(random.nextDouble() * Math.log(20));
        TableError error = new TableError();
        error.add(family.sectionOf(shape), profile, shape.turningAxisRatio(), flap, reynolds, ANGLES, -1, 1, random);
        return error;
    }

    private static List<double[]> list(List<double[]> rows, Predicate<double[]> wanted) {
        return rows.stream().filter(wanted).toList();
    }

    /** A row of the table in docs/validation.md: median, rms and worst of each number. */
    private static void print(String what, List<double[]> rows) {
        StringBuilder line = new StringBuilder("| " + what + " | " + rows.size() + " |");
        for (int c = 0; c < TableError.NAMES.size(); c++) {
            int column = c;
            double[] sizes = rows.stream()
                    .mapToDouble(row -> Math.abs(row[column]))
                    .sorted()
                    .toArray();
            double median = sizes.length == 0 ? Double.NaN : sizes[sizes.length / 2];
            double worst = sizes.length == 0 ? Double.NaN : sizes[sizes.length - 1];
            line.append(String.format(Locale.ROOT, " %.4f, %.4f, %.4f |", median, rms(rows, c), worst));
        }
        System.out.println(line);
    }

    private static double rms(List<double[]> rows, int column) {
        return Math.sqrt(rows.stream()
                .mapToDouble(row -> row[column] * row[column])
                .average()
                .orElse(Double.NaN));
    }
}
