package trimwright.section;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import trimwright.evidence.ValidatedAgainst;

class TabledSectionValidationTest {
    private static final SectionTable TABLE = ClosedFormTable.of(TableGrid.of(List.of(0.12, 0.16, 0.2)));

    @Test
    @ValidatedAgainst(
            source = "VITERNA-CORRIGAN",
            where =
                    "drag abeam 1.11 + 0.018 times aspect ratio, a section from tables at 90 degrees, aspect ratios 5 and 15",
            tolerance = "0.01: the friction that the section keeps")
    void abeamItDragsLikeAPlateOfTheWingsAspectRatio() {
        SectionPoint out = new SectionPoint();
        double[][] rows = {{5, 1.20}, {15, 1.38}};
        for (double[] row : rows) {
            section(row[0]).evaluate(Math.PI / 2, 0, 2e6, out);
            assertEquals(row[1], out.cd, 0.01);
            assertEquals(0, out.cl, 1e-9);
        }
    }

    @Test
    @ValidatedAgainst(
            source = "HOERNER-PLATE",
            where =
                    "normal force 1.8222 at 60, 1.9802 at 90 degrees of a plate of endless span; a section from tables, flap "
                            + "straight, to its front and its back",
            tolerance = "0.01: the friction that the section keeps")
    void farFromStallItIsThePlate() {
        SectionPoint out = new SectionPoint();
        for (double[] row :
                new double[][] {{60, 1.8222}, {90, 1.9802}, {120, 1.8222}, {-60, -1.8222}, {-120, -1.8222}}) {
            double alpha = Math.toRadians(row[0]);
            // An aspect ratio at which the drag abeam is that of endless span.
            section(60).evaluate(alpha, 0, 2e6, out);
            assertEquals(row[1], out.cl * Math.cos(alpha) + out.cd * Math.sin(alpha), 0.01, "at " + row[0]);
        }
    }

    private static SectionModel section(double aspectRatio) {
        return TABLE.family(aspectRatio).sectionOf(ClosedFormTable.shape(0.22, 0.15));
    }
}
