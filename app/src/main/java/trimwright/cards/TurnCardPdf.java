package trimwright.cards;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import trimwright.cards.PdfPage.Weight;
import trimwright.text.Texts;
import trimwright.text.Version;

/** The plans of a turn ({@code turn-plan/1}) as PDF: A5 across, a side each; cues and moves to be read at arm's length. Sizes are chosen. */
public final class TurnCardPdf {
    private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    private static final float WIDTH = PDRectangle.A5.getHeight();
    private static final float HEIGHT = PDRectangle.A5.getWidth();
    private static final float MARGIN = 20;
    private static final float TITLE = 15;
    private static final float SMALL = 9;
    private static final float SMALL_LINE = 11;
    private static final float TOP = 54;
    /** Sizes of cues and moves, the largest that leaves room is taken. */
    private static final float[] ROWS = {13, 12, 11, 10, 9};

    private static final float LINE = 1.15f;
    private static final float BETWEEN = 4;
    private static final float BOTTOM = 12;
    private static final float AFTER = 44;
    private static final float CUE = 216;
    private static final float THIN = 0.6f;

    private TurnCardPdf() {}

    /** The file's bytes: the same for the same document and date. */
    public static byte[] bytes(JsonNode document, LocalDate date) {
        try (PDDocument pdf = new PDDocument();
                InputStream type = PDDocument.class.getResourceAsStream(FONT)) {
            if (type == null) {
                throw new IllegalStateException("the library has no font " + FONT);
            }
            PDFont font = PDType0Font.load(pdf, type, true);
            // Else the library puts the time of day into the file.
            pdf.setDocumentId(date.toEpochDay());
            pdf.getDocumentInformation().setTitle(title(document));
            pdf.getDocumentInformation().setCreator("Trimwright " + Version.get());
            pdf.getDocumentInformation().setCreationDate(GregorianCalendar.from(date.atStartOfDay(ZoneOffset.UTC)));
            for (String form : List.of("full", "safe")) {
                PDPage page = new PDPage(new PDRectangle(WIDTH, HEIGHT));
                pdf.addPage(page);
                try (PDPageContentStream content = new PDPageContentStream(pdf, page)) {
                    draw(new PdfPage(content, font, HEIGHT), document, form, date);
                }
            }
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            pdf.save(bytes);
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException("a card in memory could not be written", e);
        }
    }

    private static String title(JsonNode document) {
        return Texts.of(
                "turnplan.title",
                document.path("boat").asText(),
                document.path("wing").asText(),
                Texts.of("turnplan.kind." + document.path("kind").asText()),
                Texts.of("turnplan.begin." + document.path("begin").asText()),
                document.path("tws_kn").asDouble(),
                100 * document.path("turbulence_ratio").asDouble());
    }

    private static void draw(PdfPage page, JsonNode document, String form, LocalDate date) throws IOException {
        JsonNode plan = document.path(form);
        String day = date.toString();
        float room = WIDTH - 3 * MARGIN - page.width(day, SMALL);
        page.text(title(document), MARGIN, 30, page.sizeFor(title(document), room, TITLE, SMALL), Weight.BOLD);
        page.text(day, WIDTH - MARGIN - page.width(day, SMALL), 30, SMALL, Weight.PLAIN);
        String what = form.equals("safe") ? document.path("safe_said").asText() : Texts.of("turnplan.full");
        float y = small(page, what, TOP - SMALL);
        List<String> foot = foot(page, document, plan);
        float size = size(page, plan.path("cues"), HEIGHT - BOTTOM - y - foot.size() * SMALL_LINE);
        for (JsonNode step : plan.path("cues")) {
            page.line(MARGIN, y, WIDTH - MARGIN, y, THIN);
            y = row(page, step, y, size);
        }
        page.line(MARGIN, y, WIDTH - MARGIN, y, THIN);
        for (String line : foot) {
            y += SMALL_LINE;
            page.text(line, MARGIN, y, SMALL, Weight.PLAIN);
        }
    }

    private static List<String> foot(PdfPage page, JsonNode document, JsonNode plan) throws IOException {
        JsonNode sailed = plan.path("sailed");
        List<String> lines = new ArrayList<>();
        for (String said : List.of(
                plan.path("sheet_said").asText(),
                plan.path("abort").path("said").asText(),
                Texts.of(
                        "turnplan.card_sailed",
                        sailed.path("turns").asInt(),
                        sailed.path("lost_m").asDouble(),
                        sailed.path("lost_low_m").asDouble(),
                        sailed.path("lost_high_m").asDouble(),
                        document.path("naive").path("lost_m").asDouble(),
                        100 * sailed.path("spoilt_ratio").asDouble()),
                document.path("caution").asText())) {
            lines.addAll(page.wrapped(said, WIDTH - 2 * MARGIN, SMALL));
        }
        return lines;
    }

    private static float size(PdfPage page, JsonNode cues, float room) throws IOException {
        for (float size : ROWS) {
            float height = 0;
            for (JsonNode step : cues) {
                height += Math.max(
                                        cue(page, step, size).size(),
                                        move(page, step, size).size())
                                * size
                                * LINE
                        + BETWEEN;
            }
            if (height <= room) {
                return size;
            }
        }
        return ROWS[ROWS.length - 1];
    }

    private static List<String> cue(PdfPage page, JsonNode step, float size) throws IOException {
        return page.wrapped(step.path("cue").asText(), CUE - AFTER - MARGIN / 2, size);
    }

    private static List<String> move(PdfPage page, JsonNode step, float size) throws IOException {
        return page.wrapped(step.path("move").asText(), WIDTH - 2 * MARGIN - CUE, size);
    }

    private static float row(PdfPage page, JsonNode step, float top, float size) throws IOException {
        JsonNode after = step.path("after_s");
        String seconds = after.isNumber() ? String.format(Locale.ROOT, "%.1f", after.asDouble()) : "-";
        page.text(seconds, MARGIN, top + size * LINE, size, Weight.PLAIN);
        float cue = lines(page, cue(page, step, size), MARGIN + AFTER, top, size, Weight.BOLD);
        float move = lines(page, move(page, step, size), MARGIN + CUE, top, size, Weight.PLAIN);
        return Math.max(cue, move) + BETWEEN;
    }

    private static float lines(PdfPage page, List<String> lines, float x, float top, float size, Weight weight)
            throws IOException {
        float y = top;
        for (String line : lines) {
            y += size * LINE;
            page.text(line, x, y, size, weight);
        }
        return y;
    }

    private static float small(PdfPage page, String text, float top) throws IOException {
        float y = top;
        for (String line : page.wrapped(text, WIDTH - 2 * MARGIN, SMALL)) {
            page.text(line, MARGIN, y, SMALL, Weight.PLAIN);
            y += SMALL_LINE;
        }
        return y;
    }
}
