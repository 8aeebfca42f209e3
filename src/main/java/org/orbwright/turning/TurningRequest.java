package org.orbwright.turning;

import static java.util.Objects.requireNonNullElse;
import static org.orbwright.quantity.Quantity.LENGTH;
import static org.orbwright.quantity.Quantity.MINUTES;
import static org.orbwright.quantity.Quantity.STRESS;
import static org.orbwright.quantity.Quantity.TURNS;

import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.orbwright.design.Copies;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.LengthUnit;

@Describe("How the work is held, turned and finished.")
public record TurningRequest(
        @Describe(value = "The first axis; the one through face 1 if left out.", optional = true) @Valid
        AxisRequest axis,

        @Describe(value = "The mounting discs; the largest that fit if left out.", optional = true) @Valid
        DiscsRequest discs,

        @Describe(value = "The cup chucks that the sphere is reversed in; none if left out.", optional = true) @Valid
        CupRequest cup,

        @Describe(value = "How the solid is roughed out; what is usual if left out.", optional = true) @Valid
        RoughingRequest roughing,

        @Describe(value = "A speed, and what glue lines bear; the rule of thumb alone if left out.", optional = true)
        @Valid
        SpeedRequest speed,

        @Describe(value = "Sanding and coats; none if left out.", optional = true) @Valid
        FinishRequest finish,

        @Describe(value = "How fast the caller works; no times if left out.", optional = true) @Valid
        RatesRequest rates) {

    /** What is usual. */
    public static final TurningRequest USUAL = new TurningRequest(null, null, null, null, null, null, null);

    /** The same with everything filled in; gauges and the discs' diameter follow from the sphere. */
    public TurningRequest filled(LengthUnit unit) {
        return new TurningRequest(
                AxisRequest.filled(axis),
                requireNonNullElse(discs, new DiscsRequest(null, null, null, null, null))
                        .filled(unit),
                cup == null ? null : cup.filled(unit),
                requireNonNullElse(roughing, new RoughingRequest(null, null, null))
                        .filled(),
                speed == null ? null : speed.filled(),
                finish == null ? null : finish.filled(),
                rates);
    }

    @Describe("The mounting discs at both ends of the axis, alike.")
    public record DiscsRequest(
            @Describe(
                    value = "Diameter. If left out it is the largest that fits on the panel. At a corner or an edge it"
                            + " is the largest ring on which the wood stands clear of the sphere all around.",
                    quantity = LENGTH,
                    usual = {15, 500},
                    example = "80",
                    optional = true)
            @DecimalMin("0.1")
            @DecimalMax("100000")
            Double diameter,

            @Describe(
                    value = "Diameter of the wood that is left under each disc until the sphere is reversed; the"
                            + " disc's if left out.",
                    quantity = LENGTH,
                    usual = {8, 400},
                    example = "40",
                    optional = true)
            @DecimalMin("0.1")
            @DecimalMax("100000")
            Double neck,

            @Describe(
                    value = "Room that the tool needs beside a disc, along the axis; 5 mm or 0.2 in if left out"
                            + " (common practice, no source).",
                    quantity = LENGTH,
                    usual = {1, 60},
                    example = "6",
                    optional = true)
            @DecimalMin("0")
            @DecimalMax("10000")
            Double clearance,

            @Describe(
                    value = "Diameter of a hole through the middle of each disc; none if left out.",
                    quantity = LENGTH,
                    usual = {2, 100},
                    example = "10",
                    optional = true)
            @DecimalMin("0.1")
            @DecimalMax("100000")
            Double centreHole,

            @Describe(value = "The screws or bolts that hold a disc; none if left out.", optional = true) @Valid
            ScrewsRequest screws) {

        DiscsRequest filled(LengthUnit unit) {
            return new DiscsRequest(
                    diameter, neck, requireNonNullElse(clearance, unit.usual(5, 0.2)), centreHole, screws);
        }
    }

    @Describe("The screws or bolts of a disc.")
    public record ScrewsRequest(
            @Describe(
                    value = "Length below the head.",
                    quantity = LENGTH,
                    usual = {5, 200},
                    example = "30")
            @NotNull
            @DecimalMin("0.1")
            @DecimalMax("10000")
            Double length,

            @Describe(
                    value = "How deep they go into the panel.",
                    quantity = LENGTH,
                    usual = {2, 100},
                    example = "12")
            @NotNull
            @DecimalMin("0.1")
            @DecimalMax("10000")
            Double bite,

            @Describe(
                    value = "Diameter of the circle that they stand on.",
                    quantity = LENGTH,
                    usual = {8, 400},
                    example = "50")
            @NotNull
            @DecimalMin("0.1")
            @DecimalMax("100000")
            Double circle) {}

    @Describe("Two cup chucks that hold the sphere between them, the live one in the tailstock.")
    public record CupRequest(
            @Describe(
                    value = "Diameter of the circle on which a cup touches the sphere.",
                    quantity = LENGTH,
                    usual = {15, 600},
                    example = "90")
            @NotNull
            @DecimalMin("0.1")
            @DecimalMax("100000")
            Double rim,

            @Describe(
                    value = "Room that the tool needs beside a cup, along the axis; 5 mm or 0.2 in if left out"
                            + " (common practice, no source).",
                    quantity = LENGTH,
                    usual = {1, 60},
                    example = "6",
                    optional = true)
            @DecimalMin("0")
            @DecimalMax("10000")
            Double clearance) {

        CupRequest filled(LengthUnit unit) {
            return new CupRequest(rim, requireNonNullElse(clearance, unit.usual(5, 0.2)));
        }
    }

    @Describe("How the solid is roughed out.")
    public record RoughingRequest(
            @Describe(
                    value = "Depth of a pass, square to the sphere; no passes are listed if left out.",
                    quantity = LENGTH,
                    usual = {0.3, 30},
                    example = "2",
                    optional = true)
            @DecimalMin("0.01")
            @DecimalMax("1000")
            Double passDepth,

            @Describe(
                    value = "Places from the middle to the end of the sphere that diameters are listed at; 11 if left"
                            + " out.",
                    example = "11",
                    optional = true)
            @Min(2)
            @Max(200)
            Integer stations,

            @Describe(
                    value = "Inner diameters of ring gauges, or chords of templates; a quarter, a half and three"
                            + " quarters of the sphere's if left out.",
                    quantity = LENGTH,
                    usual = {10, 1500},
                    example = "[60, 120]",
                    optional = true)
            @Size(min = 1, max = 50)
            List<@NotNull @DecimalMin("0.1") @DecimalMax("100000") Double> rings) {

        public RoughingRequest {
            rings = Copies.of(rings);
        }

        RoughingRequest filled() {
            return new RoughingRequest(passDepth, requireNonNullElse(stations, 11), rings);
        }
    }

    @Describe("A speed, and what glue lines bear. Neither is called safe by being stated.")
    public record SpeedRequest(
            @Describe(
                    value = "A speed to state surface speeds and loads at.",
                    quantity = TURNS,
                    example = "400",
                    optional = true)
            @DecimalMin("1")
            @DecimalMax("10000")
            Double turns,

            @Describe(
                    value = "Strength of a glue line in tension, as its data sheet or the caller's own tests say.",
                    quantity = STRESS,
                    example = "3",
                    optional = true)
            @DecimalMin("0.001")
            @DecimalMax("200")
            Double glueStrength,

            @Describe(
                    value = "What the strength is divided by, for voids, end grain, impact and age; 20 if left out"
                            + " (common practice, no source).",
                    example = "20",
                    optional = true)
            @DecimalMin("1")
            @DecimalMax("1000")
            Double strengthDivisor) {

        SpeedRequest filled() {
            return new SpeedRequest(
                    turns,
                    glueStrength,
                    glueStrength == null ? strengthDivisor : requireNonNullElse(strengthDivisor, 20.0));
        }
    }

    @Describe("Sanding and coats.")
    public record FinishRequest(
            @Describe(value = "The grits in their order, with what each takes off; none if left out.", optional = true)
            @Size(min = 1, max = 20)
            List<@NotNull @Valid GritRequest> grits,

            @Describe(value = "Coats of finish; none if left out.", example = "3", optional = true) @Min(1) @Max(50)
            Integer coats,

            @Describe(
                    value = "Area that a litre of finish covers in one coat, in square metres, as its data sheet says;"
                            + " 12 if left out (common practice, no source).",
                    example = "12",
                    optional = true)
            @DecimalMin("0.1")
            @DecimalMax("100")
            Double coverage,

            @Describe(
                    value = "Hours that a coat dries before the next, as its data sheet says; 24 if left out (common"
                            + " practice, no source).",
                    example = "24",
                    optional = true)
            @DecimalMin("0.1")
            @DecimalMax("1000")
            Double hoursPerCoat) {

        public FinishRequest {
            grits = Copies.of(grits);
        }

        FinishRequest filled() {
            return new FinishRequest(
                    grits, coats, requireNonNullElse(coverage, 12.0), requireNonNullElse(hoursPerCoat, 24.0));
        }
    }

    @Describe("One grit.")
    public record GritRequest(
            @Describe(value = "Its number.", example = "120") @NotNull @Min(8) @Max(10000)
            Integer grit,

            @Describe(
                    value = "What it takes off the surface: at least the scratches of the grit before.",
                    quantity = LENGTH,
                    usual = {0.003, 1},
                    example = "0.1")
            @NotNull
            @DecimalMin("0")
            @DecimalMax("10")
            Double allowance) {}

    @Describe("How fast the caller works; what is left out takes no time.")
    public record RatesRequest(
            @Describe(
                    value = "To fix the discs and mount the work.",
                    quantity = MINUTES,
                    example = "30",
                    optional = true)
            @DecimalMin("0")
            @DecimalMax("10000")
            Double mounting,

            @Describe(value = "Wood roughed away in a minute, in cubic centimetres.", example = "40", optional = true)
            @DecimalMin("0.1")
            @DecimalMax("100000")
            Double roughing,

            @Describe(
                    value = "Surface of the sphere finished with the tool in a minute, in square centimetres.",
                    example = "20",
                    optional = true)
            @DecimalMin("0.1")
            @DecimalMax("100000")
            Double finishing,

            @Describe(value = "For each reversal of the sphere.", quantity = MINUTES, example = "10", optional = true)
            @DecimalMin("0")
            @DecimalMax("10000")
            Double reversal,

            @Describe(value = "For each grit.", quantity = MINUTES, example = "8", optional = true)
            @DecimalMin("0")
            @DecimalMax("10000")
            Double perGrit,

            @Describe(value = "For each coat.", quantity = MINUTES, example = "15", optional = true)
            @DecimalMin("0")
            @DecimalMax("10000")
            Double perCoat) {}
}
