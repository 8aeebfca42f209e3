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
            "body { font: 16px/1.45 sans-serif; margin: 0 auto; max-width: 54em; padding: 1em; }"
                    + " .STOP { border: 4px solid; padding: 0.5em; } .WARN { border: 2px solid; padding: 0.5em; }";

    private final XMLStreamWriter xml;

    /**
     * Starts a document.
     *
     * @param text where it is written
     */
    public Xml(Writer text) {
        this(writer(text));
        try {
            xml.writeStartDocument("UTF-8", "1.0");
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
    }

    private Xml(XMLStreamWriter xml) {
        this.xml = xml;
    }

    private static XMLStreamWriter writer(Writer text) {
        try {
            return XMLOutputFactory.newInstance().createXMLStreamWriter(text);
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
    }

    /**
     * Starts a page of HTML 5 that is well-formed XML too, up to the start of its body.
     *
     * @param text where it is written
     * @param title what it is called
     */
    public static Xml html(Writer text, String title) {
        Xml page = new Xml(writer(text));
        try {
            page.xml.writeDTD("<!DOCTYPE html>\n");
            page.xml.writeStartElement("html");
            page.xml.writeDefaultNamespace("http://www.w3.org/1999/xhtml");
            page.xml.writeAttribute("lang", "en");
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
        return page.open("head")
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
        try {
            for (String name : path.split(" ", -1)) {
                xml.writeStartElement(name);
            }
            for (int i = 0; i < attributes.length; i += 2) {
                xml.writeAttribute(attributes[i], attributes[i + 1]);
            }
            return this;
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Ends as many elements. */
    public Xml close(int elements) {
        try {
            for (int i = 0; i < elements; i++) {
                xml.writeEndElement();
            }
            return this;
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
    }

    /** An element without content. */
    public Xml empty(String name, String... attributes) {
        try {
            xml.writeEmptyElement(name);
            for (int i = 0; i < attributes.length; i += 2) {
                xml.writeAttribute(attributes[i], attributes[i + 1]);
            }
            return this;
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
    }

    /** An element with a text. */
    public Xml text(String name, String text, String... attributes) {
        return open(name, attributes).words(text).close(1);
    }

    /** A text within the element that is open. */
    public Xml words(String text) {
        try {
            xml.writeCharacters(XmlText.legal(text));
            return this;
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Ends the document. */
    public void end() {
        try {
            xml.writeEndDocument();
            xml.flush();
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
    }
}
