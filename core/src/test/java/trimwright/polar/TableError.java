package trimwright.polar;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import trimwright.layer.ViscousFlow;
import trimwright.layer.ViscousPoint;
import trimwright.profile.TrailingEdge;
import trimwright.profile.WingProfile;
import trimwright.section.SectionModel;
import trimwright.section.SectionPoint;

/** Distance of a section from tables to the flow computed directly, at places off the table's nodes. */
public final class TableError {
    /** Half the step of the slope's difference quotient (rad): large against what Newton's method leaves. */
    private static final double STEP = Math.toRadians(0.25);

    private final List<double[]> rows = new ArrayList<>();
    private int missing;

    /** Names of the columns of a row: differences of lift, slope of lift (per rad), share of drag, moment, hinge moment. */
    public static final List<String> NAMES = List.of("lift", "lift slope", "drag share", "moment", "hinge");

    /**
     * Compares along one outline that the table has no node of.
     *
     * @param from place between both stalls, -1 to 1, from which angles are drawn
     * @param to place up to which
     */
    public void add(
            SectionModel section,
            WingProfile profile,
            double axis,
            double flap,
            double reynolds,
            int angles,
            double from,
            double to,
            Random random) {
        SectionPoint point = new SectionPoint();
        double easy = -0.45 * flap;
        double high = stall(section, easy, flap, reynolds, 1);
        double low = stall(section, easy, flap, reynolds, -1);
        FlowRange range = new FlowRange(
                new ViscousFlow(profile.elements(flap, ColumnMaker.PANELS, TrailingEdge.BLUNT), ViscousFlow.QUIET),
                reynolds);
        if (!range.begin(easy)) {
            missing += angles;
            return;
        }
        range.toStall(1);
        range.toStall(-1);
        double middle = 0.5 * (low + high);
        double half = 0.5 * (high - low);
        for (int i = 0; i < angles; i++) {
            double alpha = middle + half * (from + (to - from) * random.nextDouble());
            ViscousPoint direct = range.solve(alpha);
            ViscousPoint before = range.solve(alpha - STEP);
            ViscousPoint after = range.solve(alpha + STEP);
            if (direct == null || before == null || after == null) {
                missing++;
                continue;
            }
            section.evaluate(alpha, flap, reynolds, point);
            double moment = 0;
            for (int k = 0; k < 2; k++) {
                moment += direct.surface().moment(k, axis, 0);
            }
            double hinge = direct.surface().moment(1, profile.pivotX(), 0) / Math.pow(profile.flapChord(), 2);
            rows.add(new double[] {
                point.cl - direct.lift(),
                point.clAlpha - (after.lift() - before.lift()) / (2 * STEP),
                point.cd / direct.drag() - 1,
                point.cm - moment,
                point.hinge - hinge,
                alpha,
                flap,
                reynolds,
                profile.mainThickness(),
                (alpha - middle) / half,
                direct.lift()
            });
        }
    }

    private static double stall(SectionModel section, double from, double flap, double reynolds, int way) {
        SectionPoint point = new SectionPoint();
        double alpha = from;
        do {
            alpha += way * 1e-3;
            section.evaluate(alpha, flap, reynolds, point);
        } while (point.stallMargin > 0);
        return alpha;
    }

    /** A row for each place: the differences of {@link #NAMES}, angle of attack, flap, Reynolds number, thickness, place, lift. */
    public List<double[]> rows() {
        return rows;
    }

    /** Places where the flow computed directly has no answer. */
    public int missing() {
        return missing;
    }

    public double worst(int column) {
        return rows.stream().mapToDouble(row -> Math.abs(row[column])).max().orElse(Double.NaN);
    }

    public double rms(int column) {
        return Math.sqrt(rows.stream()
                .mapToDouble(row -> row[column] * row[column])
                .average()
                .orElse(Double.NaN));
    }
}
