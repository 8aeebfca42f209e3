package org.orbwright.segment;

import java.util.OptionalDouble;
import org.orbwright.wood.Woods;

/** Sums in which one unknown part makes the whole unknown. */
public final class Sums {
    private static final double CUBIC_METRES_PER_CUBIC_MILLIMETRE = 1e-9;

    private Sums() {}

    /** The sum, or null if either is not known. */
    public static Double add(Double sum, Double part) {
        return sum == null || part == null ? null : Double.valueOf(sum + part);
    }

    /** Density of a species in kilograms per cubic metre, or null if it is not known. */
    static Double density(Woods woods, String species) {
        return boxed(woods.density(species));
    }

    /** Mass in kilograms of a volume in cubic millimetres, or null if either is not known. */
    static Double mass(Woods woods, String species, Double volume) {
        return mass(density(woods, species), volume);
    }

    /**
     * Mass in kilograms at a moisture content, or null if the wood or its volume is not known.
     *
     * @param woods what the names of woods mean
     * @param species the wood
     * @param volume its volume at 12 % moisture content, in cubic millimetres
     * @param moisture moisture content in percent
     */
    public static Double mass(Woods woods, String species, Double volume, double moisture) {
        return mass(boxed(woods.density(species, moisture)), volume);
    }

    private static Double mass(Double density, Double volume) {
        return density == null || volume == null
                ? null
                : Double.valueOf(density * volume * CUBIC_METRES_PER_CUBIC_MILLIMETRE);
    }

    private static Double boxed(OptionalDouble density) {
        return density.isPresent() ? Double.valueOf(density.getAsDouble()) : null;
    }
}
