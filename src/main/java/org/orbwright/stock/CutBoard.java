package org.orbwright.stock;

import java.util.List;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

/** One board and its cuts. */
@Describe(
        "One board and its cuts, in their order: it is surfaced, its ends are cut off, it is crosscut to sections, and"
                + " each section is ripped.")
public record CutBoard(
        @Describe(value = "The board's number in the plan, from 1.", example = "1", min = 1, max = 1e9)
        int number,

        @Describe(
                value = "The board, as the rack lists them, from 1; left out for one that is bought.",
                example = "1",
                optional = true,
                min = 1,
                max = 200)
        Integer board,

        @Describe(
                value = "The offer, as the request lists them, from 1; left out for one from the rack.",
                example = "1",
                optional = true,
                min = 1,
                max = 50)
        Integer offer,

        @Describe(value = "Its name.", example = "\"long ash\"", optional = true)
        String name,

        @Describe(value = "The wood.", example = "\"white ash\"")
        String species,

        @Describe(value = "Cost of it.", quantity = Quantity.MONEY, example = "31")
        double cost,

        @Describe(value = "Length on the rack.", quantity = Quantity.LENGTH, example = "2300")
        double length,

        @Describe(value = "Width on the rack.", quantity = Quantity.LENGTH, example = "160")
        double width,

        @Describe(value = "Thickness on the rack.", quantity = Quantity.LENGTH, example = "38")
        double thickness,

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
                value = "Thickness lost to flatten it, shimmed so that both ends share the twist.",
                quantity = Quantity.LENGTH,
                example = "2")
        double flatteningShimmed,

        @Describe(
                value = "Thickness lost to flatten it with three corners on the bed.",
                quantity = Quantity.LENGTH,
                example = "3")
        double flatteningUnshimmed,

        @Describe("The sections, from the end where the first cut is made. A length that is left over and kept is the"
                + " last of them.")
        List<Section> sections,

        @Describe(value = "Length that is waste beyond the last kerf.", quantity = Quantity.LENGTH, example = "72.2")
        double lengthWaste) {

    /** Copies the list of sections. */
    public CutBoard {
        sections = List.copyOf(sections);
    }

    /** A section of a board. */
    @Describe("A section of a board and its rips. One without lanes is kept whole: one more strip, or a piece of one,"
            + " could be cut from it.")
    public record Section(
            @Describe(
                    value = "Where it starts, from the clear end of the board.",
                    quantity = Quantity.LENGTH,
                    example = "0")
            double from,

            @Describe(value = "Where it ends.", quantity = Quantity.LENGTH, example = "720")
            double to,

            @Describe("Its lanes, from the jointed edge. A width that is left over and kept is the last of them.")
            List<LaneCut> lanes,

            @Describe(value = "Width that is waste beyond the last kerf.", quantity = Quantity.LENGTH, example = "2.3")
            double widthWaste) {

        /** Whether it is kept whole. */
        public boolean isKept() {
            return lanes.isEmpty();
        }
    }

    /** A lane of a section. */
    @Describe("A lane of a section: a part of its width, as thick as the board. One without strips is kept as it is.")
    public record LaneCut(
            @Describe(value = "Where it starts, from the jointed edge.", quantity = Quantity.LENGTH, example = "0")
            double from,

            @Describe(value = "Where it ends.", quantity = Quantity.LENGTH, example = "31.5")
            double to,

            @Describe(
                    value = "Whether it is a stick as wide as the strips are thick, turned on its side to slice the"
                            + " strips off the board's thickness.",
                    example = "true")
            boolean rotated,

            @Describe("Its strips, from the board's upper face downwards. A thickness that is left over and kept is the"
                    + " last of them.")
            List<StripCut> strips,

            @Describe(value = "Thickness that is waste below the last kerf.", quantity = Quantity.LENGTH, example = "0")
            double thicknessWaste) {

        /** Whether it is kept as it is. */
        public boolean isKept() {
            return strips.isEmpty();
        }
    }

    /** A strip in a lane. */
    @Describe("A strip in a lane, or what is kept of its thickness.")
    public record StripCut(
            @Describe(
                    value = "Where it starts below the board's upper face.",
                    quantity = Quantity.LENGTH,
                    example = "0")
            double from,

            @Describe(value = "Where it ends.", quantity = Quantity.LENGTH, example = "9.1425")
            double to,

            @Describe(value = "Its width as a strip.", quantity = Quantity.LENGTH, example = "9.1425")
            double width,

            @Describe(
                    value = "What it is: a STRIP that is needed, a SPARE one, or wood that is KEPT.",
                    example = "\"STRIP\"")
            CutPart part,

            @Describe(
                    value = "Which of the strips that are needed it is, from 1 in their list; left out for a spare"
                            + " strip and for what is kept.",
                    example = "2",
                    optional = true,
                    min = 1,
                    max = 1e9)
            Integer strip,

            @Describe(
                    value = "The lamination that it is for, from 1 as the document lists them; left out like the"
                            + " strip.",
                    example = "1",
                    optional = true,
                    min = 1,
                    max = 6)
            Integer lamination,

            @Describe(
                    value = "The band that it is for, from 1 at the base; left out like the strip.",
                    example = "4",
                    optional = true,
                    min = 1,
                    max = 60)
            Integer band,

            @Describe(
                    value = "Which piece of the strip it is, from 1; left out for a strip in one piece, and like the"
                            + " strip.",
                    example = "2",
                    optional = true,
                    min = 1,
                    max = 4)
            Integer piece) {}
}
