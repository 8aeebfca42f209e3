package org.orbwright.xml;

import java.io.Writer;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * Writes one XML document. Attributes are given as names and values in turn, and hold what XML may hold; texts may be
 * anybody's.
 */
public final class Xml {
    private final XMLStreamWriter xml;

    /**
     * Starts a document.
     *
     * @param text where it is written
     */
    public Xml(Writer text) {
        try {
            xml = XMLOutputFactory.newInstance().createXMLStreamWriter(text);
            xml.writeStartDocument("UTF-8", "1.0");
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
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
        return open(name, attributes).close(1);
    }

    /** An element with a text. */
    public Xml text(String name, String text, String... attributes) {
        open(name, attributes);
        try {
            xml.writeCharacters(XmlText.legal(text));
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
        return close(1);
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
