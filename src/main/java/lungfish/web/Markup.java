package lungfish.web;

import java.io.StringWriter;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * Writes the elements of a page. All text goes through a writer that escapes it, so that no name can become markup;
 * characters that XML has no place for are shown as the sign for an unknown one. What is written is HTML and XML at once.
 */
final class Markup {
    private static final String UNKNOWN = "\uFFFD";

    private final StringWriter text = new StringWriter();
    private final XMLStreamWriter out;

    Markup() {
        try {
            out = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e); // a string writer has no I/O
        }
    }

    /** What an element holds. */
    @FunctionalInterface
    interface Inside {
        void write();
    }

    private interface Writing {
        void write() throws XMLStreamException;
    }

    private static void told(Writing writing) {
        try {
            writing.write();
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e); // as above
        }
    }

    /**
     * An element with its attributes.
     *
     * @param attributes names and values in turn
     */
    Markup element(String name, Inside inside, String... attributes) {
        told(() -> out.writeStartElement(name));
        attributes(attributes);
        inside.write();
        told(() -> {
            out.writeCharacters(""); // <td/> would be read as the start of one
            out.writeEndElement();
        });
        return this;
    }

    /** An element that holds a text. */
    Markup text(String name, String words, String... attributes) {
        return element(name, () -> words(words), attributes);
    }

    /** An element that can hold nothing. */
    Markup empty(String name, String... attributes) {
        told(() -> out.writeEmptyElement(name));
        attributes(attributes);
        return this;
    }

    void words(String words) {
        told(() -> out.writeCharacters(clean(words)));
    }

    void line() {
        told(() -> out.writeCharacters("\n"));
    }

    private void attributes(String... attributes) {
        for (int i = 0; i < attributes.length; i += 2) {
            String name = attributes[i];
            String value = clean(attributes[i + 1]);
            told(() -> out.writeAttribute(name, value));
        }
    }

    private static String clean(String words) {
        StringBuilder clean = new StringBuilder(words.length());
        words.codePoints().forEach(c -> clean.append(isAllowed(c) ? Character.toString(c) : UNKNOWN));
        return clean.toString();
    }

    /** Extensible Markup Language (XML) 1.0, production 2, "Char", without the controls that HTML forbids too. */
    private static boolean isAllowed(int c) {
        boolean isBreak = c == '\t' || c == '\n' || c == '\r';
        boolean isControl = c < 0x20 || (c >= 0x7F && c < 0xA0);
        boolean isSurrogate = c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE;
        return isBreak || (!isControl && !isSurrogate && c != 0xFFFE && c != 0xFFFF);
    }

    /** What was written so far. */
    String text() {
        told(out::flush);
        return text.toString();
    }
}
