package org.orbwright.document;

import static java.util.Objects.requireNonNullElse;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.orbwright.design.Copies;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.LengthUnit;

@Describe("The paper that a build is printed on.")
public record PaperRequest(
        @Describe(
                value = "The paper; A4 for a design in mm and LETTER for one in inches if left out.",
                example = "\"A4\"",
                optional = true)
        PaperSize size,

        @Describe(
                value = "The parts that are printed, in whatever order; all if left out. Title and findings are always"
                        + " printed. The HTML has no templates.",
                example = "[\"SUMMARY\",\"SEGMENTS\",\"BEVELS\",\"TEMPLATES\"]",
                optional = true)
        @Size(min = 1, max = 16)
        List<@NotNull PaperPart> parts) {

    public PaperRequest {
        parts = Copies.of(parts);
    }

    /** The same with everything filled in. */
    public PaperRequest filled(LengthUnit unit) {
        PaperSize usual = unit == LengthUnit.MM ? PaperSize.A4 : PaperSize.LETTER;
        return new PaperRequest(
                requireNonNullElse(size, usual), requireNonNullElse(parts, List.of(PaperPart.values())));
    }
}
