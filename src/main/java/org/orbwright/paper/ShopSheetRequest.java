package org.orbwright.paper;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import org.orbwright.design.DesignRequest;
import org.orbwright.quantity.Describe;

/**
 * A design, and the paper that its sheet is printed on.
 *
 * @param design the design
 * @param paper the paper, or null for the one that goes with the design's unit
 * @param templates whether full-size templates follow, or null for yes
 */
@Describe("A design, and the paper that its sheet is printed on.")
public record ShopSheetRequest(
        @NotNull @Valid DesignRequest design,

        @Describe(
                value = "The paper; A4 for a design in mm and LETTER for one in inches if left out.",
                example = "\"A4\"",
                optional = true)
        PaperSize paper,

        @Describe(
                value = "Whether full-size templates follow in the PDF; yes if left out.",
                example = "true",
                optional = true)
        Boolean templates) {}
