package org.orbwright.wood;

import java.util.OptionalDouble;

/**
 * What is known of one species.
 *
 * @param name common name, in lower case
 * @param radialCoefficient dimensional change coefficient in the radial direction, per percent of moisture content
 * @param tangentialCoefficient the same in the tangential direction
 * @param specificGravity ovendry mass over volume at 12 % moisture content, if known
 */
public record WoodSpecies(
        String name, double radialCoefficient, double tangentialCoefficient, OptionalDouble specificGravity) {
    /** Density of water in kilograms per cubic metre. */
    private static final double WATER = 1000;
    /** Mass of a wood at 12 % moisture content over its ovendry mass. */
    private static final double MOIST = 1.12;

    /** Density at 12 % moisture content in kilograms per cubic metre: {@code 1000 G (1 + 12 / 100)}. */
    public OptionalDouble density() {
        return specificGravity.isPresent()
                ? OptionalDouble.of(specificGravity.getAsDouble() * MOIST * WATER)
                : OptionalDouble.empty();
    }
}
