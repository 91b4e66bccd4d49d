package trimwright.section;

import java.util.ArrayList;
import java.util.List;

/** A table filled with the closed form up to stall, as a known function to hold the table's between-values against. */
final class ClosedFormTable {
    static final double FLAP = 0.4;
    static final double SLOT = 0.012;

    private ClosedFormTable() {}

    static SectionShape shape(double axis, double thickness) {
        return new SectionShape(FLAP, axis, SLOT, thickness);
    }

    static SectionTable of(TableGrid grid) {
        List<List<SectionColumn>> columns = new ArrayList<>();
        for (double thickness : grid.thicknesses()) {
            List<SectionColumn> row = new ArrayList<>();
            for (double reynolds : grid.reynolds()) {
                row.add(column(new ClosedFormSection(shape(0.25, thickness), SectionTuning.DEFAULT), reynolds, grid));
            }
            columns.add(row);
        }
        return new SectionTable(grid, columns);
    }

    private static SectionColumn column(SectionModel flow, double reynolds, TableGrid grid) {
        int flaps = grid.flaps().size();
        int places = grid.places().size();
        double[] low = new double[flaps];
        double[] high = new double[flaps];
        double[][][] value = new double[4][flaps][places];
        SectionPoint point = new SectionPoint();
        for (int j = 0; j < flaps; j++) {
            double flap = grid.flaps().get(j);
            low[j] = j == 0 ? -stall(flow, flap, reynolds, 1) : stall(flow, flap, reynolds, -1);
            high[j] = stall(flow, flap, reynolds, 1);
            for (int i = 0; i < places; i++) {
                double s = grid.places().get(i);
                flow.evaluate(0.5 * (high[j] + low[j]) + s * 0.5 * (high[j] - low[j]), flap, reynolds, point);
                value[SectionQuantity.LIFT.ordinal()][j][i] = point.cl;
                value[SectionQuantity.LOG_DRAG.ordinal()][j][i] = Math.log(point.cd);
                value[SectionQuantity.QUARTER_MOMENT.ordinal()][j][i] = point.cm;
                value[SectionQuantity.HINGE.ordinal()][j][i] = point.hinge;
            }
        }
        return new SectionColumn(low, high, value, 0);
    }

    /** Where the margin vanishes on the way from zero lift (rad). */
    static double stall(SectionModel flow, double flap, double reynolds, int way) {
        SectionPoint point = new SectionPoint();
        double none = -0.748 * Math.sin(1.25 * flap) / 1.25;
        double stalled = none + way * 0.6;
        for (int i = 0; i < 60; i++) {
            double middle = 0.5 * (none + stalled);
            flow.evaluate(middle, flap, reynolds, point);
            if (point.stallMargin > 0) {
                none = middle;
            } else {
                stalled = middle;
            }
        }
        return 0.5 * (none + stalled);
    }
}
