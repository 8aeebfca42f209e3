package org.orbwright.xml;

import java.io.Writer;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * Writes one XML document, or a page of HTML that is one. Attributes are given as names and values in turn, and hold
 * what XML may hold; texts may be anybody's.
 */
public final class Xml {
    /** By which a page of ours is known. */
    public static final String GENERATOR = "Orbwright";

    private static final String HTML_STYLE =
            "body { font: 16px/1.45 sans-serif; margin: 0 auto; max-width: 54em; padding: 1em; } .STOP { border: 4px"
                    + " solid; padding: 0.5em; } .WARN { border: 2px solid; padding: 0.5em; }";

    private final XMLStreamWriter xml;

    /** Something that is written. */
    private interface Part {
        void writeTo(XMLStreamWriter xml) throws XMLStreamException;
    }

    /** Starts a document. */
    public Xml(Writer text) {
        this(text, out -> out.writeStartDocument("UTF-8", "1.0"));
    }

    private Xml(Writer text, Part start) {
        try {
            this.xml = XMLOutputFactory.newInstance().createXMLStreamWriter(text);
            start.writeTo(xml);
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
    }

    private Xml put(Part part) {
        try {
            part.writeTo(xml);
            return this;
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Starts a page of HTML 5 that is well-formed XML too, up to the start of its head. */
    public static Xml html(Writer text) {
        return new Xml(text, out -> out.writeDTD("<!DOCTYPE html>\n"))
                .open("html", "xmlns", "http://www.w3.org/1999/xhtml", "lang", "en");
    }

    /** Starts a page in our own style, up to the start of its body. */
    public static Xml html(Writer text, String title) {
        return html(text)
                .open("head")
                .empty("meta", "charset", "UTF-8")
                .empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1")
                .empty("meta", "name", "generator", "content", GENERATOR)
                .text("title", title)
                .text("style", HTML_STYLE)
                .close(1)
                .open("body");
    }

    /** Starts elements inside each other; the attributes are the innermost one's. */
    public Xml open(String path, String... attributes) {
        for (String name : path.split(" ", -1)) {
            put(out -> out.writeStartElement(name));
        }
        return attributes(attributes);
    }

    /** More attributes of the element that was started last. */
    public Xml attributes(String... namesAndValues) {
        for (int i = 0; i < namesAndValues.length; i += 2) {
            String name = namesAndValues[i];
            String value = namesAndValues[i + 1];
            put(out -> out.writeAttribute(name, value));
        }
        return this;
    }

    /** Ends as many elements. */
    public Xml close(int elements) {
        for (int i = 0; i < elements; i++) {
            put(XMLStreamWriter::writeEndElement);
        }
        return this;
    }

    /** An element without content. */
    public Xml empty(String name, String... attributes) {
        return put(out -> out.writeEmptyElement(name)).attributes(attributes);
    }

    /** An element with a text. */
    public Xml text(String name, String text, String... attributes) {
        return open(name, attributes).words(text).close(1);
    }

    /** A text within the element that is open. */
    public Xml words(String text) {
        return put(out -> out.writeCharacters(XmlText.legal(text)));
    }

    /** Ends the document. */
    public void end() {
        put(XMLStreamWriter::writeEndDocument).put(XMLStreamWriter::flush);
    }
}
