package org.orbwright.tolerance;

import static java.util.Objects.requireNonNullElse;

import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Quantity;

@Describe("How exactly parts are cut, and how large a gap the glue bridges.")
public record ToleranceRequest(
        @Describe(
                value =
                        "The errors of cutting; none if left out, which still answers how exactly the saw has to be set.",
                optional = true)
        @Valid
        ErrorsRequest errors,

        @Describe(
                value =
                        "Largest gap that the glue bridges; 0.1 mm or 0.004 in if left out (common practice, no source). Within"
                                + " 0.000001 mm of it a gap counts as bridged.",
                quantity = Quantity.LENGTH,
                usual = {0.01, 2},
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

    /** What is usual: no errors. */
    public static final ToleranceRequest USUAL = new ToleranceRequest(null, null, null, null);

    /** The same with everything filled in. */
    public ToleranceRequest filled(LengthUnit unit) {
        return new ToleranceRequest(
                requireNonNullElse(errors, new ErrorsRequest(null, null, null, null, null, null, null, null))
                        .filled(),
                requireNonNullElse(glueBridges, unit.usual(0.1, 0.004)),
                requireNonNullElse(samples, 100_000),
                requireNonNullElse(seed, 1));
    }

    /** The largest setting error of an angle, in degrees. */
    static final int LARGEST_ANGLE = 30;

    @Describe("The errors of cutting; what is left out is 0. Panels are taken to lie inner face down for the bevel"
            + " cut, with the fence at the rim, as in /v1/jig. So the error of a panel's thickness shows outside. The"
            + " segments of a panel are taken to share no cut with each other. Where the bands read the same from both"
            + " edges, mix the segments before they are glued up.")
    public record ErrorsRequest(
            @Describe(
                    value = "The tip angle of a segment, between its two sawn legs: twice what a mitre gauge is off,"
                            + " where the blank is turned over between cuts.",
                    optional = true)
            @Valid
            AngleErrorRequest tipAngle,

            @Describe(
                    value = "The bevel of a panel, which is off as much as the blade tilt the other way: a blade that"
                            + " is tilted too far makes the bevel too small, below 0 here. Every edge has a cut of its"
                            + " own.",
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
            LengthErrorRequest stop,

            @Describe(
                    value = "The lean of the sawn legs from square to the face, by a blade that is not square to the"
                            + " table; above 0 the outer face comes out larger. With the blank turned over between"
                            + " cuts both legs lean alike. With a gauge swung from side to side they lean against"
                            + " each other, their joints close, and this is 0.",
                    optional = true)
            @Valid
            AngleErrorRequest square,

            @Describe(
                    value = "By how much more a leg leans at the rim than at the tip; 0 if left out. With the blank"
                            + " turned over between cuts a tilt that drifts along the cut evens out: one leg of each"
                            + " joint is sawn from the tip, the other from the rim. Then this is 0, and square is the"
                            + " mean along the cut.",
                    quantity = Quantity.ANGLE,
                    example = "0.05",
                    optional = true)
            @DecimalMin("-" + LARGEST_ANGLE)
            @DecimalMax("" + LARGEST_ANGLE)
            Double squareDrift) {

        private ErrorsRequest filled() {
            return new ErrorsRequest(
                    filled(tipAngle),
                    filled(bevel),
                    filled(blankWidth),
                    filled(bandWidth),
                    filled(panelThickness),
                    filled(stop),
                    filled(square),
                    requireNonNullElse(squareDrift, 0.0));
        }

        private static AngleErrorRequest filled(AngleErrorRequest asked) {
            return asked == null
                    ? new AngleErrorRequest(0.0, 0.0)
                    : new AngleErrorRequest(
                            requireNonNullElse(asked.setting(), 0.0), requireNonNullElse(asked.scatter(), 0.0));
        }

        private static LengthErrorRequest filled(LengthErrorRequest asked) {
            return asked == null
                    ? new LengthErrorRequest(0.0, 0.0)
                    : new LengthErrorRequest(
                            requireNonNullElse(asked.setting(), 0.0), requireNonNullElse(asked.scatter(), 0.0));
        }
    }

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

    @Describe("How far a length is off; what is left out is 0.")
    public record LengthErrorRequest(
            @Describe(
                    value = "Setting error: by how much every piece is too large, below 0 too small.",
                    quantity = Quantity.LENGTH,
                    usual = {0.005, 2},
                    example = "0.1",
                    optional = true)
            @DecimalMin("-1000")
            @DecimalMax("1000")
            Double setting,

            @Describe(
                    value = "Scatter: the standard deviation from piece to piece around the setting.",
                    quantity = Quantity.LENGTH,
                    usual = {0.005, 2},
                    example = "0.05",
                    optional = true)
            @DecimalMin("0")
            @DecimalMax("1000")
            Double scatter) {}
}
