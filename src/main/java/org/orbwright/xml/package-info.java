/**
 * XML documents, the texts that they may hold, and archives of them: what every file format that is made of XML needs.
 * Start with {@link org.orbwright.xml.Xml} and {@link org.orbwright.xml.Archive}.
 */
package org.orbwright.xml;
