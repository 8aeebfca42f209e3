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
import org.orbwright.stock.BoardRequest.PriceBy;
import org.orbwright.stock.BoardRequest.Surface;

/** A stock size that can be bought. */
@Describe("A stock size that can be bought.")
public record OfferRequest(
        @Describe(value = "A name for the shopping list.", example = "\"6 ft by 6 in, 6/4\"", optional = true)
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

        @Describe(value = "Rough or surfaced; ROUGH if left out.", example = "\"ROUGH\"", optional = true)
        Surface surface,

        @Describe(value = "Price, in any currency.", example = "9.8") @NotNull @DecimalMin("0") @DecimalMax("1000000")
        Double price,

        @Describe(value = "What the price is for; BOARD if left out.", example = "\"BOARD_FOOT\"", optional = true)
        PriceBy priceBy,

        @Describe(value = "How many can be had; 100 if left out.", example = "20", optional = true) @Min(1) @Max(200)
        Integer most) {

    private static final int USUAL_MOST = 100;

    /** The same with everything filled in. */
    OfferRequest filled() {
        return new OfferRequest(
                name,
                species,
                length,
                width,
                thickness,
                requireNonNullElse(surface, Surface.ROUGH),
                price,
                requireNonNullElse(priceBy, PriceBy.BOARD),
                requireNonNullElse(most, USUAL_MOST));
    }

    /** The same, filled in, of which so many can be had. */
    OfferRequest withMost(int count) {
        return new OfferRequest(name, species, length, width, thickness, surface, price, priceBy, count);
    }
}
