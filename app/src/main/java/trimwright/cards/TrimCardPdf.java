package trimwright.cards;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.GregorianCalendar;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import trimwright.cards.PdfPage.Weight;
import trimwright.text.Texts;
import trimwright.text.Version;

/**
 * The trim card as PDF: A5 across, a page a side, black on white, type embedded. Sizes are chosen to be read at arm's length:
 * figures 24 points (digits 6 mm high), bands 15, nothing under 9.
 */
public final class TrimCardPdf {
    /** An open font that comes with the library that writes the file. */
    private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    private static final float WIDTH = PDRectangle.A5.getHeight();
    private static final float HEIGHT = PDRectangle.A5.getWidth();

    private static final float MARGIN = 20;
    private static final float FIRST_COLUMN = 92;
    private static final float TABLE_TOP = 68;
    private static final float ROW = 51;
    private static final float LOW_ROW = 44;
    private static final float TITLE = 19;
    private static final float HEAD = 12;
    private static final float FIGURE = 24;
    private static final float BAND = 15;
    private static final float SMALL = 9;
    private static final float SMALL_LINE = 10.6f;
    private static final float BOTTOM = 14;
    private static final float GAP = 6;
    private static final float THICK = 1.6f;
    private static final float THIN = 0.6f;

    private final TrimCardRequest request;

    private TrimCardPdf(TrimCardRequest request) {
        this.request = request;
    }

    /** The file's bytes: the same for the same request and sides. */
    public static byte[] bytes(TrimCardRequest request, List<TrimCard.Side> sides) {
        try {
            return new TrimCardPdf(request).write(sides);
        } catch (IOException e) {
            throw new UncheckedIOException("a card in memory could not be written", e);
        }
    }

    private byte[] write(List<TrimCard.Side> sides) throws IOException {
        try (PDDocument document = new PDDocument();
                InputStream type = PDDocument.class.getResourceAsStream(FONT)) {
            if (type == null) {
                throw new IllegalStateException("the library has no font " + FONT);
            }
            PDFont font = PDType0Font.load(document, type, true);
            // Else the library puts the time of day into the file.
            document.setDocumentId(request.date().toEpochDay());
            describe(document);
            for (TrimCard.Side side : sides) {
                PDPage page = new PDPage(new PDRectangle(WIDTH, HEIGHT));
                document.addPage(page);
                try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                    draw(new PdfPage(content, font, HEIGHT), side);
                }
            }
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            return bytes.toByteArray();
        }
    }

    private void describe(PDDocument document) {
        PDDocumentInformation information = document.getDocumentInformation();
        information.setTitle(Texts.of(
                "card.document_title",
                request.file().boat().title(),
                request.wing().id()));
        information.setCreator("Trimwright " + Version.get());
        information.setCreationDate(midnight(request.date()));
    }

    private static GregorianCalendar midnight(LocalDate date) {
        return GregorianCalendar.from(date.atStartOfDay(ZoneOffset.UTC));
    }

    private void draw(PdfPage page, TrimCard.Side side) throws IOException {
        String date = request.date().toString();
        float room = WIDTH - 2 * MARGIN - page.width(date, HEAD) - HEAD;
        String title = TrimCardDocument.title(request, side);
        page.text(title, MARGIN, 36, page.sizeFor(title, room, TITLE, SMALL), Weight.BOLD);
        page.text(date, WIDTH - MARGIN - page.width(date, HEAD), 36, HEAD, Weight.PLAIN);
        head(page, side);
        List<String> foot = foot(page, side);
        float height = rowHeight(side.rows().size(), foot.size());
        float y = TABLE_TOP;
        page.line(MARGIN, y, WIDTH - MARGIN, y, THICK);
        for (TrimCard.Row one : side.rows()) {
            draw(page, one, y, height, side.head().size() - 1);
            y += height;
            page.line(MARGIN, y, WIDTH - MARGIN, y, THIN);
        }
        for (String line : foot) {
            y += SMALL_LINE;
            page.text(line, MARGIN, y, SMALL, Weight.PLAIN);
        }
    }

    private static void head(PdfPage page, TrimCard.Side side) throws IOException {
        List<String> columns = side.head();
        page.text(columns.get(0), MARGIN, TABLE_TOP - 6, HEAD, Weight.PLAIN);
        for (int i = 1; i < columns.size(); i++) {
            page.centred(columns.get(i), middle(i - 1, columns.size() - 1), TABLE_TOP - 6, HEAD, Weight.PLAIN);
        }
    }

    private static void draw(PdfPage page, TrimCard.Row row, float top, float height, int columns) throws IOException {
        float figure = top + height - 27;
        float band = top + height - 8;
        page.text(row.wind(), MARGIN, figure, FIGURE, Weight.BOLD);
        page.text(row.how(), MARGIN, band, HEAD, Weight.PLAIN);
        if (row.reason() != null) {
            page.text(row.reason(), MARGIN + FIRST_COLUMN, figure, BAND, Weight.PLAIN);
        }
        for (int i = 0; i < row.cells().size(); i++) {
            TrimCard.Cell cell = row.cells().get(i);
            float size = page.sizeFor(cell.main(), columnWidth(columns) - GAP, FIGURE, BAND);
            page.centred(cell.main(), middle(i, columns), figure, size, Weight.BOLD);
            float small = page.sizeFor(cell.below(), columnWidth(columns) - GAP, BAND, SMALL);
            page.centred(cell.below(), middle(i, columns), band, small, Weight.PLAIN);
        }
    }

    /** Rows give way to many notes, as far as their own type allows. */
    private static float rowHeight(int rows, int lines) {
        float room = HEIGHT - BOTTOM - TABLE_TOP - lines * SMALL_LINE;
        return Math.max(LOW_ROW, Math.min(ROW, room / rows));
    }

    private static float columnWidth(int columns) {
        return (WIDTH - 2 * MARGIN - FIRST_COLUMN) / columns;
    }

    private static float middle(int column, int columns) {
        return MARGIN + FIRST_COLUMN + (column + 0.5f) * columnWidth(columns);
    }

    private List<String> foot(PdfPage page, TrimCard.Side side) throws IOException {
        List<String> lines = new ArrayList<>();
        List<String> paragraphs = new ArrayList<>();
        if (!side.notes().isEmpty()) {
            paragraphs.add(String.join(";   ", side.notes()) + ".");
        }
        paragraphs.add(String.join(" ", side.remark(), Texts.of("card.caution"), TrimCardDocument.origin(request)));
        for (String paragraph : paragraphs) {
            lines.addAll(page.wrapped(paragraph, WIDTH - 2 * MARGIN, SMALL));
        }
        return lines;
    }
}
