package trimwright.polar;

import java.util.List;
import org.hipparchus.analysis.interpolation.AkimaSplineInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;
import trimwright.layer.ViscousFlow;
import trimwright.layer.ViscousPoint;
import trimwright.profile.TrailingEdge;
import trimwright.profile.WingProfile;
import trimwright.section.SectionColumn;
import trimwright.section.SectionQuantity;
import trimwright.section.TableGrid;

/**
 * Computes one column of a table: one outline at one Reynolds number, all flap angles, stall to stall. Columns do not know of
 * each other, so they may be computed in any order.
 */
public final class ColumnMaker {
    /** Panels of each element: at 160 lift differs by under 1 percent to 20 degrees of flap, 4 at 30; a third of the time. */
    public static final int PANELS = 100;

    /** Share of the flap angle by which a section is turned back to be far from both stalls; chosen. */
    private static final double EASY = 0.45;

    /** Angle (rad) at which the straight section is begun, chosen. */
    private static final double EASY_STRAIGHT = Math.toRadians(2);

    /** Range between stalls (rad) lost from one flap angle to the next by which the flap counts as stalled; chosen. */
    private static final double LOST = Math.toRadians(12);

    private final WingProfile profile;
    private final double reynolds;
    private final TableGrid grid;
    private final double[] low;
    private final double[] high;
    private final double[][][] value;
    private int filled;

    private ColumnMaker(WingProfile profile, double reynolds, TableGrid grid) {
        this.profile = profile;
        this.reynolds = reynolds;
        this.grid = grid;
        int flaps = grid.flaps().size();
        low = new double[flaps];
        high = new double[flaps];
        value = new double[SectionQuantity.values().length][flaps][grid.places().size()];
    }

    /**
     * The column.
     *
     * @throws NoPolarException if no flow is found about the straight section
     */
    public static SectionColumn of(WingProfile profile, double reynolds, TableGrid grid) {
        ColumnMaker maker = new ColumnMaker(profile, reynolds, grid);
        int solved = 0;
        while (solved < grid.flaps().size() && maker.compute(solved)) {
            solved++;
        }
        if (solved < 2) {
            throw new NoPolarException(profile, reynolds);
        }
        for (int j = solved; j < grid.flaps().size(); j++) {
            maker.flapStalled(j, solved - 1);
        }
        return new SectionColumn(maker.low, maker.high, maker.value, maker.filled);
    }

    /** Computes a flap angle; false if there is no range of flow worth the name. */
    private boolean compute(int j) {
        double flap = grid.flaps().get(j);
        FlowRange range = new FlowRange(
                new ViscousFlow(profile.elements(flap, PANELS, TrailingEdge.BLUNT), ViscousFlow.QUIET), reynolds);
        if (!range.begin(j == 0 ? EASY_STRAIGHT : -EASY * flap)) {
            return false;
        }
        high[j] = range.toStall(1);
        low[j] = j == 0 ? -high[j] : range.toStall(-1);
        if (j > 0 && high[j] - low[j] < high[j - 1] - low[j - 1] - LOST) {
            return false;
        }
        double middle = 0.5 * (high[j] + low[j]);
        double half = 0.5 * (high[j] - low[j]);
        int places = grid.places().size();
        boolean[] known = new boolean[places];
        for (int i = j == 0 ? places / 2 : 0; i < places; i++) {
            double s = grid.places().get(i);
            double alpha = i == 0 ? low[j] : i == places - 1 ? high[j] : middle + s * half;
            ViscousPoint point = range.solve(alpha);
            if (point != null) {
                known[i] = true;
                set(i, j, point);
            }
        }
        if (j == 0) {
            mirror(known);
        }
        fillGaps(j, known);
        return true;
    }

    private void set(int i, int j, ViscousPoint point) {
        double quarter = 0;
        for (int k = 0; k < point.surface().elements(); k++) {
            quarter += point.surface().moment(k, 0.25, 0);
        }
        double flap = profile.flapChord();
        put(SectionQuantity.LIFT, j, i, point.lift());
        put(SectionQuantity.LOG_DRAG, j, i, StrictMath.log(point.drag()));
        put(SectionQuantity.QUARTER_MOMENT, j, i, quarter);
        put(SectionQuantity.HINGE, j, i, point.surface().moment(1, profile.pivotX(), 0) / (flap * flap));
    }

    private void put(SectionQuantity quantity, int j, int i, double number) {
        value[quantity.ordinal()][j][i] = number;
    }

    /** The straight section at negative angles is the mirror image; at none it has neither lift nor moments. */
    private void mirror(boolean[] known) {
        int last = grid.places().size() - 1;
        for (SectionQuantity quantity : SectionQuantity.values()) {
            double[] row = value[quantity.ordinal()][0];
            if (quantity.mirror() < 0) {
                row[last / 2] = 0;
            }
            for (int i = 0; i < last / 2; i++) {
                row[i] = quantity.mirror() * row[last - i];
            }
        }
        for (int i = 0; i < last / 2; i++) {
            known[i] = known[last - i];
        }
    }

    /** Places without an answer lie on the straight line between their neighbours with one. Both ends have one. */
    private void fillGaps(int j, boolean[] known) {
        List<Double> places = grid.places();
        int before = 0;
        for (int i = 1; i < known.length; i++) {
            if (!known[i]) {
                continue;
            }
            for (int gap = before + 1; gap < i; gap++) {
                double share = (places.get(gap) - places.get(before)) / (places.get(i) - places.get(before));
                for (double[][] quantity : value) {
                    quantity[j][gap] = quantity[j][before] + share * (quantity[j][i] - quantity[j][before]);
                }
                filled++;
            }
            before = i;
        }
    }

    /**
     * A flap angle whose flow is not found: the flap is stalled. Lift and moments at an angle of attack stay those of the last
     * flap angle with an answer, drag grows on, and each degree of flap beyond takes a degree from the angle of attack of
     * stall, at most half the range.
     */
    private void flapStalled(int j, int last) {
        double beyond = grid.flaps().get(j) - grid.flaps().get(last);
        double step = grid.flaps().get(last) - grid.flaps().get(last - 1);
        double range = high[last] - low[last];
        low[j] = low[last];
        high[j] = Math.max(high[last] - beyond, low[last] + 0.5 * range);
        double[] place = grid.places().stream().mapToDouble(Double::doubleValue).toArray();
        for (SectionQuantity quantity : SectionQuantity.values()) {
            double[][] rows = value[quantity.ordinal()];
            double[] row = rows[last];
            if (quantity == SectionQuantity.LOG_DRAG) {
                row = row.clone();
                for (int i = 0; i < row.length; i++) {
                    row[i] += Math.max(0, row[i] - rows[last - 1][i]) * beyond / step;
                }
            }
            PolynomialSplineFunction curve = new AkimaSplineInterpolator().interpolate(place, row);
            for (int i = 0; i < place.length; i++) {
                double alpha = low[j] + 0.5 * (place[i] + 1) * (high[j] - low[j]);
                rows[j][i] = curve.value(Math.max(-1, Math.min(1, 2 * (alpha - low[last]) / range - 1)));
            }
        }
        filled += grid.places().size();
    }
}
