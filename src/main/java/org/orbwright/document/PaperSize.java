package org.orbwright.document;

import org.orbwright.quantity.Describe;

/** The paper that a sheet is printed on. */
@Describe("The paper: A4 (ISO 216) or LETTER, 8.5 by 11 in. A4 for a design in mm and LETTER for one in inches if left"
        + " out.")
public enum PaperSize {
    /** 210 by 297 mm (ISO 216:2007, from memory). */
    A4(210, 297),
    /** 8.5 by 11 in (ANSI/ASME Y14.1, size A, from memory). */
    LETTER(215.9, 279.4);

    private final double width;
    private final double height;

    PaperSize(double width, double height) {
        this.width = width;
        this.height = height;
    }

    /** Width upright, in millimetres. */
    public double width() {
        return width;
    }

    /** Height upright, in millimetres. */
    public double height() {
        return height;
    }
}
