package org.orbwright.sheet;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.segment.Yield;
import org.orbwright.segment.Yield.LaminationYield;
import org.orbwright.segment.Yield.SegmentYield;
import org.orbwright.segment.Yield.SpeciesYield;
import org.orbwright.wood.WoodTable;

/** What the yield of a design gets wrong or nearly wrong. */
final class YieldFindings {
    private YieldFindings() {}

    static List<Finding> of(Design design, Yield yield) {
        List<Finding> findings = new ArrayList<>();
        for (LaminationYield lamination : yield.laminations()) {
            boolean unpaired = lamination.sets() == 2 && design.copies() % 2 == 1;
            int left = lamination.segments().stream()
                    .mapToInt(SegmentYield::invertedLeft)
                    .sum();
            if (unpaired && left > 0) {
                findings.add(leftOver(lamination, left));
            }
        }
        for (SpeciesYield species : yield.species()) {
            if (species.density() == null) {
                findings.add(unknownDensity(design, species.species()));
            }
        }
        return findings;
    }

    static Finding unknownDensity(Design design, String species) {
        return new Finding(
                FindingCode.DENSITY_UNKNOWN,
                Finding.Severity.NOTE,
                "The table of woods has no density for " + species + ", so masses with it are left out."
                        + Words.known(WoodTable.similar(
                                species, wood -> wood.specificGravity().isPresent())),
                Words.firstBand(design, species));
    }

    private static Finding leftOver(LaminationYield lamination, int left) {
        return new Finding(
                FindingCode.SET_LEFT_OVER,
                Finding.Severity.WARN,
                "The bands of the " + lamination.face()
                        + " lamination do not read the same from both edges, so every blank"
                        + " gives upright and inverted segments, and " + left
                        + " inverted ones are not used up by an odd"
                        + " number of spheres. An even number of copies uses both sets, as complementary spheres.",
                "/copies");
    }
}
