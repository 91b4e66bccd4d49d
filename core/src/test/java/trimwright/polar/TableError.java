package trimwright.polar;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import trimwright.layer.ViscousFlow;
import trimwright.layer.ViscousPoint;
import trimwright.profile.TrailingEdge;
import trimwright.profile.WingProfile;
import trimwright.section.SectionModel;
import trimwright.section.SectionPoint;

/** Distance of a section from tables to the flow computed directly, at places off the table's nodes. */
public final class TableError {
    /** Step of the slopes, which are compared as secants (rad): large against what Newton's method leaves. */
    private static final double STEP = Math.toRadians(0.5);

    private static final int ALPHA = 5;
    private static final int PLACE = 9;

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
        int before = rows.size();
        double easy = -0.45 * flap;
        double high = stall(section, easy, flap, reynolds, 1);
        double low = stall(section, easy, flap, reynolds, -1);
        double middle = 0.5 * (low + high);
        double half = 0.5 * (high - low);
        double[] alphas = random.doubles(angles, middle + from * half, middle + to * half)
                .sorted()
                .toArray();
        ViscousFlow flow =
                new ViscousFlow(profile.elements(flap, ColumnMaker.PANELS, TrailingEdge.BLUNT), ViscousFlow.QUIET);
        int first = 0;
        while (first < angles && alphas[first] < easy) {
            first++;
        }
        ViscousPoint start = flow.at(easy, reynolds, null) instanceof ViscousPoint point ? point : null;
        if (start == null) {
            missing += angles;
            return;
        }
        // Outward from the easy angle, each from the one before.
        ViscousPoint near = start;
        for (int i = first; i < angles; i++) {
            near = compare(section, profile, axis, flow, flap, reynolds, alphas[i], STEP, near);
        }
        near = start;
        for (int i = first - 1; i >= 0; i--) {
            near = compare(section, profile, axis, flow, flap, reynolds, alphas[i], -STEP, near);
        }
        for (double[] row : rows.subList(before, rows.size())) {
            row[PLACE] = (row[ALPHA] - middle) / half;
        }
    }

    /** One place; the answer to go on from. */
    private ViscousPoint compare(
            SectionModel section,
            WingProfile profile,
            double axis,
            ViscousFlow flow,
            double flap,
            double reynolds,
            double alpha,
            double step,
            ViscousPoint near) {
        ViscousPoint direct = follow(flow, alpha, reynolds, near);
        ViscousPoint next = direct == null ? null : follow(flow, alpha + step, reynolds, direct);
        if (direct == null || next == null) {
            missing++;
            return direct == null ? near : direct;
        }
        SectionPoint point = new SectionPoint();
        section.evaluate(alpha + step, flap, reynolds, point);
        double nextLift = point.cl;
        section.evaluate(alpha, flap, reynolds, point);
        double moment = 0;
        for (int k = 0; k < 2; k++) {
            moment += direct.surface().moment(k, axis, 0);
        }
        double hinge = direct.surface().moment(1, profile.pivotX(), 0) / Math.pow(profile.flapChord(), 2);
        rows.add(new double[] {
            point.cl - direct.lift(),
            (nextLift - point.cl - (next.lift() - direct.lift())) / step,
            point.cd / direct.drag() - 1,
            point.cm - moment,
            point.hinge - hinge,
            alpha,
            flap,
            reynolds,
            profile.mainThickness(),
            0,
            direct.lift()
        });
        return direct;
    }

    private static @Nullable ViscousPoint follow(ViscousFlow flow, double alpha, double reynolds, ViscousPoint near) {
        return flow.follow(alpha, reynolds, near) instanceof ViscousPoint point ? point : null;
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
