package trimwright.prepare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.boatfile.BoatFiles;
import trimwright.target.Target;
import trimwright.target.TargetGrid;
import trimwright.target.TargetMode;
import trimwright.target.TargetPoint;
import trimwright.text.Progress;
import trimwright.units.Units;

/**
 * The target book with sections from tables against that in closed form, on the default grid, wind by wind, as the tables of
 * docs/decisions/0094-*.md. Which wings: {@code -Dtrimwright.section.books=tall,short}. Tables are made first unless they are
 * kept in {@code target/sections}.
 */
@EnabledIfSystemProperty(named = "trimwright.section.books", matches = "[a-z,]+")
class SectionBookStudyTest {
    private static final BoatFile BOAT = BoatFiles.find("whimbrel14");

    /** Points whose speed differs by less count as the same, kn: a tenth, as it is printed. */
    private static final double SAME = 0.15;

    private int both;
    private int same;
    private int missed;

    @Test
    void booksOfTheTwoModels() throws InterruptedException {
        SectionTables tables = new SectionTables(
                new TableCache(Path.of(System.getProperty("trimwright.target", "target"), "sections"), note -> {}));
        for (String id : System.getProperty("trimwright.section.books").split(",")) {
            WingSpec wing = BOAT.boat().getWing(id);
            Sections computed = tables.of(wing, Progress.NONE);
            for (double wind : TargetRequest.defaultGrid().winds()) {
                compare(id, wind, points(wing, Sections.closedForm(wing), wind), points(wing, computed, wind));
            }
        }
        System.out.println(both + " points with both targets, " + same + " of them within " + SAME + " knots");
        assertEquals(0, missed, "best upwind or downwind that an angle of its own book beats");
        assertTrue(both > 100, "points with both targets: " + both);
        // What both models agree on by their own checks: lift and drag of a section within some ten percent.
        assertTrue(same > 0.5 * both, same + " of " + both);
    }

    /** A book of one wind is a part of the whole book: winds do not know of each other. */
    private static List<TargetPoint> points(WingSpec wing, Sections sections, double wind) throws InterruptedException {
        TargetGrid grid =
                new TargetGrid(List.of(wind), TargetRequest.defaultGrid().angles());
        TargetRequest request = TargetRequest.of(BOAT, wing, grid, sections.source());
        return TargetRun.of(request, sections.family(), 1, Progress.NONE).listBest();
    }

    /** Best upwind or downwind that is worse than a target at an angle of the same book: the search missed it. */
    private void tellMissed(String wing, String model, List<TargetPoint> points) {
        for (TargetPoint best : points) {
            if (best.mode() == TargetMode.ANGLE) {
                continue;
            }
            double way = best.mode() == TargetMode.UPWIND ? 1 : -1;
            TargetPoint more = points.stream()
                    .filter(point -> point.mode() == TargetMode.ANGLE && point.isSolved())
                    .max(Comparator.comparingDouble(point -> way * madeGood(point)))
                    .orElse(null);
            double most = more == null ? Double.NEGATIVE_INFINITY : way * madeGood(more);
            if (more != null && (!best.isSolved() || most > Math.abs(madeGood(best)) + SAME)) {
                missed++;
                System.out.printf(
                        Locale.ROOT,
                        "MISSED | %s | %s | %s %s | %s makes %.1f |%n",
                        wing,
                        model,
                        name(best),
                        best.isSolved() ? String.format(Locale.ROOT, "%.1f", Math.abs(madeGood(best))) : "none",
                        name(more),
                        most);
            }
        }
    }

    /** Way made good to windward (kn), negative down the wind. */
    private static double madeGood(TargetPoint point) {
        return Units.toKnots(point.getTarget().boatSpeed()) * StrictMath.cos(point.trueWindAngle());
    }

    private void compare(String wing, double wind, List<TargetPoint> closed, List<TargetPoint> computed) {
        assertEquals(closed.size(), computed.size());
        tellMissed(wing, "closed form", closed);
        tellMissed(wing, "computed", computed);
        List<double[]> changes = new ArrayList<>();
        List<String> others = new ArrayList<>();
        for (int i = 0; i < closed.size(); i++) {
            TargetPoint a = closed.get(i);
            TargetPoint b = computed.get(i);
            if (a.isSolved() && b.isSolved() && a.isFoiling() == b.isFoiling()) {
                double[] change = new double[NUMBERS.size()];
                for (int k = 0; k < change.length; k++) {
                    change[k] = NUMBERS.get(k).applyAsDouble(b.getTarget())
                            - NUMBERS.get(k).applyAsDouble(a.getTarget());
                }
                changes.add(change);
            } else if (a.isSolved() || b.isSolved()) {
                others.add(name(a) + ": " + branch(a) + " / " + branch(b));
            }
            if (a.mode() != TargetMode.ANGLE) {
                System.out.println("BEST | " + wing + " | " + name(a) + " | " + best(a) + " | " + best(b) + " |");
            }
        }
        both += changes.size();
        same += (int)
                changes.stream().filter(change -> Math.abs(change[0]) < SAME).count();
        StringBuilder line = new StringBuilder();
        for (int k = 0; k < NUMBERS.size(); k++) {
            int column = k;
            double[] sorted = changes.stream()
                    .mapToDouble(change -> change[column])
                    .sorted()
                    .toArray();
            int n = sorted.length;
            line.append(
                    n == 0
                            ? " - |"
                            : String.format(
                                    Locale.ROOT, " %.2f (%.2f..%.2f) |", sorted[n / 2], sorted[0], sorted[n - 1]));
        }
        System.out.printf(
                Locale.ROOT,
                "ALL | %s | %.0f | %d of %d |%s %s |%n",
                wing,
                Units.toKnots(wind),
                changes.size(),
                closed.size(),
                line,
                String.join("; ", others));
    }

    /** Speed (kn), camber, twist and sheet (degrees), sheet load (kN). */
    private static final List<ToDoubleFunction<Target>> NUMBERS = List.of(
            target -> Units.toKnots(target.boatSpeed()),
            target -> Units.toDegrees(target.trim().camber()),
            target -> Units.toDegrees(target.trim().twist()),
            target -> Units.toDegrees(target.trim().sheet()),
            target -> target.loads().sheetLoad() / 1000);

    private static String name(TargetPoint point) {
        String way = point.mode() == TargetMode.ANGLE
                ? String.format(Locale.ROOT, "%.0f degrees", Units.toDegrees(point.trueWindAngle()))
                : point.mode().key();
        return String.format(Locale.ROOT, "%.0f kn %s", Units.toKnots(point.trueWindSpeed()), way);
    }

    private static String branch(TargetPoint point) {
        return !point.isSolved() ? "none" : point.isFoiling() ? "foils" : "hulls";
    }

    private static String best(TargetPoint point) {
        if (!point.isSolved()) {
            return "none";
        }
        double[] n = NUMBERS.stream()
                .mapToDouble(number -> number.applyAsDouble(point.getTarget()))
                .toArray();
        return String.format(
                Locale.ROOT,
                "%s %.1f at %.0f, VMG %.1f, camber %.0f, twist %.0f",
                branch(point),
                n[0],
                Units.toDegrees(point.trueWindAngle()),
                Units.toKnots(point.getTarget().velocityMadeGood()),
                n[1],
                n[2]);
    }
}
