package org.orbwright.stock;

import static java.util.Objects.requireNonNullElse;

import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

/** The boards at hand and what may be bought; what is left out is null. */
@Describe("The boards at hand and what may be bought.")
public record StockRequest(
        @Describe(
                value = "The boards on the rack; boards that are alike stand here once, with their count. None if left"
                        + " out: then all wood is bought.",
                optional = true)
        @Size(max = 200)
        List<@NotNull @Valid BoardRequest> boards,

        @Describe(value = "Stock sizes that can be bought; none if left out.", optional = true) @Size(max = 50)
        List<@NotNull @Valid OfferRequest> offers,

        @Describe(value = "What is lost on the way from a board to a blank; nothing if left out.", optional = true)
        @Valid
        AllowancesRequest allowances,

        @Describe(value = "How strips may be made up of pieces; strips are in one piece if left out.", optional = true)
        @Valid
        SeamRequest seams,

        @Describe(
                value = "What the best plan has least of: the COST of the boards that are cut, their wood, which"
                        + " leaves least WASTE, or the SEAMS in the strips; between equal plans the others decide,"
                        + " in this order. COST if left out.",
                example = "\"COST\"",
                optional = true)
        StockAim aim,

        @Describe(value = "When a search ends that has not come to an end.", optional = true) @Valid
        SearchRequest search) {

    /** Copies the lists. */
    public StockRequest {
        boards = copy(boards);
        offers = copy(offers);
    }

    /** The same with everything filled in; kerf is the saw's, in the document's unit. */
    public StockRequest filled(double kerf) {
        return new StockRequest(
                requireNonNullElse(boards, List.<BoardRequest>of()).stream()
                        .map(BoardRequest::filled)
                        .toList(),
                requireNonNullElse(offers, List.<OfferRequest>of()).stream()
                        .map(OfferRequest::filled)
                        .toList(),
                requireNonNullElse(allowances, new AllowancesRequest(null, null, null, null, null, null, null))
                        .filled(kerf),
                seams == null ? null : seams.filled(),
                requireNonNullElse(aim, StockAim.COST),
                requireNonNullElse(search, new SearchRequest(null, null)).filled());
    }

    /** The same with other seams. */
    StockRequest withSeams(SeamRequest other) {
        return new StockRequest(boards, offers, allowances, other, aim, search);
    }

    /** The same with other offers. */
    StockRequest withOffers(List<OfferRequest> others) {
        return new StockRequest(boards, others, allowances, seams, aim, search);
    }

    /** The same with another aim. */
    StockRequest withAim(StockAim other) {
        return new StockRequest(boards, offers, allowances, seams, other, search);
    }

    /** The same with one more of a board, or where that is negative, of an offer. */
    StockRequest withOneMore(int board, int offer) {
        List<BoardRequest> more = new ArrayList<>(boards);
        List<OfferRequest> moreOffers = new ArrayList<>(offers);
        if (board >= 0) {
            more.set(board, more.get(board).oneMore());
        } else {
            moreOffers.set(
                    offer, moreOffers.get(offer).withMost(moreOffers.get(offer).most() + 1));
        }
        return new StockRequest(more, moreOffers, allowances, seams, aim, search);
    }

    private static <T> List<T> copy(List<T> list) {
        return list == null ? null : Collections.unmodifiableList(new ArrayList<>(list));
    }

    /** What is lost on the way from a board to a blank. */
    @Describe("What is lost on the way from a board to a blank; what is left out is 0.")
    public record AllowancesRequest(
            @Describe(
                    value = "Width lost to joint the first edge of a board.",
                    quantity = Quantity.LENGTH,
                    usual = {0.2, 25},
                    example = "3",
                    optional = true)
            @DecimalMin("0")
            @DecimalMax("200")
            Double jointing,

            @Describe(
                    value = "Width lost to clean the second edge of a board.",
                    quantity = Quantity.LENGTH,
                    usual = {0.2, 25},
                    example = "3",
                    optional = true)
            @DecimalMin("0")
            @DecimalMax("200")
            Double edgeCleaning,

            @Describe(
                    value = "Thickness lost to plane one face of a rough board.",
                    quantity = Quantity.LENGTH,
                    usual = {0.2, 12},
                    example = "1.5",
                    optional = true)
            @DecimalMin("0")
            @DecimalMax("100")
            Double planing,

            @Describe(
                    value = "Length lost at each end of a board, to checks and snipe.",
                    quantity = Quantity.LENGTH,
                    usual = {3, 600},
                    example = "40",
                    optional = true)
            @DecimalMin("0")
            @DecimalMax("2000")
            Double ends,

            @Describe(
                    value = "Kerf of a rip; the saw's kerf if left out.",
                    quantity = Quantity.LENGTH,
                    usual = {0.5, 8},
                    example = "2.4",
                    optional = true)
            @DecimalMin("0")
            @DecimalMax("100")
            Double ripKerf,

            @Describe(
                    value = "What a strip is ripped wider than its band, for its glue faces to be planed.",
                    quantity = Quantity.LENGTH,
                    usual = {0.1, 12},
                    example = "1",
                    optional = true)
            @DecimalMin("0")
            @DecimalMax("100")
            Double stripPlaning,

            @Describe(
                    value = "What a strip is made thicker than the panel, for the glued blank to be flattened.",
                    quantity = Quantity.LENGTH,
                    usual = {0.1, 15},
                    example = "2",
                    optional = true)
            @DecimalMin("0")
            @DecimalMax("100")
            Double blankFlattening) {

        private AllowancesRequest filled(double kerf) {
            return new AllowancesRequest(
                    requireNonNullElse(jointing, 0.0),
                    requireNonNullElse(edgeCleaning, 0.0),
                    requireNonNullElse(planing, 0.0),
                    requireNonNullElse(ends, 0.0),
                    requireNonNullElse(ripKerf, kerf),
                    requireNonNullElse(stripPlaning, 0.0),
                    requireNonNullElse(blankFlattening, 0.0));
        }
    }

    /** How two pieces of a strip meet. */
    public enum Joint {
        /** End to end, cut square. */
        BUTT,
        /** Along slopes that overlap. */
        SCARF
    }

    /** How strips may be made up of pieces. */
    @Describe("How strips may be made up of pieces that are joined end to end; strips are in one piece if this is left"
            + " out. Where a cut between segments will do, the middle of a seam is put on it. The saw then takes"
            + " most of the seam.")
    public record SeamRequest(
            @Describe(value = "How two pieces of a strip meet.", example = "\"SCARF\"") @NotNull
            Joint joint,

            @Describe(
                    value = "Length by which two pieces overlap in a scarf seam; needed for SCARF, 0 or left out for"
                            + " BUTT.",
                    quantity = Quantity.LENGTH,
                    usual = {8, 400},
                    example = "60",
                    optional = true)
            @DecimalMin("0")
            @DecimalMax("2000")
            Double scarf,

            @Describe(
                    value = "Shortest piece of a strip.",
                    quantity = Quantity.LENGTH,
                    usual = {25, 3000},
                    example = "150")
            @NotNull
            @DecimalMin("1")
            @DecimalMax("20000")
            Double smallestPiece,

            @Describe(
                    value = "Least distance along the blank between seams in neighbouring strips, measured between the"
                            + " nearest points of two scarfs; less than the blank's length.",
                    quantity = Quantity.LENGTH,
                    usual = {5, 1000},
                    example = "40")
            @NotNull
            @DecimalMin("0")
            @DecimalMax("20000")
            Double clearance,

            @Describe(value = "Most seams in one strip; 1 if left out.", example = "1", optional = true) @Min(1) @Max(3)
            Integer most) {

        private SeamRequest filled() {
            return new SeamRequest(joint, scarf, smallestPiece, clearance, requireNonNullElse(most, 1));
        }
    }

    /** How much the search for the best plan may take. */
    @Describe("How much the search for the best plan may take. The best plan found until then is answered, with what is"
            + " proved of it.")
    public record SearchRequest(
            @Describe(
                    value = "Work of all searches together; 2 if left out. One takes up to some seconds of a"
                            + " processor. Work is counted alike on every machine, so that the same question has the"
                            + " same answer.",
                    example = "2",
                    optional = true)
            @DecimalMin("0.01")
            @DecimalMax("100")
            Double work,

            @Describe(
                    value = "Seconds after which all searches end, however little of the work is done; 20 if left out."
                            + " Where the time ends a search, the answer says so: another call may find another"
                            + " plan.",
                    example = "20",
                    optional = true)
            @DecimalMin("0.05")
            @DecimalMax("120")
            Double seconds) {

        private static final double USUAL_WORK = 2;
        private static final double USUAL_SECONDS = 20;

        private SearchRequest filled() {
            return new SearchRequest(requireNonNullElse(work, USUAL_WORK), requireNonNullElse(seconds, USUAL_SECONDS));
        }
    }
}
