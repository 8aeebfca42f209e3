package org.orbwright.design;

import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Quantity;

/**
 * A design as its author writes it: lengths in {@code unit}, angles in degrees, optional fields null where left out.
 * The bounds here only keep numbers sane; whether the design can exist is decided by {@link Design#of}.
 *
 * @param name a title for print-outs, or null
 * @param unit the unit of every length
 * @param solid the solid's name in the catalogue
 * @param copies the number of spheres, or null for one
 * @param size how large the solid is
 * @param panel thickness and land of the panels
 * @param laminations one for each face kind of the solid
 * @param saw what the saw takes away
 * @param blank the glued-up blank
 * @param sphere the finished sphere
 */
@Describe("A design: one hollow solid of laminated segments, to be turned into a sphere. An answer repeats it as it was"
        + " understood, with everything filled in that was left out.")
public record DesignRequest(
        @Describe(value = "A title for print-outs.", example = "\"Boathouse lantern (invented)\"", optional = true)
        @Size(max = 120)
        String name,

        @Describe(value = "The unit of every length in the design and in its answer.", example = "\"mm\"") @NotNull
        LengthUnit unit,

        @Describe(value = "The solid, by its name in the catalogue (GET /v1/solids).", example = "\"dodecahedron\"")
        @NotBlank
        @Size(max = 60)
        String solid,

        @Describe(value = "How many spheres are wanted; 1 if left out.", example = "2", optional = true)
        @Min(1)
        @Max(1000)
        Integer copies,

        @NotNull @Valid SizeRequest size,
        @NotNull @Valid PanelRequest panel,

        @Describe("The laminations: one for each face kind of the solid, or two where every other segment has its own.")
        @NotNull
        @Size(min = 1, max = 6)
        List<@NotNull @Valid LaminationRequest> laminations,

        @NotNull @Valid SawRequest saw,
        @NotNull @Valid BlankRequest blank,
        @NotNull @Valid SphereRequest sphere) {

    /** The most bands that a lamination may have. */
    public static final int MAX_BANDS = 60;

    /** Copies the list of laminations, so that the record stays as it was validated. */
    public DesignRequest {
        laminations = Copies.of(laminations);
    }

    /** The same design with other laminations. */
    public DesignRequest withLaminations(List<LaminationRequest> others) {
        return new DesignRequest(name, unit, solid, copies, size, panel, others, saw, blank, sphere);
    }

    /** How large the solid is. */
    @Describe("How large the solid is.")
    public record SizeRequest(
            @Describe(value = "What the value measures.", example = "\"ACROSS_FLATS\"") @NotNull
            SizeBy by,

            @Describe(
                    value = "The measure: across two opposite flats of the solid, its shortest edge, or the finished"
                            + " sphere's diameter (the solid then measures that and twice the turning allowance"
                            + " across flats).",
                    quantity = Quantity.LENGTH,
                    example = "177.8")
            @NotNull
            @DecimalMin("0.001")
            @DecimalMax("100000")
            Double value) {}

    /** Thickness and land of the panels. */
    @Describe("The panels, glued up and flat.")
    public record PanelRequest(
            @Describe(value = "Thickness of the panels.", quantity = Quantity.LENGTH, example = "28")
            @NotNull
            @DecimalMin("0.001")
            @DecimalMax("10000")
            Double thickness,

            @Describe(
                    value = "Height of the square strip left at the panel's outer rim when the bevel does not use the"
                            + " full thickness; 0 if left out.",
                    quantity = Quantity.LENGTH,
                    example = "4",
                    optional = true)
            @DecimalMin("0")
            @DecimalMax("10000")
            Double land) {}

    /** The bands of one face kind's segments. */
    @Describe("The lamination from which the segments of one face kind are cut.")
    public record LaminationRequest(
            @Describe(
                    value = "The face kind; may be left out for a solid that has only one.",
                    example = "\"pentagon\"",
                    optional = true)
            @Size(max = 40)
            String face,

            @Describe(
                    value = "Which of the panel's segments the lamination is for: all, or every other one,"
                            + " with a second lamination for the others; ALL if left out.",
                    example = "\"ALL\"",
                    optional = true)
            Places places,

            @Describe(
                    value = "How far the bands are turned from running parallel to the base, -90 to 90; positive is"
                            + " counter-clockwise, seen from outside with the base down, so that they rise to"
                            + " the right. 0 if left out, 90 for bands from tip to base.",
                    quantity = Quantity.ANGLE,
                    example = "0",
                    optional = true)
            @DecimalMin("-90")
            @DecimalMax("90")
            Double bandAngle,

            @Describe(
                    value = "Whether every other segment is turned face down, so that tilted bands lean the"
                            + " other way and meet in a chevron; false if left out.",
                    example = "false",
                    optional = true)
            Boolean chevron,

            @Describe("The bands, from the base to the tip. Their widths add up to the base distance; with a band angle"
                    + " they cover the extent of the segment square to the bands.")
            @NotNull
            @Size(min = 1, max = MAX_BANDS)
            List<@NotNull @Valid BandRequest> bands) {

        /** Copies the list of bands. */
        public LaminationRequest {
            bands = Copies.of(bands);
        }

        /** A lamination for every segment of a face kind, all the same way up. */
        public LaminationRequest(String face, Double bandAngle, List<BandRequest> bands) {
            this(face, null, bandAngle, null, bands);
        }

        /** The same lamination with other bands. */
        public LaminationRequest withBands(List<BandRequest> others) {
            return new LaminationRequest(face, places, bandAngle, chevron, others);
        }
    }

    /** One strip of a lamination. */
    @Describe("One strip of a lamination.")
    public record BandRequest(
            @Describe(value = "The wood, in words.", example = "\"black walnut\"") @NotBlank @Size(max = 60)
            String species,

            @Describe(
                    value = "Width of the strip; null or left out for one band that takes the rest.",
                    quantity = Quantity.LENGTH,
                    example = "20",
                    optional = true)
            @DecimalMin("0.001")
            @DecimalMax("10000")
            Double width) {}

    /** What the saw takes away. */
    @Describe("What the saw takes away.")
    public record SawRequest(
            @Describe(value = "Width of the saw cut.", quantity = Quantity.LENGTH, example = "3.2")
            @NotNull
            @DecimalMin("0")
            @DecimalMax("100")
            Double kerf,

            @Describe(
                    value = "Length cut off each end of the blank before the first segment; 0 if left out.",
                    quantity = Quantity.LENGTH,
                    example = "12",
                    optional = true)
            @DecimalMin("0")
            @DecimalMax("10000")
            Double endTrim) {}

    /** The glued-up blank. */
    @Describe("The edge-glued blank from which segments are cut.")
    public record BlankRequest(
            @Describe(value = "Length of the blank.", quantity = Quantity.LENGTH, example = "584")
            @NotNull
            @DecimalMin("0.001")
            @DecimalMax("100000")
            Double length) {}

    /** The finished sphere. */
    @Describe("The finished sphere.")
    public record SphereRequest(
            @Describe(
                    value = "Diameter of the finished sphere; if left out, the largest that the solid allows less twice"
                            + " the turning allowance.",
                    quantity = Quantity.LENGTH,
                    example = "172",
                    optional = true)
            @DecimalMin("0.001")
            @DecimalMax("100000")
            Double diameter,

            @Describe(
                    value = "Wood to be turned away at the middle of the lowest face before the sphere is reached.",
                    quantity = Quantity.LENGTH,
                    example = "2")
            @NotNull
            @DecimalMin("0")
            @DecimalMax("10000")
            Double turningAllowance,

            @Describe(
                    value = "The thinnest wall that is acceptable anywhere in the finished sphere.",
                    quantity = Quantity.LENGTH,
                    example = "6")
            @NotNull
            @DecimalMin("0")
            @DecimalMax("10000")
            Double minimumWall) {}
}
