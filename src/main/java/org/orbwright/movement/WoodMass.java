package org.orbwright.movement;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.orbwright.design.Design;
import org.orbwright.design.DesignPart;
import org.orbwright.movement.Movement.MoistureContents;
import org.orbwright.segment.Sums;
import org.orbwright.segment.Yield.SpeciesInSphere;
import org.orbwright.segment.Yield.SphereYield;
import org.orbwright.segment.YieldCalculator;
import org.orbwright.wood.Woods;

/** Weighs the wood of a design. */
final class WoodMass {
    private WoodMass() {}

    /** The masses of each wood; those of strips are left out until a yield is known. */
    static List<SpeciesMass> of(Design design, MoistureContents moisture) {
        Map<String, Volumes> woods = new LinkedHashMap<>();
        for (SphereYield sphere : YieldCalculator.spheres(design)) {
            for (SpeciesInSphere wood : sphere.species()) {
                woods.computeIfAbsent(wood.species(), name -> new Volumes()).add(wood, sphere.count());
            }
        }
        if (design.has(DesignPart.KERF) && design.has(DesignPart.BLANK_LENGTH)) {
            YieldCalculator.calculate(design)
                    .species()
                    .forEach(wood -> woods.get(wood.species()).strips = wood.stripVolume());
        }
        return woods.entrySet().stream()
                .map(wood -> wood.getValue().masses(design.woods(), wood.getKey(), moisture))
                .toList();
    }

    /** Volumes of one wood in all copies while they are added up. */
    private static final class Volumes {
        private Double strips;
        private double solids;
        private Double finished = 0.0;

        void add(SpeciesInSphere wood, int count) {
            solids += wood.solidVolume() * count;
            Double each = wood.sphereVolume();
            finished = Sums.add(finished, each == null ? null : each * count);
        }

        SpeciesMass masses(Woods woods, String species, MoistureContents moisture) {
            return new SpeciesMass(
                    species,
                    Sums.mass(woods, species, strips, moisture.stock()),
                    Sums.mass(woods, species, strips, moisture.home()),
                    Sums.mass(woods, species, solids, moisture.stock()),
                    Sums.mass(woods, species, solids, moisture.home()),
                    Sums.mass(woods, species, finished, moisture.stock()),
                    Sums.mass(woods, species, finished, moisture.home()));
        }
    }
}
