package trimwright.polar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import trimwright.panel.IdealFlow;
import trimwright.panel.PressureRule;
import trimwright.profile.TrailingEdge;
import trimwright.profile.WingProfile;
import trimwright.section.SectionColumn;
import trimwright.section.SectionModel;
import trimwright.section.SectionPoint;
import trimwright.section.SectionQuantity;
import trimwright.section.SectionShape;
import trimwright.section.SectionTable;
import trimwright.section.TableGrid;

/** One outline at one Reynolds number on coarse nodes; all of a wing's table: {@code SectionTableStudyTest} in app. */
class ColumnMakerPropertyTest {
    private static final WingProfile PROFILE = new WingProfile(0.17, 0.13, 0.4, 0.012, 0.9);
    private static final double REYNOLDS = 2e6;
    private static final double STEP = Math.toRadians(10);
    private static final TableGrid GRID = new TableGrid(
            List.of(0.17),
            List.of(REYNOLDS / 2, REYNOLDS, REYNOLDS * 2),
            List.of(0.0, STEP, 2 * STEP),
            List.of(-1.0, -0.87, -0.7, -0.48, -0.25, 0.0, 0.25, 0.48, 0.7, 0.87, 1.0));
    private static final SectionColumn COLUMN = ColumnMaker.of(PROFILE, REYNOLDS, GRID);

    /** The one column stands for its neighbours too: at its own Reynolds number the table then is the column. */
    private static final SectionTable TABLE = new SectionTable(GRID, List.of(List.of(COLUMN, COLUMN, COLUMN)));

    private static final SectionModel SECTION = TABLE.family(6).sectionOf(new SectionShape(0.4, 0.22, 0.012, 0.17));

    @Test
    void mostLiftGrowsWithFlapAndTheAngleOfItFalls() {
        int last = GRID.places().size() - 1;
        for (int j = 1; j < 3; j++) {
            assertTrue(COLUMN.value(SectionQuantity.LIFT, j, last) > COLUMN.value(SectionQuantity.LIFT, j - 1, last));
            assertTrue(COLUMN.high(j) < COLUMN.high(j - 1));
            assertTrue(COLUMN.low(j) < 0);
        }
    }

    /** The rule sets the lift; the angle is where the computed flow reaches it, later than ideal flow. */
    @Test
    void stallIsWhereLiftReachesWhatThePressureRuleAllows() {
        int last = GRID.places().size() - 1;
        for (int j = 0; j < 3; j++) {
            PressureRule.Limit limit = PressureRule.find(
                    new IdealFlow(PROFILE.elements(GRID.flaps().get(j), ColumnMaker.PANELS, TrailingEdge.BLUNT)),
                    REYNOLDS);
            assertNotNull(limit);
            assertEquals(limit.lift(), COLUMN.value(SectionQuantity.LIFT, j, last), 0.01);
            assertTrue(COLUMN.high(j) > limit.alpha());
        }
    }

    @Test
    void airStraightensTheFlap() {
        SectionPoint out = new SectionPoint();
        SECTION.evaluate(0.05, 0.3, REYNOLDS, out);
        assertTrue(out.hinge < -0.2 && out.hinge > -0.8, "hinge moment " + out.hinge);
    }

    /**
     * Off the nodes, where lift is with the flap. Flap angles here stand twice as far apart as in a wing's table, so up to
     * four times its error (docs/validation.md: lift 0.020, drag 4 percent) may be: this holds the way of interpolating.
     */
    @Test
    void betweenNodesItFollowsTheFlowComputedDirectly() {
        TableError error = new TableError();
        Random random = new Random(5);
        for (double flap : new double[] {0.63 * STEP, 1.5 * STEP}) {
            error.add(SECTION, PROFILE, 0.22, flap, REYNOLDS, 8, -0.3, 0.8, random);
        }
        assertTrue(error.rows().size() >= 12, "no flow at " + error.missing() + " of 16 places");
        assertEquals(0, error.rms(0), 0.052, "rms of lift");
        assertEquals(0, error.rms(2), 0.12, "rms of drag, share");
        assertEquals(0, error.rms(3), 0.012, "rms of moment");
        assertEquals(0, error.rms(4), 0.03, "rms of hinge moment");
    }
}
