package org.orbwright.wood;

import java.util.List;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

@Describe("What the table of woods says of one species.")
public record Wood(
        @Describe(value = "The species' common name.", example = "\"true hickory\"")
        String species,

        @Describe(
                value = "Names that the trade uses for this species, some of them for others too; a design may use"
                        + " them.",
                example = "[\"hickory\"]")
        List<String> tradeNames,

        @Describe(
                value = "What else the name that was asked for may mean. The species that is answered is the one"
                        + " whose width moves most. Left out where the name means one wood alone.",
                example = "[\"pecan hickory\"]",
                optional = true)
        List<String> mayAlsoMean,

        @Describe(
                value = "Dimensional change coefficient in the radial direction, square to the growth rings; valid for"
                        + " 6 % to 14 % moisture content.",
                quantity = Quantity.MOVEMENT,
                example = "0.00259")
        double radialCoefficient,

        @Describe(
                value = "Dimensional change coefficient in the tangential direction, along the growth rings; valid for"
                        + " 6 % to 14 % moisture content.",
                quantity = Quantity.MOVEMENT,
                example = "0.00411")
        double tangentialCoefficient,

        @Describe(
                value = "Where the two coefficients were read; the head of the list names the work in full.",
                example = "\"FPL-GTR-190 Table 13-5\"")
        String coefficientsSource,

        @Describe(
                value = "Ovendry mass over the mass of as much water as the wood's volume at 12 % moisture content;"
                        + " left out where no source was read.",
                quantity = Quantity.PLAIN,
                example = "0.75",
                optional = true)
        Double specificGravity,

        @Describe(
                value = "Where the specific gravity was read; the head of the list names the work in full.",
                example = "\"heavier of mockernut and pignut hickory: USDA FIA REF_SPECIES WOOD_SPGR_MC12VOL_DRYWT\"",
                optional = true)
        String specificGravitySource,

        @Describe(
                value = "Density at 12 % moisture content, from the specific gravity; left out where that is not"
                        + " known.",
                quantity = Quantity.DENSITY,
                example = "840",
                optional = true)
        Double density) {

    public Wood {
        tradeNames = List.copyOf(tradeNames);
        mayAlsoMean = mayAlsoMean == null ? null : List.copyOf(mayAlsoMean);
    }

    /** The answer about a species of the table. */
    public static Wood of(WoodSpecies wood) {
        return of(new NamedWood(wood, List.of(), null));
    }

    /** The answer about the wood that is taken for a name. */
    public static Wood of(NamedWood named) {
        WoodSpecies wood = named.wood();
        return new Wood(
                wood.name(),
                TradeNames.of(wood.name()),
                named.others().isEmpty() ? null : named.others(),
                wood.radialCoefficient().orElseThrow(),
                wood.tangentialCoefficient().orElseThrow(),
                wood.coefficientsSource(),
                wood.specificGravity().stream().boxed().findFirst().orElse(null),
                wood.specificGravitySource(),
                wood.density().stream().boxed().findFirst().orElse(null));
    }
}
