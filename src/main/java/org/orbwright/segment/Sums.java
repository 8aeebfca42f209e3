package org.orbwright.segment;

import java.util.Optional;
import java.util.OptionalDouble;
import org.orbwright.wood.WoodSpecies;
import org.orbwright.wood.WoodTable;

/** Sums in which one unknown part makes the whole unknown. */
public final class Sums {
    private static final double CUBIC_METRES_PER_CUBIC_MILLIMETRE = 1e-9;

    private Sums() {}

    /** The sum, or null if either is not known. */
    public static Double add(Double sum, Double part) {
        return sum == null || part == null ? null : Double.valueOf(sum + part);
    }

    /** Density of a species in kilograms per cubic metre, or null if it is not known. */
    static Double density(String species) {
        return boxed(WoodTable.find(species).map(WoodSpecies::density));
    }

    /** Mass in kilograms of a volume in cubic millimetres, or null if either is not known. */
    static Double mass(String species, Double volume) {
        return mass(density(species), volume);
    }

    /**
     * Mass in kilograms at a moisture content, or null if the wood or its volume is not known.
     *
     * @param species the wood
     * @param volume its volume at 12 % moisture content, in cubic millimetres
     * @param moisture moisture content in percent
     */
    public static Double mass(String species, Double volume, double moisture) {
        return mass(boxed(WoodTable.find(species).map(wood -> wood.density(moisture))), volume);
    }

    private static Double mass(Double density, Double volume) {
        return density == null || volume == null
                ? null
                : Double.valueOf(density * volume * CUBIC_METRES_PER_CUBIC_MILLIMETRE);
    }

    private static Double boxed(Optional<OptionalDouble> density) {
        OptionalDouble known = density.orElse(OptionalDouble.empty());
        return known.isPresent() ? Double.valueOf(known.getAsDouble()) : null;
    }
}
