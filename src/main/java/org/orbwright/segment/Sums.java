package org.orbwright.segment;

import java.util.OptionalDouble;
import org.orbwright.wood.WoodSpecies;
import org.orbwright.wood.WoodTable;

/** Sums in which one unknown part makes the whole unknown. */
final class Sums {
    private static final double CUBIC_METRES_PER_CUBIC_MILLIMETRE = 1e-9;

    private Sums() {}

    /** The sum, or null if either is not known. */
    static Double add(Double sum, Double part) {
        return sum == null || part == null ? null : Double.valueOf(sum + part);
    }

    /** Density of a species in kilograms per cubic metre, or null if it is not known. */
    static Double density(String species) {
        OptionalDouble density =
                WoodTable.find(species).map(WoodSpecies::density).orElse(OptionalDouble.empty());
        return density.isPresent() ? Double.valueOf(density.getAsDouble()) : null;
    }

    /** Mass in kilograms of a volume in cubic millimetres, or null if either is not known. */
    static Double mass(String species, Double volume) {
        Double density = density(species);
        return density == null || volume == null
                ? null
                : Double.valueOf(density * volume * CUBIC_METRES_PER_CUBIC_MILLIMETRE);
    }
}
