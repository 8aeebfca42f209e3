package org.orbwright.stock;

import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

/** What becomes of boards that are alike, of the rack or of an offer. */
@Describe("What becomes of boards that are alike, of the rack or of an offer.")
public record RackBoard(
        @Describe(
                value = "The board, as the rack lists them, from 1; left out for an offer.",
                example = "1",
                optional = true,
                min = 1,
                max = 200)
        Integer board,

        @Describe(
                value = "The offer, as the request lists them, from 1; left out for boards on the rack.",
                example = "1",
                optional = true,
                min = 1,
                max = 50)
        Integer offer,

        @Describe(value = "Their name.", example = "\"long ash\"", optional = true)
        String name,

        @Describe(value = "The wood.", example = "\"white ash\"")
        String species,

        @Describe(value = "What becomes of them.", example = "\"CUT\"")
        Use use,

        @Describe(value = "How many are cut.", example = "1", max = 1e9)
        int cut,

        @Describe(
                value = "How many stay on the rack, or are not bought of the most that may be.",
                example = "0",
                max = 1e9)
        int left,

        @Describe(value = "Length without its ends.", quantity = Quantity.LENGTH, example = "2240")
        double clearLength,

        @Describe(
                value = "Width once the first edge is jointed, without what the second edge loses.",
                quantity = Quantity.LENGTH,
                example = "156")
        double clearWidth,

        @Describe(value = "Thickness once flat and planed.", quantity = Quantity.LENGTH, example = "33.6")
        double surfacedThickness,

        @Describe(
                value = "Thickness lost to flatten one, shimmed so that both ends share the twist.",
                quantity = Quantity.LENGTH,
                example = "2")
        double flatteningShimmed,

        @Describe(
                value = "Thickness lost to flatten one with three corners on the bed.",
                quantity = Quantity.LENGTH,
                example = "3")
        double flatteningUnshimmed) {

    /** What becomes of boards. */
    @Describe("What becomes of boards: CUT, one at least; SPARE, strips could be cut from them, but the plan needs none"
            + " of them; TOO_SMALL, no strip and no piece of one is as small as they are once surfaced; NOT_NEEDED,"
            + " no band is of their wood.")
    public enum Use {
        CUT,
        SPARE,
        TOO_SMALL,
        NOT_NEEDED
    }
}
