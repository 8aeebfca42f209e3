package org.orbwright.wood;

import java.util.List;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

/** A species as it is answered. */
@Describe("What the table of woods says of one species.")
public record Wood(
        @Describe(value = "The species' common name.", example = "\"black walnut\"")
        String species,

        @Describe(
                value = "Names that the trade uses for this species alone; a design may use them too.",
                example = "[\"walnut\"]")
        List<String> tradeNames,

        @Describe(
                value = "Dimensional change coefficient in the radial direction, square to the growth rings: the"
                        + " Wood Handbook's Table 13-5, valid for 6 % to 14 % moisture content.",
                quantity = Quantity.MOVEMENT,
                example = "0.0019")
        double radialCoefficient,

        @Describe(
                value = "Dimensional change coefficient in the tangential direction, along the growth rings: the"
                        + " Wood Handbook's Table 13-5, valid for 6 % to 14 % moisture content.",
                quantity = Quantity.MOVEMENT,
                example = "0.00274")
        double tangentialCoefficient,

        @Describe(
                value = "Ovendry mass over the mass of as much water as the wood's volume at 12 % moisture content: the"
                        + " Wood Handbook's Table 5-3, from memory; left out where it is not known.",
                example = "0.55",
                optional = true)
        Double specificGravity,

        @Describe(
                value = "Density at 12 % moisture content, from the specific gravity; left out where that is not"
                        + " known.",
                quantity = Quantity.DENSITY,
                example = "616",
                optional = true)
        Double density) {

    /** Copies the list of names. */
    public Wood {
        tradeNames = List.copyOf(tradeNames);
    }

    /** The answer about a species of the table. */
    public static Wood of(WoodSpecies wood) {
        return new Wood(
                wood.name(),
                WoodTable.tradeNames(wood.name()),
                wood.radialCoefficient(),
                wood.tangentialCoefficient(),
                wood.specificGravity().stream().boxed().findFirst().orElse(null),
                wood.density().stream().boxed().findFirst().orElse(null));
    }
}
