package trimwright.bench;

import java.util.ArrayList;
import java.util.List;
import trimwright.section.SectionColumn;
import trimwright.section.SectionFamily;
import trimwright.section.SectionModel;
import trimwright.section.SectionPoint;
import trimwright.section.SectionQuantity;
import trimwright.section.SectionShape;
import trimwright.section.SectionTable;
import trimwright.section.TableGrid;

/** Section tables of the usual size, filled from the closed form in no time: looking a number up costs the same whatever it is. */
final class SampledTable {
    private static final double ASPECT_RATIO = 6;
    private static final double FLAP_SHARE = 0.4;
    private static final double SLOT = 0.012;

    private SampledTable() {}

    static SectionFamily family() {
        TableGrid grid = TableGrid.of(List.of(0.12, 0.16, 0.2));
        List<List<SectionColumn>> columns = new ArrayList<>();
        for (double thickness : grid.thicknesses()) {
            SectionModel section = SectionFamily.closedForm(ASPECT_RATIO)
                    .sectionOf(new SectionShape(FLAP_SHARE, 0.25, SLOT, thickness));
            columns.add(grid.reynolds().stream()
                    .map(reynolds -> column(section, reynolds, grid))
                    .toList());
        }
        return new SectionTable(grid, columns).family(ASPECT_RATIO);
    }

    private static SectionColumn column(SectionModel section, double reynolds, TableGrid grid) {
        int flaps = grid.flaps().size();
        int places = grid.places().size();
        double[] low = new double[flaps];
        double[] high = new double[flaps];
        double[][][] value = new double[SectionQuantity.values().length][flaps][places];
        SectionPoint point = new SectionPoint();
        for (int j = 0; j < flaps; j++) {
            double flap = grid.flaps().get(j);
            high[j] = stall(section, flap, reynolds, 1);
            low[j] = j == 0 ? -high[j] : stall(section, flap, reynolds, -1);
            for (int i = 0; i < places; i++) {
                double share = 0.5 * (1 + grid.places().get(i));
                section.evaluate(low[j] + share * (high[j] - low[j]), flap, reynolds, point);
                value[SectionQuantity.LIFT.ordinal()][j][i] = point.cl;
                value[SectionQuantity.LOG_DRAG.ordinal()][j][i] = StrictMath.log(point.cd);
                value[SectionQuantity.QUARTER_MOMENT.ordinal()][j][i] = point.cm;
                value[SectionQuantity.HINGE.ordinal()][j][i] = point.hinge;
            }
        }
        return new SectionColumn(low, high, value, 0);
    }

    /** Angle of attack (rad) at which a section stalls on one side, by halving from about zero lift. */
    private static double stall(SectionModel section, double flap, double reynolds, int way) {
        SectionPoint point = new SectionPoint();
        double attached = -0.6 * flap;
        double stalled = attached + way * 0.6;
        for (int i = 0; i < 60; i++) {
            double middle = 0.5 * (attached + stalled);
            section.evaluate(middle, flap, reynolds, point);
            if (point.stallMargin > 0) {
                attached = middle;
            } else {
                stalled = middle;
            }
        }
        return 0.5 * (attached + stalled);
    }
}
