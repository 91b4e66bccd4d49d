package trimwright.polar;

import java.util.Collection;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.hipparchus.analysis.interpolation.AkimaSplineInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;
import trimwright.layer.ViscousFlow;
import trimwright.layer.ViscousPoint;
import trimwright.panel.IdealFlow;
import trimwright.panel.PressureRule;
import trimwright.profile.TrailingEdge;
import trimwright.profile.WingProfile;
import trimwright.section.SectionColumn;
import trimwright.section.SectionQuantity;
import trimwright.section.TableGrid;

/**
 * Computes one column of a table: one outline at one Reynolds number, all flap angles, stall to stall. Columns do not know of
 * each other, so they may be computed in any order.
 *
 * <p>Stall is where lift reaches what the pressure-difference rule allows, or earlier where layers separate.
 */
public final class ColumnMaker {
    /** Panels of each element, chosen: to 25 degrees of flap lift differs by 0.006 (rms) from that at 160, in 0.4 of the time. */
    public static final int PANELS = 80;

    /** Share of the flap angle by which a section is turned back to be far from both stalls; chosen. */
    private static final double EASY = 0.45;

    /** Angle (rad) at which the straight section is begun, chosen. */
    private static final double EASY_STRAIGHT = Math.toRadians(2);

    /** Range between stalls (rad) lost from one flap angle to the next by which the flap counts as stalled; chosen. */
    private static final double LOST = Math.toRadians(12);

    /** Growth of the drag's logarithm from one flap angle to the next that a stalled flap leads on at most, chosen: a half. */
    private static final double MOST_GROWTH = 0.4;

    /** Answers farther apart than this (rad) leave a gap between them: a step, and what halving may add. */
    private static final double GAP = 1.2 * FlowRange.STEP;

    /** Least number of answers between which curves are drawn. */
    private static final int FEWEST = 5;

    private final WingProfile profile;
    private final double reynolds;
    private final TableGrid grid;
    private final double[] low;
    private final double[] high;
    private final double[][][] value;

    /** Most lift by the pressure-difference rule with the flap and against it, at the flap angles so far. */
    private double most = Double.POSITIVE_INFINITY;

    private double mostAgainst = Double.POSITIVE_INFINITY;
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
        ViscousFlow flow = new ViscousFlow(profile.elements(flap, PANELS, TrailingEdge.BLUNT), ViscousFlow.QUIET);
        most = allowed(flow.ideal(), most);
        mostAgainst = j == 0
                ? most
                : allowed(new IdealFlow(profile.elements(-flap, PANELS, TrailingEdge.BLUNT)), mostAgainst);
        FlowRange range = new FlowRange(flow, reynolds);
        if (!range.begin(j == 0 ? EASY_STRAIGHT : -EASY * flap)) {
            return false;
        }
        high[j] = range.toStall(1, most);
        if (j == 0) {
            low[j] = -high[j];
            range.solve(0);
        } else {
            low[j] = range.toStall(-1, mostAgainst);
        }
        NavigableMap<Double, ViscousPoint> answers = range.answers(j == 0 ? 0 : low[j], high[j]);
        if (answers.size() < FEWEST || j > 0 && high[j] - low[j] < high[j - 1] - low[j - 1] - LOST) {
            return false;
        }
        for (SectionQuantity quantity : SectionQuantity.values()) {
            draw(j, quantity, answers);
        }
        return true;
    }

    /**
     * Most lift by the pressure-difference rule. Where the flap is the first to reach its limit the rule says that the flap
     * stalls, not at which lift the section does: then there is no more lift than with less flap.
     */
    private double allowed(IdealFlow flow, double withLessFlap) {
        PressureRule.Limit limit = PressureRule.find(flow, reynolds);
        return limit == null || limit.element() != 0 ? withLessFlap : limit.lift();
    }

    /** Fills the places of a flap angle by a curve through the answers. */
    private void draw(int j, SectionQuantity quantity, NavigableMap<Double, ViscousPoint> answers) {
        NavigableMap<Double, Double> known = new TreeMap<>();
        answers.forEach((alpha, point) -> known.put(alpha, of(quantity, point)));
        if (quantity == SectionQuantity.LIFT) {
            makeRise(known.subMap(low[j], true, high[j], true));
        }
        if (j == 0) {
            // The straight section at negative angles is the mirror image; at none it has neither lift nor moments.
            answers.forEach((alpha, point) -> known.put(0 - alpha, quantity.mirror() * of(quantity, point)));
            if (quantity.mirror() < 0) {
                known.put(0.0, 0.0);
            }
        }
        double[] angle = numbers(known.keySet());
        double[] number = numbers(known.values());
        PolynomialSplineFunction curve = new AkimaSplineInterpolator().interpolate(angle, number);
        double[] row = value[quantity.ordinal()][j];
        int last = row.length - 1;
        for (int i = j == 0 ? last / 2 : 0; i <= last; i++) {
            double alpha = low[j] + 0.5 * (grid.places().get(i) + 1) * (high[j] - low[j]);
            double within = Math.max(angle[0], Math.min(angle[angle.length - 1], alpha));
            row[i] = curve.value(within);
            if (quantity == SectionQuantity.LIFT && isGap(known, within)) {
                filled++;
            }
        }
        for (int i = 0; j == 0 && i < last / 2; i++) {
            row[i] = quantity.mirror() * row[last - i];
        }
        if (j == 0 && quantity.mirror() < 0) {
            row[last / 2] = 0;
        }
    }

    private static void makeRise(NavigableMap<Double, Double> lift) {
        double[] rising = Rising.of(numbers(lift.keySet()), numbers(lift.values()));
        int i = 0;
        for (Map.Entry<Double, Double> entry : lift.entrySet()) {
            entry.setValue(rising[i++]);
        }
    }

    private static double[] numbers(Collection<Double> list) {
        return list.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static boolean isGap(NavigableMap<Double, Double> known, double alpha) {
        return known.ceilingKey(alpha) - known.floorKey(alpha) > GAP;
    }

    private double of(SectionQuantity quantity, ViscousPoint point) {
        return switch (quantity) {
            case LIFT -> point.lift();
            case LOG_DRAG -> StrictMath.log(point.drag());
            case QUARTER_MOMENT -> {
                double sum = 0;
                for (int k = 0; k < point.surface().elements(); k++) {
                    sum += point.surface().moment(k, 0.25, 0);
                }
                yield sum;
            }
            case HINGE -> point.surface().moment(1, profile.pivotX(), 0) / (profile.flapChord() * profile.flapChord());
        };
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
        double[] place = numbers(grid.places());
        for (SectionQuantity quantity : SectionQuantity.values()) {
            double[][] rows = value[quantity.ordinal()];
            double[] row = rows[last];
            if (quantity == SectionQuantity.LOG_DRAG) {
                row = row.clone();
                for (int i = 0; i < row.length; i++) {
                    row[i] += Math.max(0, Math.min(MOST_GROWTH, row[i] - rows[last - 1][i])) * beyond / step;
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
