package trimwright.cards;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;

/** Draws text and lines on a page, black on white, from its top left corner downward (points of 1/72 inch). */
final class PdfPage {
    /** Width of the stroke that makes type bold, over its size; chosen by eye. */
    private static final float BOLD = 0.035f;

    private final PDPageContentStream content;
    private final PDFont font;
    private final float height;

    PdfPage(PDPageContentStream content, PDFont font, float height) {
        this.content = content;
        this.font = font;
        this.height = height;
    }

    /** How heavy type is. */
    enum Weight {
        PLAIN,
        BOLD
    }

    /** Text whose baseline begins there; a letter that the type does not have becomes a question mark. */
    void text(String words, float x, float y, float size, Weight weight) throws IOException {
        String text = printable(words);
        content.beginText();
        content.setFont(font, size);
        content.setRenderingMode(weight == Weight.BOLD ? RenderingMode.FILL_STROKE : RenderingMode.FILL);
        content.setLineWidth(weight == Weight.BOLD ? BOLD * size : 0);
        content.newLineAtOffset(x, height - y);
        content.showText(text);
        content.endText();
    }

    /** Text whose middle stands there. */
    void centred(String text, float x, float y, float size, Weight weight) throws IOException {
        text(text, x - width(text, size) / 2, y, size, weight);
    }

    void line(float x1, float y1, float x2, float y2, float width) throws IOException {
        content.setLineWidth(width);
        content.moveTo(x1, height - y1);
        content.lineTo(x2, height - y2);
        content.stroke();
    }

    float width(String text, float size) throws IOException {
        return font.getStringWidth(printable(text)) / 1000 * size;
    }

    /** The size at which a text is no wider than that, at most the one wished and at least the least. */
    float sizeFor(String text, float most, float wished, float least) throws IOException {
        return Math.max(least, Math.min(wished, wished * most / width(text, wished)));
    }

    private String printable(String text) throws IOException {
        StringBuilder printable = new StringBuilder();
        for (int i = 0; i < text.length(); i = text.offsetByCodePoints(i, 1)) {
            String letter = new String(Character.toChars(text.codePointAt(i)));
            printable.append(Character.isISOControl(text.codePointAt(i)) ? " " : has(letter) ? letter : "?");
        }
        return printable.toString();
    }

    private boolean has(String letter) throws IOException {
        try {
            return font.encode(letter).length > 0;
        } catch (IllegalArgumentException e) {
            // The library's way to say that there is no such glyph.
            return false;
        }
    }

    /** The text in lines of at most that width, broken between words. */
    List<String> wrapped(String text, float most, float size) throws IOException {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.split(" ", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (width(longer, size) > most && !line.isEmpty()) {
                lines.add(line);
                line = word;
            } else {
                line = longer;
            }
        }
        lines.add(line);
        return lines;
    }
}
