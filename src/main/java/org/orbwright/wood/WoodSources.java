package org.orbwright.wood;

import org.orbwright.quantity.Describe;

@Describe("The works that the table of woods was read in. Each wood names its sources in short.")
public record WoodSources(
        @Describe(
                value = "FPL-GTR-190, a source of coefficients.",
                example = "\"Forest Products Laboratory, Wood Handbook: Wood as an Engineering Material, General"
                        + " Technical Report FPL-GTR-190, 2010. Table 13-5 holds from 6 % to 14 % moisture content."
                        + " Where a wood is in Table 4-3 alone, its coefficient is 1/(3000/S - 20), with the shrinkage"
                        + " S in percent. That gives 61 of 66 values of Table 13-5 to their last digit.\"")
        String woodHandbook,

        @Describe(
                value = "The table after DIN 68100, a source of coefficients.",
                example = "\"A published table of the timber trade: differential shrinkage after DIN 68100, in percent"
                        + " for each percent of moisture content. It is a secondary source, and was read once.\"")
        String differentialShrinkage,

        @Describe(
                value = "USDA FIA, the source of specific gravities.",
                example = "\"U.S. Forest Service, Forest Inventory and Analysis, reference table REF_SPECIES, column"
                        + " WOOD_SPGR_MC12VOL_DRYWT; compiled by Miles and Smith 2009, NRS-38.\"")
        String forestInventory,

        @Describe(
                value = "How the densities follow from the specific gravities.",
                example = "\"1000 kg/m3 times the specific gravity times 1.12 (FPL-GTR-190, chapter 4): the density at"
                        + " 12 % moisture content.\"")
        String density,

        @Describe(
                value = "Source of the trade names, and what is done with one that may mean several woods.",
                example = "\"Common practice, no source. A name that may mean several woods is taken for the one whose"
                        + " width moves most.\"")
        String tradeNames) {

    /** The sources of the table. */
    public static WoodSources stated() {
        return new WoodSources(
                "Forest Products Laboratory, Wood Handbook: Wood as an Engineering Material, General Technical Report"
                        + " FPL-GTR-190, 2010. Table 13-5 holds from 6 % to 14 % moisture content. Where a wood is in"
                        + " Table 4-3 alone, its coefficient is 1/(3000/S - 20), with the shrinkage S in percent. That"
                        + " gives 61 of 66 values of Table 13-5 to their last digit.",
                "A published table of the timber trade: differential shrinkage after DIN 68100, in percent for each"
                        + " percent of moisture content. It is a secondary source, and was read once.",
                "U.S. Forest Service, Forest Inventory and Analysis, reference table REF_SPECIES, column"
                        + " WOOD_SPGR_MC12VOL_DRYWT; compiled by Miles and Smith 2009, NRS-38.",
                "1000 kg/m3 times the specific gravity times 1.12 (FPL-GTR-190, chapter 4): the density at 12 %"
                        + " moisture content.",
                "Common practice, no source. A name that may mean several woods is taken for the one whose width"
                        + " moves most.");
    }
}
