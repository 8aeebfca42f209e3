package org.orbwright.wood;

import org.orbwright.quantity.Describe;

/** Where the numbers of the table of woods come from. */
@Describe("Where the numbers of the table of woods come from.")
public record WoodSources(
        @Describe(
                value = "Source of the dimensional change coefficients.",
                example =
                        "\"Forest Products Laboratory, Wood Handbook, FPL-GTR-190 (2010), Table 13-5; valid for 6 % to"
                                + " 14 % moisture content.\"")
        String coefficients,

        @Describe(
                value = "Source of the specific gravities.",
                example = "\"Forest Products Laboratory, Wood Handbook, FPL-GTR-190 (2010), Table 5-3, quoted from"
                        + " memory: ovendry mass and volume at 12 % moisture content. Good for a first estimate of"
                        + " mass only.\"")
        String specificGravity,

        @Describe(
                value = "How the densities follow from the specific gravities.",
                example = "\"1000 kg/m3 times the specific gravity times 1.12, which is the density at 12 % moisture"
                        + " content.\"")
        String density,

        @Describe(value = "Source of the trade names.", example = "\"Common practice, no source.\"")
        String tradeNames) {

    private static final String HANDBOOK = "Forest Products Laboratory, Wood Handbook, FPL-GTR-190 (2010), ";

    /** The sources of the table. */
    public static WoodSources stated() {
        return new WoodSources(
                HANDBOOK + "Table 13-5; valid for 6 % to 14 % moisture content.",
                HANDBOOK + "Table 5-3, quoted from memory: ovendry mass and volume at 12 % moisture content. Good for a"
                        + " first estimate of mass only.",
                "1000 kg/m3 times the specific gravity times 1.12, which is the density at 12 % moisture content.",
                "Common practice, no source.");
    }
}
