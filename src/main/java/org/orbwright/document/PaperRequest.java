package org.orbwright.document;

import static java.util.Objects.requireNonNullElse;

import org.orbwright.quantity.Describe;
import org.orbwright.quantity.LengthUnit;

/**
 * The paper that a build is printed on.
 *
 * @param size the paper, or null for the one that goes with the design's unit
 * @param templates whether full-size templates follow, or null for yes
 */
@Describe("The paper that a build is printed on.")
public record PaperRequest(
        @Describe(
                value = "The paper; A4 for a design in mm and LETTER for one in inches if left out.",
                example = "\"A4\"",
                optional = true)
        PaperSize size,

        @Describe(
                value = "Whether full-size templates follow in the PDF; yes if left out.",
                example = "true",
                optional = true)
        Boolean templates) {

    /** The same with everything filled in. */
    public PaperRequest filled(LengthUnit unit) {
        PaperSize usual = unit == LengthUnit.MM ? PaperSize.A4 : PaperSize.LETTER;
        return new PaperRequest(requireNonNullElse(size, usual), requireNonNullElse(templates, true));
    }
}
