package org.orbwright.movement;

import static java.util.Objects.requireNonNullElse;

import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.orbwright.design.Copies;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.Places;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

@Describe("The moisture of the stock and of the sphere's home, and how the growth rings lie in the strips.")
public record MovementRequest(
        @NotNull @Valid ClimateRequest stock,
        @NotNull @Valid HomeRequest home,

        @Describe(
                value = "How the growth rings lie in the strips; those that are left out are flat-sawn: the rings run"
                        + " along their width.",
                optional = true)
        @Size(max = 360)
        List<@NotNull @Valid GrainRequest> grain) {

    /** Copies the list of grains. */
    public MovementRequest {
        grain = Copies.of(grain);
    }

    /** The same with everything filled in. */
    public MovementRequest filled() {
        return new MovementRequest(stock, home, requireNonNullElse(grain, List.of()));
    }

    /** The air that wood has come to rest in, or its moisture content. */
    @Describe("How moist the wood is: either its moisture content as a meter reads it, or the temperature and the"
            + " relative humidity of the air. The wood has lain in that air until its moisture no longer changes. The"
            + " equation behind the air is for Sitka spruce; other woods depart from it.")
    public record ClimateRequest(
            @Describe(
                    value = "Temperature of the air, in degrees Celsius whatever the unit of lengths is. The equation"
                            + " behind it is published for -1.1 to 132.2; no wood is kept above 100.",
                    quantity = Quantity.CELSIUS,
                    example = "20",
                    optional = true)
            @DecimalMin("-1.1")
            @DecimalMax("100")
            Double temperature,

            @Describe(
                    value = "Relative humidity of the air. The equation behind it is published for 5 to 95.",
                    quantity = Quantity.PERCENT,
                    example = "45",
                    optional = true)
            @DecimalMin("0")
            @DecimalMax("98")
            Double relativeHumidity,

            @Describe(
                    value = "Moisture content of the wood, water over ovendry mass. Above 30 wood does not move. Green"
                            + " wood holds up to 249 (Wood Handbook, FPL-GTR-190, Table 4-1).",
                    quantity = Quantity.PERCENT,
                    example = "8",
                    optional = true)
            @DecimalMin("0")
            @DecimalMax("250")
            Double moistureContent) {}

    @Describe("The seasons of the place where the sphere will be: in heated rooms winter is the driest.")
    public record HomeRequest(
            @NotNull @Valid ClimateRequest driest,
            @NotNull @Valid ClimateRequest dampest) {}

    @Describe("How the growth rings lie in one strip.")
    public record GrainRequest(
            @Describe(
                    value = "The face kind of the strip's lamination; may be left out for a solid that has only one.",
                    example = "\"triangle\"",
                    optional = true)
            @Size(max = 40)
            String face,

            @Describe(
                    value = "Which lamination of the face kind, where every other segment has its own.",
                    example = "\"ODD\"",
                    optional = true)
            Places places,

            @Describe(value = "The band's number in the lamination, from 1 at the base.", example = "1")
            @NotNull
            @Min(1)
            @Max(DesignRequest.MAX_BANDS)
            Integer band,

            @Describe(
                    value = "How the growth rings lie in the strip; left out where the ring angle is stated.",
                    example = "\"QUARTER_SAWN\"",
                    optional = true)
            GrainOrientation orientation,

            @Describe(
                    value = "Angle between the growth rings and the strip's width, as the end of the strip shows it, in"
                            + " place of an orientation: 0 for flat-sawn, 90 for quarter-sawn.",
                    quantity = Quantity.ANGLE,
                    example = "70",
                    optional = true)
            @DecimalMin("0")
            @DecimalMax("90")
            Double ringAngle) {}
}
