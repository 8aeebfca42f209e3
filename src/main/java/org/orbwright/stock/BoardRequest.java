package org.orbwright.stock;

import static java.util.Objects.requireNonNullElse;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

/** Boards that are alike. */
@Describe("Boards on the rack that are alike.")
public record BoardRequest(
        @Describe(value = "A name for print-outs.", example = "\"left over from the dinghy\"", optional = true)
        @Size(max = 60)
        String name,

        @Describe(value = "The wood, named as in the bands.", example = "\"white ash\"") @NotBlank @Size(max = 60)
        String species,

        @Describe(
                value = "Length.",
                quantity = Quantity.LENGTH,
                usual = {80, 8000},
                example = "1830")
        @NotNull
        @DecimalMin("1")
        @DecimalMax("20000")
        Double length,

        @Describe(
                value = "Width.",
                quantity = Quantity.LENGTH,
                usual = {15, 1500},
                example = "152")
        @NotNull
        @DecimalMin("0.1")
        @DecimalMax("2000")
        Double width,

        @Describe(
                value = "Thickness.",
                quantity = Quantity.LENGTH,
                usual = {5, 150},
                example = "38")
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
                usual = {0.1, 25},
                example = "1",
                optional = true)
        @DecimalMin("0")
        @DecimalMax("100")
        Double outOfFlat,

        @Describe(
                value = "Twist: how far the fourth corner stands off while three lie on a flat bed; 0 if left out.",
                quantity = Quantity.LENGTH,
                usual = {0.1, 25},
                example = "3",
                optional = true)
        @DecimalMin("0")
        @DecimalMax("100")
        Double twist,

        @Describe(
                value = "Whether the board is shimmed for its first face, so that both ends share the twist; true if"
                        + " left out.",
                example = "true",
                optional = true)
        Boolean shimmed) {

    /** The same with everything filled in. */
    BoardRequest filled() {
        return new BoardRequest(
                name,
                species,
                length,
                width,
                thickness,
                requireNonNullElse(count, 1),
                requireNonNullElse(surface, Surface.ROUGH),
                requireNonNullElse(price, 0.0),
                requireNonNullElse(priceBy, PriceBy.BOARD),
                requireNonNullElse(outOfFlat, 0.0),
                requireNonNullElse(twist, 0.0),
                requireNonNullElse(shimmed, true));
    }

    /** The same, filled in, with one more. */
    BoardRequest oneMore() {
        return new BoardRequest(
                name, species, length, width, thickness, count + 1, surface, price, priceBy, outOfFlat, twist, shimmed);
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
}
