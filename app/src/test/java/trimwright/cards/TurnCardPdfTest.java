package trimwright.cards;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import trimwright.text.JsonOut;
import trimwright.text.Texts;

/** The printed plan: all cues, what the sheet does and when to give up, each side within its page. */
class TurnCardPdfTest {
    private static final LocalDate DAY = LocalDate.of(2027, 3, 6);

    /** Eight cues of two lines each: as many as a plan has, let down. */
    private static ObjectNode document() {
        ObjectNode document = JsonOut.document("turn-plan/1");
        document.put("boat", "Whimbrel 14")
                .put("wing", "tall")
                .put("kind", "bear-away")
                .put("begin", "let-down");
        document.put("tws_kn", 16).put("turbulence_ratio", 0.07).put("caution", Texts.of("turnplan.caution"));
        document.put("safe_said", Texts.of("turnplan.not_safe", 5.0, 10.0, 200, 8.0, 12.0));
        document.putObject("naive").put("lost_m", 100);
        for (String form : List.of("full", "safe")) {
            ObjectNode plan = document.putObject(form);
            for (int i = 0; i < 8; i++) {
                ObjectNode step = plan.withArray("cues").addObject();
                step.put(
                        "cue",
                        i == 7
                                ? "Last cue, the speed is back (95 % of the card's)"
                                : "Apparent wind past the bow, new side");
                step.put("move", "Driver: 25 deg a second, to 10 deg closer to the wind than the best new course");
                step.put("after_s", 1.5);
            }
            plan.put("sheet_said", Texts.of("turnplan.sheet", "3 deg further out", 32.0, 35.0, 9.0, 3.3, 12.0));
            plan.putObject("abort")
                    .put("said", "Abort cue: " + Texts.of("turnplan.abort.worth", 10, 100, 5, 5, 90, 4, 2));
            plan.putObject("sailed").put("turns", 200).put("lost_m", 50).put("spoilt_ratio", 0.1);
        }
        return document;
    }

    @Test
    void everySideHoldsItsPlanWithinThePage() throws IOException {
        byte[] bytes = TurnCardPdf.bytes(document(), DAY);
        assertArrayEquals(bytes, TurnCardPdf.bytes(document(), DAY));
        try (PDDocument pdf = Loader.loadPDF(bytes)) {
            assertEquals(2, pdf.getNumberOfPages());
            float[] lowest = new float[1];
            PDFTextStripper stripper = new PDFTextStripper() {
                @Override
                protected void writeString(String text, List<TextPosition> positions) throws IOException {
                    lowest[0] = Math.max(lowest[0], positions.get(0).getYDirAdj());
                    super.writeString(text, positions);
                }
            };
            String text = stripper.getText(pdf).replaceAll("\\s+", " ");
            for (String said :
                    List.of("Last cue", "To grind back: 9 deg in 3.3 s", "Abort cue", "no plan is worth a limit")) {
                assertTrue(text.indexOf(said) != text.lastIndexOf(said), said + " on both sides of " + text);
            }
            assertTrue(lowest[0] < pdf.getPage(0).getMediaBox().getHeight() - 8, "lowest line at " + lowest[0]);
        }
    }
}
