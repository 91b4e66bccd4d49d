package trimwright.section;

import java.util.List;
import org.hipparchus.analysis.interpolation.SplineInterpolator;

/**
 * Computed answers of a family of sections that differ in thickness: between the nodes a smooth section model for each
 * thickness.
 *
 * <p>Angles of attack are counted between the stalls at the same flap angle and Reynolds number, so that the bend of the lift
 * curve lies at the same place of every row. docs/theory/section.md.
 */
public final class SectionTable {
    private final TableGrid grid;
    private final List<List<SectionColumn>> columns;

    /** @param columns by thickness, then by Reynolds number */
    public SectionTable(TableGrid grid, List<List<SectionColumn>> columns) {
        this.grid = grid;
        this.columns = columns.stream().map(List::copyOf).toList();
        if (columns.size() != grid.thicknesses().size()
                || columns.stream()
                        .anyMatch(row -> row.size() != grid.reynolds().size())) {
            throw new IllegalArgumentException("a column for each thickness and Reynolds number");
        }
    }

    public TableGrid grid() {
        return grid;
    }

    public SectionColumn column(int thickness, int reynolds) {
        return columns.get(thickness).get(reynolds);
    }

    /** Sections of a wing of this aspect ratio (-), which decides the drag of separated ones. */
    public SectionFamily family(double aspectRatio) {
        SectionTuning tuning = SectionTuning.DEFAULT.withPlateDrag(Plate.dragAbeam(aspectRatio));
        return shape -> new TabledSection(this, shape, tuning);
    }

    /** Share of each thickness's column (-) at a thickness, in sum 1; beyond the table that of its end. */
    double[] shares(double thickness) {
        int n = grid.thicknesses().size();
        double[] shares = new double[n];
        double[] node = new double[n];
        for (int i = 0; i < n; i++) {
            node[i] = grid.thicknesses().get(i);
        }
        double at = Math.max(node[0], Math.min(node[n - 1], thickness));
        for (int i = 0; i < n; i++) {
            double[] one = new double[n];
            one[i] = 1;
            shares[i] = n == 1
                    ? 1
                    : n == 2
                            ? Math.abs(at - node[1 - i]) / (node[1] - node[0])
                            : new SplineInterpolator().interpolate(node, one).value(at);
        }
        return shares;
    }
}
