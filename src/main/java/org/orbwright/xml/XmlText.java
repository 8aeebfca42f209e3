package org.orbwright.xml;

/** Texts of callers in XML documents. */
public final class XmlText {
    private static final int REPLACEMENT = 0xfffd;

    private XmlText() {}

    /** The text, with a mark in place of what no XML document may hold (XML 1.0, section 2.2). */
    public static String legal(String text) {
        return text.codePoints()
                .map(c -> c == '\t' || c == '\n' || (c >= ' ' && !isForbidden(c)) ? c : REPLACEMENT)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    private static boolean isForbidden(int c) {
        return (c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE) || c == 0xfffe || c == 0xffff;
    }
}
