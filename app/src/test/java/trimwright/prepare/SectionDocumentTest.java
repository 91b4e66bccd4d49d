package trimwright.prepare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.boatfile.BoatFiles;
import trimwright.section.SectionFamily;
import trimwright.wing.Wing;

class SectionDocumentTest {
    private static final BoatFile BOAT = BoatFiles.find("whimbrel14");
    private static final WingSpec WING = BOAT.boat().getWing("tall");

    /** As if from tables: which caveats come depends on margin and Reynolds number, not on what lies between. */
    private static final Sections COMPUTED =
            new Sections(SectionSource.COMPUTED, SectionFamily.closedForm(Wing.aspectRatio(WING)));

    @Test
    void atEveryAngleThereIsAnAnswerAndPastStallItSaysSo() {
        int past = 0;
        for (int alpha = -180; alpha <= 180; alpha += 5) {
            ObjectNode document = document(COMPUTED, alpha, 2e6);
            boolean isPast = document.get("stall_margin_deg").asDouble() < 0;
            past += isPast ? 1 : 0;
            assertEquals(isPast ? List.of("past_stall") : List.of(), caveats(document), "alpha " + alpha);
            assertTrue(document.get("drag_coefficient").asDouble() > 0, "alpha " + alpha);
            assertTrue(Math.abs(document.get("lift_coefficient").asDouble()) < 3, "alpha " + alpha);
        }
        assertTrue(past > 50, "past " + past);
    }

    private static ObjectNode document(Sections sections, double alphaDeg, double reynolds) {
        return SectionDocument.of(BOAT, WING, sections, 0.5, Math.toRadians(alphaDeg), Math.toRadians(20), reynolds);
    }

    private static List<String> caveats(ObjectNode document) {
        List<String> caveats = new ArrayList<>();
        document.get("caveats").forEach(caveat -> caveats.add(caveat.asText()));
        return caveats;
    }
}
