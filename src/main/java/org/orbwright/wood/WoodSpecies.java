package org.orbwright.wood;

import java.util.OptionalDouble;

/**
 * What is known of one species.
 *
 * @param name common name; proper names in it have capitals
 * @param radialCoefficient dimensional change coefficient in the radial direction, per percent of moisture content
 * @param tangentialCoefficient the same in the tangential direction
 * @param coefficientsSource where the coefficients were read
 * @param specificGravity ovendry mass over volume at 12 % moisture content, if known
 * @param specificGravitySource where it was read, or null where it is not known
 */
public record WoodSpecies(
        String name,
        double radialCoefficient,
        double tangentialCoefficient,
        String coefficientsSource,
        OptionalDouble specificGravity,
        String specificGravitySource) {
    /** Density of water in kilograms per cubic metre. */
    private static final double WATER = 1000;
    /** Moisture content in percent at which the volume behind the specific gravity is taken. */
    private static final double USUAL_MOISTURE = 12;

    /** Density at 12 % moisture content in kilograms per cubic metre: {@code 1000 G (1 + 12 / 100)}. */
    public OptionalDouble density() {
        return density(USUAL_MOISTURE);
    }

    /**
     * Mass at a moisture content over the volume at 12 %, in kilograms per cubic metre: {@code 1000 G (1 + M / 100)}
     * (Wood Handbook, FPL-GTR-190, chapter 4).
     *
     * @param moisture moisture content in percent
     */
    public OptionalDouble density(double moisture) {
        return specificGravity.isPresent()
                ? OptionalDouble.of(specificGravity.getAsDouble() * (1 + moisture / 100) * WATER)
                : OptionalDouble.empty();
    }

    /**
     * Dimensional change coefficient in a direction across the grain, per percent of moisture content: {@code CT cos^2
     * + CR sin^2} of its angle to the growth rings. That is tangential along the rings and radial square to them; in
     * between it neglects the shear of the section, which turns a square one into a rhombus. Common practice, no
     * source.
     *
     * @param angleToRings angle between the direction and the growth rings, in radians
     */
    public double coefficient(double angleToRings) {
        double cos = Math.cos(angleToRings);
        double sin = Math.sin(angleToRings);
        return tangentialCoefficient * cos * cos + radialCoefficient * sin * sin;
    }
}
