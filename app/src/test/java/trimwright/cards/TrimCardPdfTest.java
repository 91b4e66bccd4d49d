package trimwright.cards;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.boatfile.BoatFiles;
import trimwright.units.Units;

/** The printed page itself: type, contrast, nothing outside or upon something else, the same bytes again. */
class TrimCardPdfTest {
    private static final BoatFile BOAT = BoatFiles.find("whimbrel14");
    private static final WingSpec WING = BOAT.boat().getWing("tall");
    private static final TrimCardRequest REQUEST = new TrimCardRequest(
            BOAT,
            WING,
            List.of(Units.fromKnots(8), Units.fromKnots(10), Units.fromKnots(12)),
            List.of(CardSide.UPWIND),
            LocalDate.of(2027, 3, 6));

    /** Figures as wide as any, a reason as long as any, as many notes as there are limits and doubts. */
    private static List<TrimCard.Side> fullSides() {
        List<TrimCard.Cell> cells = List.of(
                new TrimCard.Cell("46.0", "151\u00b0 TWA"),
                new TrimCard.Cell("38", "18 to 38"),
                new TrimCard.Cell("40", "-15 to 40"),
                new TrimCard.Cell("31", "15 to 31"),
                new TrimCard.Cell("12.0 kN", "1850 kN m"));
        List<TrimCard.Row> rows = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            rows.add(new TrimCard.Row("24", "foiling  abcdefgh", cells, null));
        }
        rows.add(new TrimCard.Row("26", "", List.of(), "on the hulls the wing stays stalled here, even fully eased"));
        List<String> notes = new ArrayList<>();
        for (char letter = 'a'; letter < 'k'; letter++) {
            notes.add(letter + "  holds once foiling, but the boat does not take off by itself here");
        }
        return List.of(new TrimCard.Side(
                "upwind",
                "upwind",
                List.of("wind kn", "speed kn", "camber", "twist", "sheet", "load, moment"),
                rows,
                notes,
                "Remark."));
    }

    @Test
    void theSameCardHasTheSameBytes() {
        assertArrayEquals(TrimCardPdf.bytes(REQUEST, fullSides()), TrimCardPdf.bytes(REQUEST, fullSides()));
    }

    @Test
    void typeIsLargeEmbeddedAndApart() throws IOException {
        try (PDDocument document = Loader.loadPDF(TrimCardPdf.bytes(REQUEST, fullSides()))) {
            PDPage page = document.getPage(0);
            float width = page.getMediaBox().getWidth();
            float height = page.getMediaBox().getHeight();
            // A5 across, in points.
            assertEquals(210 / 25.4 * 72, width, 0.5);
            assertEquals(148 / 25.4 * 72, height, 0.5);
            for (COSName name : page.getResources().getFontNames()) {
                assertTrue(page.getResources().getFont(name).isEmbedded(), name.getName());
            }
            Glyphs glyphs = new Glyphs();
            glyphs.getText(document);
            TreeMap<Float, List<TextPosition>> lines = new TreeMap<>();
            for (TextPosition glyph : glyphs.all) {
                float size = glyph.getFontSizeInPt();
                assertTrue(size >= 9, glyph + " at " + size + " points");
                boolean isFigure = glyph.getY() > 68
                        && Character.isDigit(glyph.getUnicode().charAt(0));
                boolean isInTable = glyph.getY() < 68 + 5 * 44;
                assertTrue(!isFigure || !isInTable || size >= 15, glyph + " at " + size + " points");
                assertTrue(glyph.getX() >= 19 && glyph.getX() + glyph.getWidth() <= width - 19, glyph.toString());
                assertTrue(glyph.getY() <= height - 6, glyph + " runs out of the page");
                lines.computeIfAbsent(glyph.getY(), y -> new ArrayList<>()).add(glyph);
            }
            lines.values().forEach(TrimCardPdfTest::assertApart);
        }
    }

    /** No glyph begins before the one left of it ends; kerning is not used. */
    private static void assertApart(List<TextPosition> line) {
        List<TextPosition> sorted = new ArrayList<>(line);
        sorted.sort(Comparator.comparing(TextPosition::getX));
        for (int i = 1; i < sorted.size(); i++) {
            TextPosition left = sorted.get(i - 1);
            assertTrue(
                    sorted.get(i).getX() >= left.getX() + left.getWidth() - 0.1f, left + " runs into " + sorted.get(i));
        }
    }

    /** Boat files are written by people: a long name, letters that the type does not have, a line break. */
    @Test
    void anyTitleIsPrintedInsideThePage(@TempDir Path folder) throws IOException {
        String title = "Whimbrel \u65e5 14\\n the second of her name, " + "long ".repeat(9);
        Path odd = folder.resolve("odd.toml");
        Files.writeString(
                odd,
                BoatFiles.shippedText("whimbrel14").replace("title = \"Whimbrel 14\"", "title = \"" + title + "\""));
        BoatFile file = BoatFiles.find(odd.toString());
        TrimCardRequest request =
                new TrimCardRequest(file, WING, REQUEST.winds(), REQUEST.sides(), LocalDate.of(2027, 3, 6));
        try (PDDocument document = Loader.loadPDF(TrimCardPdf.bytes(request, fullSides()))) {
            Glyphs glyphs = new Glyphs();
            String text = glyphs.getText(document);
            assertTrue(text.contains("Whimbrel ? 14"), text);
            for (TextPosition glyph : glyphs.all) {
                assertTrue(glyph.getX() + glyph.getWidth()
                        <= document.getPage(0).getMediaBox().getWidth() - 19);
            }
        }
    }

    @Test
    void itIsBlackOnWhiteAndNothingElse() throws IOException {
        try (PDDocument document = Loader.loadPDF(TrimCardPdf.bytes(REQUEST, fullSides()))) {
            BufferedImage image = new PDFRenderer(document).renderImageWithDPI(0, 150);
            int white = 0;
            int darkest = 255;
            for (int x = 0; x < image.getWidth(); x++) {
                for (int y = 0; y < image.getHeight(); y++) {
                    int rgb = image.getRGB(x, y);
                    int red = rgb >> 16 & 255;
                    assertTrue(red == (rgb >> 8 & 255) && red == (rgb & 255), "a colour at " + x + ", " + y);
                    white += red == 255 ? 1 : 0;
                    darkest = Math.min(darkest, red);
                }
            }
            // Contrast 21 to 1, the most there is (WCAG's ratio of black to white); paper shows through for the most
            // part.
            assertEquals(0, darkest);
            assertTrue(white > 0.6 * image.getWidth() * image.getHeight());
        }
    }

    private static final class Glyphs extends PDFTextStripper {
        private final List<TextPosition> all = new ArrayList<>();

        Glyphs() throws IOException {
            setSuppressDuplicateOverlappingText(false);
        }

        @Override
        protected void processTextPosition(TextPosition text) {
            if (!text.getUnicode().isBlank()) {
                all.add(text);
            }
            super.processTextPosition(text);
        }
    }
}
