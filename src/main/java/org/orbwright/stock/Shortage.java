package org.orbwright.stock;

import java.util.List;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;
import org.orbwright.stock.StockRequest.SeamRequest;

/** Why strips of a wood are missing, and what would help. */
@Describe("Why strips of a wood are missing, and what would help.")
public record Shortage(
        @Describe(value = "The wood.", example = "\"american beech\"")
        String species,

        @Describe(value = "Strips missing.", example = "1", max = 1e9)
        int missing,

        @Describe("What each kind of its boards lacks for the strips that are missing; at most 100 lines.")
        List<BoardFit> boards,

        @Describe("Small changes that would help, the one that helps most first. Each was planned anew, with little"
                + " search.")
        List<Remedy> remedies) {

    /** Copies the lists. */
    public Shortage {
        boards = List.copyOf(boards);
        remedies = List.copyOf(remedies);
    }

    /** What a kind of board lacks for a kind of strip. */
    @Describe("What a kind of board lacks for a kind of strip.")
    public record BoardFit(
            @Describe(
                    value = "The board, as the rack lists them, from 1; left out for an offer.",
                    example = "3",
                    optional = true,
                    min = 1,
                    max = 200)
            Integer board,

            @Describe(
                    value = "The offer, as the request lists them, from 1; left out for a board on the rack.",
                    example = "1",
                    optional = true,
                    min = 1,
                    max = 50)
            Integer offer,

            @Describe(value = "Width of the strip as it leaves the saw.", quantity = Quantity.LENGTH, example = "9.8")
            double stripWidth,

            @Describe(value = "What it lacks.", example = "\"NOTHING\"")
            BoardLack fit,

            @Describe(
                    value = "By how much it is too short, too narrow or too thin; 0 if it lacks nothing.",
                    quantity = Quantity.LENGTH,
                    example = "0")
            double by,

            @Describe(
                    value = "The widest band that a strip from such a board can have, lying flat or on edge; 0 for"
                            + " none.",
                    quantity = Quantity.LENGTH,
                    example = "85.2")
            double widestBand) {}

    /** What a board lacks. */
    @Describe("What a board lacks for a strip: NOTHING, it serves, and all of it is used or too little of it is left;"
            + " TOO_SHORT for the shortest piece; TOO_THIN, lying flat and on edge; TOO_NARROW.")
    public enum BoardLack {
        NOTHING,
        TOO_SHORT,
        TOO_THIN,
        TOO_NARROW
    }

    /** A small change that would help. */
    @Describe("A small change that would help.")
    public record Remedy(
            @Describe(value = "What is changed.", example = "\"ONE_MORE_BOARD\"")
            RemedyKind change,

            @Describe(
                    value = "Strips of the wood that are then missing; left out where the change was not planned.",
                    example = "0",
                    optional = true,
                    max = 1e9)
            Integer missing,

            @Describe(value = "For SEAMS: the seams that were allowed, as the section has them.", optional = true)
            SeamRequest seams,

            @Describe(
                    value = "For ONE_MORE_BOARD: which board of the rack there is one more of, from 1.",
                    example = "3",
                    optional = true,
                    min = 1,
                    max = 200)
            Integer board,

            @Describe(
                    value = "For ONE_MORE_BOARD: which offer there is one more of, from 1.",
                    example = "1",
                    optional = true,
                    min = 1,
                    max = 50)
            Integer offer,

            @Describe(
                    value = "For BLANK_LENGTH: the length of the blanks. For NARROWER_BAND: the widest band that any"
                            + " of the boards gives.",
                    quantity = Quantity.LENGTH,
                    example = "612.4",
                    optional = true)
            Double length,

            @Describe(
                    value = "For LAYERS: layers that a panel is glued up of, face to face.",
                    example = "2",
                    optional = true,
                    min = 2,
                    max = 10)
            Integer layers) {}

    /** What may be changed. */
    @Describe("What may be changed: SEAMS, strips of pieces, or with one seam more; ONE_MORE_BOARD of a size that there"
            + " is; BLANK_LENGTH, other blanks; LAYERS, panels glued up of layers face to face; NARROWER_BAND, a"
            + " band that the boards are thick enough for.")
    public enum RemedyKind {
        SEAMS,
        ONE_MORE_BOARD,
        BLANK_LENGTH,
        LAYERS,
        NARROWER_BAND
    }
}
