package org.orbwright.tolerance;

import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import org.orbwright.design.DesignRequest;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

/**
 * A design, how exactly its parts are cut, and how large a gap the glue bridges.
 *
 * @param design the design
 * @param errors the errors of cutting
 * @param glueBridges largest gap that the glue bridges, or null
 * @param samples solids to simulate, or null
 * @param seed seed of the simulation, or null
 */
@Describe("A design, how exactly its parts are cut, and how large a gap the glue bridges.")
public record ToleranceRequest(
        @NotNull @Valid DesignRequest design,
        @NotNull @Valid ErrorsRequest errors,

        @Describe(
                value = "Largest gap that the glue bridges; 0.1 mm if left out (common practice, no source). Within"
                        + " 0.000001 mm of it a gap counts as bridged.",
                quantity = Quantity.LENGTH,
                example = "0.1",
                optional = true)
        @DecimalMin("0")
        @DecimalMax("100")
        Double glueBridges,

        @Describe(value = "Solids to simulate; 100000 if left out.", example = "100000", optional = true)
        @Min(100)
        @Max(1_000_000)
        Integer samples,

        @Describe(
                value = "Seed of the simulation: the same one gives the same answer; 1 if left out.",
                example = "1",
                optional = true)
        @Min(0)
        @Max(Integer.MAX_VALUE)
        Integer seed) {

    /** The largest setting error of an angle, in degrees. */
    static final int LARGEST_ANGLE = 30;

    /** The errors of cutting. */
    @Describe("The errors of cutting; what is left out is 0. Panels are taken to lie inner face down for the bevel"
            + " cut, as"
            + " /v1/jig has it, with the fence at the rim, so that what they are too thick or too thin shows"
            + " outside; the"
            + " segments of a panel are taken to share no cut with each other, so where the bands read the"
            + " same from both"
            + " edges they have to be mixed before they are glued up.")
    public record ErrorsRequest(
            @Describe(
                    value = "The tip angle of a segment, between its two sawn legs: twice what a mitre gauge is off,"
                            + " where the blank is turned over between cuts.",
                    optional = true)
            @Valid
            AngleErrorRequest tipAngle,

            @Describe(
                    value = "The bevel of a panel, which is off as much as the blade tilt the other way: a blade"
                            + " that is"
                            + " tilted too far makes the bevel too small, below 0 here. Every edge has a cut"
                            + " of its own.",
                    optional = true)
            @Valid
            AngleErrorRequest bevel,

            @Describe(
                    value = "The width of the blank that segments are cut from, beyond the sum of its bands, half of it"
                            + " on either edge; for tilted bands that of the stick.",
                    optional = true)
            @Valid
            LengthErrorRequest blankWidth,

            @Describe(value = "The width of each band.", optional = true) @Valid
            LengthErrorRequest bandWidth,

            @Describe(
                    value = "The thickness of a panel, which is added to its land: the saw cuts to a height over the"
                            + " inner face.",
                    optional = true)
            @Valid
            LengthErrorRequest panelThickness,

            @Describe(
                    value = "The stop at the saw, which sets the base of each segment: above 0 the base is too long.",
                    optional = true)
            @Valid
            LengthErrorRequest stop) {}

    /** How far an angle is off. */
    @Describe("How far an angle is off; what is left out is 0.")
    public record AngleErrorRequest(
            @Describe(
                    value = "Setting error: by how much every cut is too large, below 0 too small.",
                    quantity = Quantity.ANGLE,
                    example = "-0.03",
                    optional = true)
            @DecimalMin("-" + LARGEST_ANGLE)
            @DecimalMax("" + LARGEST_ANGLE)
            Double setting,

            @Describe(
                    value = "Scatter: the standard deviation from piece to piece around the setting.",
                    quantity = Quantity.ANGLE,
                    example = "0.02",
                    optional = true)
            @DecimalMin("0")
            @DecimalMax("10")
            Double scatter) {}

    /** How far a length is off. */
    @Describe("How far a length is off; what is left out is 0.")
    public record LengthErrorRequest(
            @Describe(
                    value = "Setting error: by how much every piece is too large, below 0 too small.",
                    quantity = Quantity.LENGTH,
                    example = "0.1",
                    optional = true)
            @DecimalMin("-1000")
            @DecimalMax("1000")
            Double setting,

            @Describe(
                    value = "Scatter: the standard deviation from piece to piece around the setting.",
                    quantity = Quantity.LENGTH,
                    example = "0.05",
                    optional = true)
            @DecimalMin("0")
            @DecimalMax("1000")
            Double scatter) {}
}
