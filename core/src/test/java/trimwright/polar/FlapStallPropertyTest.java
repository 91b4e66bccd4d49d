package trimwright.polar;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import trimwright.layer.LayerSide;
import trimwright.layer.ViscousFlow;
import trimwright.layer.ViscousPoint;
import trimwright.profile.TrailingEdge;
import trimwright.profile.WingProfile;
import trimwright.section.SectionColumn;
import trimwright.section.SectionQuantity;
import trimwright.section.TableGrid;

/** What a column holds where the flap's flow lets go before the main element's: 35 degrees of flap. */
class FlapStallPropertyTest {
    private static final WingProfile PROFILE = new WingProfile(0.16, 0.13, 0.4, 0.012, 0.9);
    private static final double REYNOLDS = 3.7e6;
    private static final double FLAP = Math.toRadians(35);
    private static final TableGrid GRID = new TableGrid(
            List.of(0.16),
            List.of(REYNOLDS / 2, REYNOLDS, REYNOLDS * 2),
            List.of(0.0, FLAP - Math.toRadians(15), FLAP),
            List.of(-1.0, -0.8, -0.6, -0.4, -0.2, 0.0, 0.2, 0.4, 0.6, 0.8, 1.0));
    private static final SectionColumn COLUMN = ColumnMaker.of(PROFILE, REYNOLDS, GRID);

    @Test
    void aFlapThatLetsGoIsNotTheSectionsStall() {
        // The main element's layer holds on to the end of the row, where the flap's has left it from its nose on.
        FlowRange range = new FlowRange(
                new ViscousFlow(PROFILE.elements(FLAP, ColumnMaker.PANELS, TrailingEdge.BLUNT), ViscousFlow.QUIET),
                REYNOLDS);
        assertTrue(range.begin(-0.45 * FLAP));
        double stall = range.toStall(1, 2.9);
        assertEquals(
                stall, COLUMN.high(2), Math.toRadians(2.5), "the rule's lift is not reached, so it does not matter");
        ViscousPoint there = range.solve(stall);
        assertTrue(there != null && there.separation(0, LayerSide.UPPER) > 0.5, "main element");
        assertTrue(there.separation(1, LayerSide.UPPER) < 0.65, "flap");
    }

    @Test
    void liftRisesToStallAndDragIsThatOfASeparatedFlap() {
        int last = GRID.places().size() - 1;
        for (int i = 1; i <= last; i++) {
            assertTrue(
                    COLUMN.value(SectionQuantity.LIFT, 2, i) >= COLUMN.value(SectionQuantity.LIFT, 2, i - 1) - 1e-9,
                    "place " + i);
        }
        assertTrue(
                COLUMN.value(SectionQuantity.LOG_DRAG, 2, last) > COLUMN.value(SectionQuantity.LOG_DRAG, 1, last) + 1);
    }

    /** Worked out by hand: each counts by the way to its neighbours, 1, 3, 3, 1 and 1, 2, 1. */
    @Test
    void whereARowFallsItBecomesLevelAtTheMean() {
        assertArrayEquals(
                new double[] {0, 2, 2, 4}, Rising.of(new double[] {0, 1, 3, 4}, new double[] {0, 3, 1, 4}), 1e-12);
        assertArrayEquals(
                new double[] {1.5, 1.5, 2}, Rising.of(new double[] {0, 1, 2}, new double[] {2.5, 1, 2}), 1e-12);
    }
}
