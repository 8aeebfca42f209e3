package org.orbwright.stock;

import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

/** One step of a cut list. */
@Describe("One step of a cut list, with the part that comes of it.")
public record CutStep(
        @Describe(value = "The board's number in the plan, from 1.", example = "1", min = 1, max = 1e9)
        int board,

        @Describe(value = "The board's name.", example = "\"long ash\"", optional = true)
        String name,

        @Describe(value = "The wood.", example = "\"white ash\"")
        String species,

        @Describe(value = "Number of the step on this board, from 1.", example = "1", min = 1, max = 1e9)
        int step,

        @Describe(value = "What is done.", example = "\"TAKE\"")
        CutOperation operation,

        @Describe(
                value = "Number of the section on this board, from 1 at the clear end; left out while the board is"
                        + " whole.",
                example = "1",
                optional = true,
                min = 1,
                max = 1e9)
        Integer section,

        @Describe(
                value = "Number of the lane in its section, from 1 at the jointed edge; left out before it is ripped.",
                example = "1",
                optional = true,
                min = 1,
                max = 1e9)
        Integer lane,

        @Describe(
                value = "What is set: the thickness to plane to, what is taken off an edge or an end, or the size to"
                        + " trim to. For a fence or a stop it is the distance from the blade. Left out where nothing"
                        + " is cut.",
                quantity = Quantity.LENGTH,
                example = "33.6",
                optional = true)
        Double setting,

        @Describe(
                value = "Where the part ends as it lay in the board, to check the setting with: from the clear end for"
                        + " crosscuts, from the jointed edge for rips, from the upper face for slices and for"
                        + " resawing.",
                quantity = Quantity.LENGTH,
                example = "0",
                optional = true)
        Double position,

        @Describe(value = "What comes of it.", example = "\"BOARD\"")
        CutPart part,

        @Describe(value = "Length of the part.", quantity = Quantity.LENGTH, example = "2300")
        double length,

        @Describe(value = "Width of the part.", quantity = Quantity.LENGTH, example = "160")
        double width,

        @Describe(value = "Thickness of the part.", quantity = Quantity.LENGTH, example = "38")
        double thickness,

        @Describe(
                value = "What to write on the part: \"band 2\" on a strip for the second band from the base, with its"
                        + " face kind before it where the design has several laminations. \"spare\" on a spare"
                        + " strip, \"keep\" on what is kept. Left out for what is cut further.",
                example = "\"band 4\"",
                optional = true)
        String label,

        @Describe(
                value = "What is left beyond the kerf of the length, the width or the thickness that is cut, for the"
                        + " next part; left out where nothing is left or the rest is waste.",
                quantity = Quantity.LENGTH,
                example = "1517.4",
                optional = true)
        Double left,

        @Describe(
                value = "The same where it is waste: no strip, and no piece of one, could be cut from it.",
                quantity = Quantity.LENGTH,
                example = "72.2",
                optional = true)
        Double waste,

        @Describe(
                value = "The lamination that the strip is for, from 1 as the document lists them; left out for what is"
                        + " no strip or a spare one.",
                example = "1",
                optional = true,
                min = 1,
                max = 6)
        Integer lamination,

        @Describe(
                value = "The band that the strip is for, from 1 at the base; left out like the lamination.",
                example = "4",
                optional = true,
                min = 1,
                max = 60)
        Integer band,

        @Describe(
                value = "Which piece of the strip it is, from 1; left out for a strip in one piece and for what is no"
                        + " strip.",
                example = "2",
                optional = true,
                min = 1,
                max = 4)
        Integer piece) {

    /** The same step with another label. */
    CutStep labelled(String other) {
        return new CutStep(
                board,
                name,
                species,
                step,
                operation,
                section,
                lane,
                setting,
                position,
                part,
                length,
                width,
                thickness,
                other,
                left,
                waste,
                lamination,
                band,
                piece);
    }
}
