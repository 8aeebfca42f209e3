package org.orbwright.wood;

import java.util.OptionalDouble;

/**
 * What is known of one species.
 *
 * @param name common name; proper names in it have capitals
 * @param radialCoefficient dimensional change coefficient in the radial direction, per percent of moisture content, if
 *     known
 * @param tangentialCoefficient the same in the tangential direction
 * @param coefficientsSource where the coefficients were read
 * @param specificGravity ovendry mass over volume at 12 % moisture content, if known
 * @param specificGravitySource where it was read, or null where it is not known
 */
public record WoodSpecies(
        String name,
        OptionalDouble radialCoefficient,
        OptionalDouble tangentialCoefficient,
        String coefficientsSource,
        OptionalDouble specificGravity,
        String specificGravitySource) {
    /** Density of water in kilograms per cubic metre. */
    private static final double WATER = 1000;
    /** Moisture content in percent at which the volume behind the specific gravity is taken. */
    private static final double USUAL_MOISTURE = 12;
    /** A share of a coefficient that counts as none: what is left of a right angle in radians. */
    private static final double NONE = 1e-12;

    private static final String STATED = "stated in the document";

    /**
     * A wood as a document states it.
     *
     * @param stated what it states
     * @param known what the table has of the wood, or null
     */
    static WoodSpecies of(WoodRequest stated, WoodSpecies known) {
        WoodSpecies rest = known == null
                ? new WoodSpecies(
                        stated.name().strip(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        STATED,
                        OptionalDouble.empty(),
                        null)
                : known;
        boolean moved = stated.radialCoefficient() != null || stated.tangentialCoefficient() != null;
        boolean weighed = stated.density() != null;
        return new WoodSpecies(
                rest.name,
                either(stated.radialCoefficient(), rest.radialCoefficient),
                either(stated.tangentialCoefficient(), rest.tangentialCoefficient),
                moved ? STATED : rest.coefficientsSource,
                weighed ? OptionalDouble.of(stated.density() / density(1, USUAL_MOISTURE)) : rest.specificGravity,
                weighed ? STATED : rest.specificGravitySource);
    }

    private static OptionalDouble either(Double stated, OptionalDouble known) {
        return stated == null ? known : OptionalDouble.of(stated);
    }

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
                ? OptionalDouble.of(density(specificGravity.getAsDouble(), moisture))
                : OptionalDouble.empty();
    }

    private static double density(double gravity, double moisture) {
        return gravity * (1 + moisture / 100) * WATER;
    }

    /**
     * Dimensional change coefficient in a direction across the grain, per percent of moisture content: {@code CT cos^2
     * + CR sin^2} of its angle to the growth rings. That is tangential along the rings and radial square to them; in
     * between it neglects the shear of the section, which turns a square one into a rhombus. Common practice, no
     * source.
     *
     * @param angleToRings angle between the direction and the growth rings, in radians
     * @return nothing where a coefficient that has a part in it is not known
     */
    public OptionalDouble coefficient(double angleToRings) {
        double cos = Math.cos(angleToRings);
        double sin = Math.sin(angleToRings);
        boolean known = (tangentialCoefficient.isPresent() || cos * cos < NONE)
                && (radialCoefficient.isPresent() || sin * sin < NONE);
        return known
                ? OptionalDouble.of(
                        tangentialCoefficient.orElse(0) * cos * cos + radialCoefficient.orElse(0) * sin * sin)
                : OptionalDouble.empty();
    }
}
