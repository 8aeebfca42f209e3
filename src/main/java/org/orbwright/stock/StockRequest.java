package org.orbwright.stock;

import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.orbwright.design.DesignRequest;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

/**
 * A design and the boards at hand.
 *
 * @param design the design
 * @param boards the boards on the rack
 * @param offers stock sizes that can be bought, or null for none
 * @param allowances what is lost on the way from a board to a blank, or null for nothing
 * @param aim what the best plan has least of, or null for the cost
 * @param search when a search ends that has not come to an end, or null
 */
@Describe("A design and the boards at hand.")
public record StockRequest(
        @NotNull @Valid DesignRequest design,

        @Describe("The boards on the rack; boards that are alike stand here once, with their count.")
        @NotNull
        @Size(max = 200)
        List<@NotNull @Valid BoardRequest> boards,

        @Describe(value = "Stock sizes that can be bought; none if left out.", optional = true) @Size(max = 50)
        List<@NotNull @Valid OfferRequest> offers,

        @Valid AllowancesRequest allowances,

        @Describe(
                value = "What the best plan has least of: the COST of the boards that are cut, or their wood, which"
                        + " leaves least WASTE; between equal plans the other one decides. COST if left out.",
                example = "\"COST\"",
                optional = true)
        StockAim aim,

        @Valid SearchRequest search) {

    /** Copies the lists. */
    public StockRequest {
        boards = copy(boards);
        offers = copy(offers);
    }

    private static <T> List<T> copy(List<T> list) {
        return list == null ? null : Collections.unmodifiableList(new ArrayList<>(list));
    }

    /** How the faces of a board are. */
    public enum Surface {
        /** As they came from the sawmill; the planing allowance is taken off both. */
        ROUGH,
        /** Planed; nothing is taken off but what flattening takes. */
        SURFACED
    }

    /** What a price is for. */
    public enum PriceBy {
        /** One board. */
        BOARD,
        /** One board foot of 144 cubic inches, as the board stands on the rack. */
        BOARD_FOOT,
        /** One cubic metre, as the board stands on the rack. */
        CUBIC_METRE
    }

    /** Boards that are alike. */
    @Describe("Boards on the rack that are alike.")
    public record BoardRequest(
            @Describe(value = "A name for print-outs.", example = "\"left over from the dinghy\"", optional = true)
            @Size(max = 60)
            String name,

            @Describe(value = "The wood, named as in the bands.", example = "\"sugar maple\"") @NotBlank @Size(max = 60)
            String species,

            @Describe(value = "Length.", quantity = Quantity.LENGTH, example = "1830")
            @NotNull
            @DecimalMin("1")
            @DecimalMax("20000")
            Double length,

            @Describe(value = "Width.", quantity = Quantity.LENGTH, example = "152")
            @NotNull
            @DecimalMin("0.1")
            @DecimalMax("2000")
            Double width,

            @Describe(value = "Thickness.", quantity = Quantity.LENGTH, example = "38")
            @NotNull
            @DecimalMin("0.1")
            @DecimalMax("500")
            Double thickness,

            @Describe(value = "How many there are; 1 if left out.", example = "2", optional = true) @Min(1) @Max(200)
            Integer count,

            @Describe(value = "Rough or surfaced; ROUGH if left out.", example = "\"ROUGH\"", optional = true)
            Surface surface,

            @Describe(
                    value = "Price, in any currency; if left out, the board is paid for and costs nothing.",
                    example = "24.5",
                    optional = true)
            @DecimalMin("0")
            @DecimalMax("1000000")
            Double price,

            @Describe(value = "What the price is for; BOARD if left out.", example = "\"BOARD\"", optional = true)
            PriceBy priceBy,

            @Describe(
                    value = "Widest gap under a straightedge laid along or across the face, from cup or bow; 0 if left"
                            + " out.",
                    quantity = Quantity.LENGTH,
                    example = "1",
                    optional = true)
            @DecimalMin("0")
            @DecimalMax("100")
            Double outOfFlat,

            @Describe(
                    value = "Twist: how far the fourth corner stands off while three lie on a flat bed; 0 if left out.",
                    quantity = Quantity.LENGTH,
                    example = "3",
                    optional = true)
            @DecimalMin("0")
            @DecimalMax("100")
            Double twist,

            @Describe(
                    value = "Whether the board is shimmed for its first face, so that both ends share the twist; true"
                            + " if left out.",
                    example = "true",
                    optional = true)
            Boolean shimmed) {}

    /** A stock size that can be bought. */
    @Describe("A stock size that can be bought.")
    public record OfferRequest(
            @Describe(value = "A name for the shopping list.", example = "\"6 ft by 6 in, 6/4\"", optional = true)
            @Size(max = 60)
            String name,

            @Describe(value = "The wood, named as in the bands.", example = "\"sugar maple\"") @NotBlank @Size(max = 60)
            String species,

            @Describe(value = "Length.", quantity = Quantity.LENGTH, example = "1830")
            @NotNull
            @DecimalMin("1")
            @DecimalMax("20000")
            Double length,

            @Describe(value = "Width.", quantity = Quantity.LENGTH, example = "152")
            @NotNull
            @DecimalMin("0.1")
            @DecimalMax("2000")
            Double width,

            @Describe(value = "Thickness.", quantity = Quantity.LENGTH, example = "38")
            @NotNull
            @DecimalMin("0.1")
            @DecimalMax("500")
            Double thickness,

            @Describe(value = "Rough or surfaced; ROUGH if left out.", example = "\"ROUGH\"", optional = true)
            Surface surface,

            @Describe(value = "Price, in any currency.", example = "9.8")
            @NotNull
            @DecimalMin("0")
            @DecimalMax("1000000")
            Double price,

            @Describe(value = "What the price is for; BOARD if left out.", example = "\"BOARD_FOOT\"", optional = true)
            PriceBy priceBy,

            @Describe(value = "How many can be had; 100 if left out.", example = "20", optional = true)
            @Min(1)
            @Max(200)
            Integer most) {}

    /** What is lost on the way from a board to a blank. */
    @Describe("What is lost on the way from a board to a blank; what is left out is 0.")
    public record AllowancesRequest(
            @Describe(
                    value = "Width lost to joint the first edge of a board.",
                    quantity = Quantity.LENGTH,
                    example = "3",
                    optional = true)
            @DecimalMin("0")
            @DecimalMax("200")
            Double jointing,

            @Describe(
                    value = "Width lost to clean the second edge of a board.",
                    quantity = Quantity.LENGTH,
                    example = "3",
                    optional = true)
            @DecimalMin("0")
            @DecimalMax("200")
            Double edgeCleaning,

            @Describe(
                    value = "Thickness lost to plane one face of a rough board.",
                    quantity = Quantity.LENGTH,
                    example = "1.5",
                    optional = true)
            @DecimalMin("0")
            @DecimalMax("100")
            Double planing,

            @Describe(
                    value = "Length lost at each end of a board, to checks and snipe.",
                    quantity = Quantity.LENGTH,
                    example = "50",
                    optional = true)
            @DecimalMin("0")
            @DecimalMax("2000")
            Double ends,

            @Describe(
                    value = "Kerf of a rip; the saw's kerf if left out.",
                    quantity = Quantity.LENGTH,
                    example = "2.4",
                    optional = true)
            @DecimalMin("0")
            @DecimalMax("100")
            Double ripKerf,

            @Describe(
                    value = "What a strip is ripped wider than its band, for its glue faces to be planed.",
                    quantity = Quantity.LENGTH,
                    example = "1",
                    optional = true)
            @DecimalMin("0")
            @DecimalMax("100")
            Double stripPlaning,

            @Describe(
                    value = "What a strip is made thicker than the panel, for the glued blank to be flattened.",
                    quantity = Quantity.LENGTH,
                    example = "2",
                    optional = true)
            @DecimalMin("0")
            @DecimalMax("100")
            Double blankFlattening) {}

    /** When a search ends that has not come to an end. */
    @Describe("When a search ends that has not proved its plan best. The best plan found until then is answered, with"
            + " its bound.")
    public record SearchRequest(
            @Describe(
                    value = "Steps of one search; 100000 if left out. As long as this ends it and not the time, the"
                            + " same question has the same answer.",
                    example = "100000",
                    optional = true)
            @Min(1)
            @Max(10_000_000)
            Integer nodes,

            @Describe(
                    value = "Seconds that one search takes at most; 2 if left out. A wood takes two or three searches.",
                    example = "2",
                    optional = true)
            @DecimalMin("0.05")
            @DecimalMax("10")
            Double seconds) {}
}
