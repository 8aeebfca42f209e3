package org.orbwright.stock;

import java.util.List;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;
import org.orbwright.stock.StockRequest.AllowancesRequest;

/** How the boards are cut, whether they are enough, and what to buy. */
@Describe("How the boards are cut, whether they are enough, and what to buy.")
public record StockPlan(
        @Describe(value = "Whether the plan gives all strips that the design needs.", example = "true")
        boolean complete,

        AllowancesRequest allowances,

        @Describe("The outcome for each wood of the design.")
        List<SpeciesStock> species,

        @Describe("The strips that are needed, per kind of blank and band.")
        List<StripNeed> strips,

        @Describe("Which strips are glued side by side, so that their seams keep the clearance.")
        List<BlankLayers> layers,

        @Describe("Laminations that no strips are planned for, since the blank is too short for a segment; none if all"
                + " are planned.")
        List<UnplannedLamination> unplanned,

        @Describe("Why strips are missing, and what would help; none if none is missing.")
        List<Shortage> shortages,

        @Describe("The boards that are cut, those on the rack first.")
        List<CutBoard> boards,

        @Describe("What becomes of each kind of board, those on the rack first, then the offers.")
        List<RackBoard> rack,

        @Describe("What to buy, from the offers.") List<Purchase> purchases,

        @Describe("What is left of the wood at every stage, up to the last that the wood suffices for.")
        List<StageVolume> stages,

        @Describe(value = "Cost of all boards that are cut.", quantity = Quantity.MONEY, example = "61")
        double cost,

        @Describe(value = "Cost of all boards that are cut, for one sphere.", quantity = Quantity.MONEY, example = "61")
        double costPerSphere) {

    /** The outcome for one wood. */
    @Describe("The outcome for one wood.")
    public record SpeciesStock(
            @Describe(value = "The wood.", example = "\"white ash\"")
            String species,

            @Describe(value = "Strips needed.", example = "16", max = 1e9)
            int needed,

            @Describe(value = "Strips that the plan gives.", example = "16", max = 1e9)
            int supplied,

            @Describe(value = "Strips missing.", example = "0", max = 1e9)
            int missing,

            @Describe(
                    value = "Volume of the missing strips, as they leave the saw.",
                    quantity = Quantity.BOARD_FEET,
                    example = "0")
            double missingBoardFeet,

            @Describe(value = "Boards that are cut.", example = "1", max = 1e9)
            int boards,

            @Describe(
                    value = "Volume of these boards as they stand on the rack.",
                    quantity = Quantity.BOARD_FEET,
                    example = "5.9261")
            double boardFeet,

            @Describe(value = "Cost of these boards.", quantity = Quantity.MONEY, example = "31")
            double cost,

            @Describe(
                    value = "What the plan is to have least of: its cost in the currency of the prices, its wood in"
                            + " cubic decimetres, or its seams.",
                    quantity = Quantity.PLAIN,
                    example = "31")
            double value,

            @Describe(
                    value = "What no plan with as few missing strips has less of, whatever the lengths of its pieces.",
                    quantity = Quantity.PLAIN,
                    example = "31")
            double bound,

            @Describe(
                    value = "By what share of its value the plan might at most be bettered, with as few missing"
                            + " strips.",
                    quantity = Quantity.RATIO,
                    example = "0",
                    max = 1)
            double gap,

            @Describe(
                    value = "Fewer strips than this cannot be missing, whatever the lengths of the pieces.",
                    example = "0",
                    max = 1e9)
            int missingAtLeast,

            @Describe(value = "Whether it is proved that no plan has fewer missing strips.", example = "true")
            boolean fewestMissing,

            @Describe(
                    value = "Whether it is proved that no plan is better: in missing strips, then in what was asked"
                            + " for, then in each other aim.",
                    example = "true")
            boolean proved,

            @Describe(value = "What plans the proof is over.", example = "\"EVERY_PLAN\"")
            PlanProof proof,

            @Describe(
                    value = "Lengths of pieces that were tried beside that of a whole strip; 0 without seams.",
                    example = "0",
                    max = 1e9)
            int pieceLengths,

            @Describe(
                    value = "Whether the search was ended by the clock, so that another call may find another plan.",
                    example = "false")
            boolean endedByClock) {}

    /** What plans a proof is over. */
    @Describe("What plans a proof is over: EVERY_PLAN, whatever the lengths of the pieces; LISTED_LENGTHS, the plans"
            + " whose pieces have one of the lengths that were tried; NONE, the search ended before.")
    public enum PlanProof {
        EVERY_PLAN,
        LISTED_LENGTHS,
        NONE
    }

    /** The strips of one band in the blanks of one kind. */
    @Describe("The strips of one band in the blanks of one kind, as they leave the saw.")
    public record StripNeed(
            @Describe(value = "The lamination, as the design lists them, from 1.", example = "1", min = 1, max = 6)
            int lamination,

            @Describe(value = "The kind of segment sawn from the blanks.", example = "\"A\"")
            String segment,

            @Describe(value = "Whether it is the mirror image of the kind's outline.", example = "false")
            boolean mirrored,

            @Describe(value = "Whether the blanks are turned end for end before the first cut.", example = "false")
            boolean turned,

            @Describe(value = "The band, from 1 at the base.", example = "1", min = 1, max = 60)
            int band,

            @Describe(value = "The wood.", example = "\"white ash\"")
            String species,

            @Describe(value = "Width as it leaves the saw.", quantity = Quantity.LENGTH, example = "17.8")
            double width,

            @Describe(value = "Thickness as it leaves the saw.", quantity = Quantity.LENGTH, example = "31.5")
            double thickness,

            @Describe(value = "Length.", quantity = Quantity.LENGTH, example = "720")
            double length,

            @Describe(value = "Strips needed.", example = "8", max = 1e9)
            int needed,

            @Describe(value = "Strips missing.", example = "0", max = 1e9)
            int missing,

            @Describe("How the others are made up.") List<StripMakeUp> makeUps) {}

    /** Layers of blanks that are made up alike. */
    @Describe("Layers of blanks that are made up alike: which strips are glued side by side. A blank has one layer, or"
            + " as many as the panel.")
    public record BlankLayers(
            @Describe(value = "The lamination, as the design lists them, from 1.", example = "1", min = 1, max = 6)
            int lamination,

            @Describe(value = "The kind of segment sawn from the blanks.", example = "\"A\"")
            String segment,

            @Describe(value = "Whether it is the mirror image of the kind's outline.", example = "false")
            boolean mirrored,

            @Describe(value = "Whether the blanks are turned end for end before the first cut.", example = "false")
            boolean turned,

            @Describe(value = "How many layers, with those of spare strips.", example = "8", max = 1e9)
            int layers,

            @Describe(
                    value = "For each band from the base, which of its make-ups the strip is, from 1; 0 for one that"
                            + " is missing.",
                    example = "[1, 1, 1, 1]")
            List<Integer> makeUps) {}

    /** A lamination that no strips are planned for. */
    @Describe("A lamination that no strips are planned for, since the blank is too short for a segment.")
    public record UnplannedLamination(
            @Describe(value = "The lamination, as the design lists them, from 1.", example = "1", min = 1, max = 6)
            int lamination,

            @Describe(value = "The face kind.", example = "\"triangle\"")
            String face,

            @Describe(value = "Segments that are needed of it.", example = "60", max = 1e9)
            int segments) {}

    /** Strips that are made up alike. */
    @Describe("Strips that are made up alike, in one piece or of pieces joined end to end.")
    public record StripMakeUp(
            @Describe(value = "How many.", example = "8", max = 1e9)
            int strips,

            @Describe("The pieces, from the end of the blank where the first cut is made.")
            List<StripPiece> pieces,

            @Describe("The seams between them; none if the strip is in one piece.")
            List<Seam> seams) {}

    /** A piece of a strip. */
    @Describe("A piece of a strip.")
    public record StripPiece(
            @Describe(
                    value = "Length that it has at least, with the overlap of a scarf; it may be cut longer. It is"
                            + " trimmed to its seams when the strip is glued.",
                    quantity = Quantity.LENGTH,
                    example = "720")
            double length) {}

    /** A seam between two pieces of a strip. */
    @Describe("A seam between two pieces of a strip.")
    public record Seam(
            @Describe(
                    value = "Where its middle lies, from the end of the blank where the first cut is made.",
                    quantity = Quantity.LENGTH,
                    example = "410.8619")
            double at,

            @Describe(
                    value = "The cut between segments whose kerf its middle lies on, from 0 as in the cuts of the"
                            + " blank; left out if it lies within a segment.",
                    example = "9",
                    optional = true,
                    max = 1e9)
            Integer cut,

            @Describe(
                    value = "How far it reaches beyond that kerf into the segments at both sides, along the blank: the"
                            + " cut leans across the strip, which the seam does not, and a scarf is long. 0 if the"
                            + " saw takes all of the seam; left out if it lies within a segment.",
                    quantity = Quantity.LENGTH,
                    example = "19.4754",
                    optional = true)
            Double beyondKerf) {}

    /** Boards to buy. */
    @Describe("Boards to buy that are alike.")
    public record Purchase(
            @Describe(value = "The offer, as the request lists them, from 1.", example = "1", min = 1, max = 50)
            int offer,

            @Describe(value = "Its name.", example = "\"beech, 1500 by 115, 38 thick\"", optional = true)
            String name,

            @Describe(value = "The wood.", example = "\"american beech\"")
            String species,

            @Describe(value = "How many.", example = "1", max = 1e9)
            int count,

            @Describe(value = "Length.", quantity = Quantity.LENGTH, example = "1500")
            double length,

            @Describe(value = "Width.", quantity = Quantity.LENGTH, example = "115")
            double width,

            @Describe(value = "Thickness.", quantity = Quantity.LENGTH, example = "38")
            double thickness,

            @Describe(value = "Volume of all.", quantity = Quantity.BOARD_FEET, example = "2.7779")
            double boardFeet,

            @Describe(value = "Volume of all.", quantity = Quantity.CUBIC_METRES, example = "0.006555")
            double cubicMetres,

            @Describe(value = "Cost of all.", quantity = Quantity.MONEY, example = "18")
            double cost) {}

    /** Stages from the board to the sphere. */
    public enum Stage {
        /** The boards that are cut, as they stand on the rack. */
        BOARD,
        /** Jointed, flat, planed and without their ends. */
        SURFACED,
        /** The strips for the blanks as they leave the saw. */
        STRIP,
        /** The blanks, flattened. */
        BLANK,
        /** The segments that are needed. */
        SEGMENT,
        /** The bevelled panels. */
        PANEL,
        /** The finished, hollow spheres. */
        SPHERE
    }

    /** What is left of the wood at one stage. */
    @Describe("What is left of the wood at one stage.")
    public record StageVolume(
            @Describe(value = "The stage.", example = "\"BOARD\"")
            Stage stage,

            @Describe(value = "Volume of the wood.", quantity = Quantity.VOLUME, example = "26677000")
            double volume,

            @Describe(value = "Its share of the boards' volume.", quantity = Quantity.RATIO, example = "1", max = 1)
            double share) {}
}
