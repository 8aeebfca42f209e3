package org.orbwright.design;

/** The parts of a design that may be left out, though some numbers cannot do without them. */
public enum DesignPart {
    /** How thick the panels are. */
    THICKNESS("/panel/thickness", "a thickness of the panels"),
    /** The bands of the segments. */
    LAMINATIONS("/laminations", "a lamination for each face kind"),
    /** What the saw takes away. */
    KERF("/saw/kerf", "the width of the saw cut"),
    /** How long a blank is. */
    BLANK_LENGTH("/blank/length", "a length of the blanks");

    private final String pointer;
    private final String allowed;

    DesignPart(String pointer, String allowed) {
        this.pointer = pointer;
        this.allowed = allowed;
    }

    /** JSON pointer (RFC 6901) to the part in a document. */
    public String pointer() {
        return pointer;
    }

    /** That the part is missing, and what waits for it. */
    Violation missing(String what) {
        return Violation.missing(pointer, pointer.substring(1).replace('/', '.'), what, allowed);
    }
}
