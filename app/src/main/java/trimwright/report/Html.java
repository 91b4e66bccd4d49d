package trimwright.report;

import java.io.StringWriter;
import java.util.Locale;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Writes a page element by element, every text escaped; the library's writer of XML does the work. Not for two threads. */
final class Html {
    private static final String SVG = "http://www.w3.org/2000/svg";

    private final StringWriter text = new StringWriter();
    private final XMLStreamWriter writer;

    Html() {
        try {
            writer = XMLOutputFactory.newFactory().createXMLStreamWriter(text);
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
    }

    /** What is written inside an element. */
    interface Inside {
        void write();
    }

    /** An element around what is inside. */
    Html in(String name, Inside inside, String... attributes) {
        try {
            writer.writeStartElement(name);
            put(attributes);
            inside.write();
            // An end of its own, also where nothing is inside: to a browser <p/> is not closed.
            writer.writeCharacters("");
            writer.writeEndElement();
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
        return this;
    }

    /** An element with a text. */
    Html put(String name, String content, String... attributes) {
        return in(name, () -> say(content), attributes);
    }

    /** An element with nothing inside: a line break, a shape. */
    Html alone(String name, String... attributes) {
        try {
            writer.writeEmptyElement(name);
            put(attributes);
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
        return this;
    }

    /** A drawing that is so wide and high in its own units, with a name for those who do not see it. */
    Html draw(int width, int height, String name, Inside inside) {
        return in(
                "svg",
                inside,
                "xmlns",
                SVG,
                "viewBox",
                "0 0 " + width + " " + height,
                "role",
                "img",
                "aria-label",
                name);
    }

    void say(String content) {
        try {
            writer.writeCharacters(content);
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
    }

    private void put(String... attributes) throws XMLStreamException {
        for (int i = 0; i < attributes.length; i += 2) {
            writer.writeAttribute(attributes[i], attributes[i + 1]);
        }
    }

    /** A coordinate. */
    static String at(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }

    String page() {
        try {
            writer.flush();
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
        return "<!DOCTYPE html>\n" + text + "\n";
    }
}
