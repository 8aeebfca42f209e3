package org.orbwright.movement;

import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.movement.Movement.MoistureContents;
import org.orbwright.segment.Sums;
import org.orbwright.segment.Yield;
import org.orbwright.segment.Yield.SpeciesYield;
import org.orbwright.segment.YieldCalculator;

/** Weighs the wood of a design. */
final class WoodMass {
    private WoodMass() {}

    static List<SpeciesMass> of(Design design, MoistureContents moisture) {
        Yield yield = YieldCalculator.calculate(design);
        return yield.species().stream()
                .map(wood -> mass(wood, yield.solidVolume(wood.species()), moisture))
                .toList();
    }

    private static SpeciesMass mass(SpeciesYield wood, double solids, MoistureContents moisture) {
        String species = wood.species();
        return new SpeciesMass(
                species,
                Sums.mass(species, wood.stripVolume(), moisture.stock()),
                Sums.mass(species, wood.stripVolume(), moisture.home()),
                Sums.mass(species, solids, moisture.stock()),
                Sums.mass(species, solids, moisture.home()),
                Sums.mass(species, wood.finishedVolume(), moisture.stock()),
                Sums.mass(species, wood.finishedVolume(), moisture.home()));
    }
}
