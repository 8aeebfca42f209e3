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
import org.orbwright.wood.WoodRequest;

/**
 * The design proper of a document: lengths in {@code unit}, angles in degrees, null where something is left out. The
 * bounds here only keep numbers sane; whether the design can exist is decided by {@link Design#of}.
 *
 * @param name a title for print-outs, or null
 * @param unit the unit of every length
 * @param solid the solid's name in the catalogue
 * @param copies the number of spheres, or null for one
 * @param sets which sets of segments the spheres are made from, or null for twins
 * @param invertedPanels numbers of the inverted panels, for {@link Sets#BY_PANEL} alone, otherwise null
 * @param spares what is made beyond the count, or null for nothing
 * @param size how large the solid is
 * @param panel thickness and land of the panels, or null
 * @param laminations one for each face kind of the solid, or null
 * @param woods woods that the table does not have, or has other numbers for, or null
 * @param saw what the saw takes away, or null
 * @param blank the glued-up blank, or null
 * @param sphere the finished sphere, or null
 */
public record DesignRequest(
        String name,
        LengthUnit unit,
        String solid,
        Integer copies,
        Sets sets,
        List<Integer> invertedPanels,
        SparesRequest spares,
        SizeRequest size,
        PanelRequest panel,
        List<LaminationRequest> laminations,
        List<WoodRequest> woods,
        SawRequest saw,
        BlankRequest blank,
        SphereRequest sphere) {

    /** The most bands that a lamination may have. */
    public static final int MAX_BANDS = 60;
    /** The most woods that a document may state itself: as many as a lamination may have bands. */
    public static final int MAX_WOODS = 60;

    /** Copies the lists, so that the record stays as it was validated. */
    public DesignRequest {
        invertedPanels = Copies.of(invertedPanels);
        laminations = Copies.of(laminations);
        woods = Copies.of(woods);
    }

    /** The same design with other laminations. */
    public DesignRequest withLaminations(List<LaminationRequest> others) {
        return with(copies, size, panel, others, blank, sphere);
    }

    /** The same design with other blanks. */
    public DesignRequest withBlank(BlankRequest other) {
        return with(copies, size, panel, laminations, other, sphere);
    }

    /** The same design with another size and sphere. */
    public DesignRequest withSphere(SizeRequest otherSize, SphereRequest other) {
        return with(copies, otherSize, panel, laminations, blank, other);
    }

    /** The same design with other panels. */
    public DesignRequest withPanel(PanelRequest other) {
        return with(copies, size, other, laminations, blank, sphere);
    }

    /** The same design so many times. */
    public DesignRequest withCopies(int count) {
        return with(count, size, panel, laminations, blank, sphere);
    }

    private DesignRequest with(
            Integer itsCopies,
            SizeRequest itsSize,
            PanelRequest itsPanel,
            List<LaminationRequest> its,
            BlankRequest itsBlank,
            SphereRequest itsSphere) {
        return new DesignRequest(
                name,
                unit,
                solid,
                itsCopies,
                sets,
                invertedPanels,
                spares,
                itsSize,
                itsPanel,
                its,
                woods,
                saw,
                itsBlank,
                itsSphere);
    }

    @Describe("Spares: what is made beyond the count, for spoilage. They raise every count: segments, blanks, strips"
            + " and wood.")
    public record SparesRequest(
            @Describe(
                    value = "Spare segments of each kind, in each set that is used; 0 if left out.",
                    example = "3",
                    optional = true)
            @Min(0)
            @Max(1000)
            Integer segments,

            @Describe(
                    value = "Spare strips of each band of each lamination; 0 if left out.",
                    example = "1",
                    optional = true)
            @Min(0)
            @Max(1000)
            Integer strips) {}

    @Describe("How large the solid is.")
    public record SizeRequest(
            @Describe(value = "What the value measures.", example = "\"ACROSS_FLATS\"") @NotNull
            SizeBy by,

            @Describe(
                    value = "The measure: across two opposite flats of the solid, its shortest edge, or the finished"
                            + " sphere's diameter. Across flats the solid then measures that diameter and twice the"
                            + " turning allowance.",
                    quantity = Quantity.LENGTH,
                    usual = {20, 1500},
                    example = "212")
            @NotNull
            @DecimalMin("0.001")
            @DecimalMax("100000")
            Double value) {}

    @Describe("The panels, glued up and flat.")
    public record PanelRequest(
            @Describe(
                    value = "Thickness of the panels. Whatever depends on it waits until it is stated.",
                    quantity = Quantity.LENGTH,
                    usual = {4, 120},
                    example = "30",
                    optional = true)
            @DecimalMin("0.001")
            @DecimalMax("10000")
            Double thickness,

            @Describe(
                    value = "Height of the square strip left at the panel's outer rim when the bevel does not use the"
                            + " full thickness; 0 if left out.",
                    quantity = Quantity.LENGTH,
                    usual = {0.3, 30},
                    example = "3",
                    optional = true)
            @DecimalMin("0")
            @DecimalMax("10000")
            Double land,

            @Describe(
                    value = "Layers of equal thickness that a panel is glued up of, face to face, where it is thicker"
                            + " than the stock; 1 if left out.",
                    example = "1",
                    optional = true)
            @Min(1)
            @Max(10)
            Integer layers) {

        /** Panels of one layer. */
        public PanelRequest(Double thickness, Double land) {
            this(thickness, land, null);
        }
    }

    @Describe("The lamination from which the segments of one face kind are cut.")
    public record LaminationRequest(
            @Describe(
                    value = "The face kind; may be left out for a solid that has only one.",
                    example = "\"triangle\"",
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

    @Describe("One strip of a lamination.")
    public record BandRequest(
            @Describe(value = "The wood, in words.", example = "\"white ash\"") @NotBlank @Size(max = 60)
            String species,

            @Describe(
                    value = "Width of the strip; null or left out for one band that takes the rest.",
                    quantity = Quantity.LENGTH,
                    usual = {0.5, 400},
                    example = "17",
                    optional = true)
            @DecimalMin("0.001")
            @DecimalMax("10000")
            Double width) {}

    @Describe("What the saw takes away.")
    public record SawRequest(
            @Describe(
                    value = "Width of the saw cut.",
                    quantity = Quantity.LENGTH,
                    usual = {0.5, 8},
                    example = "2.6")
            @NotNull
            @DecimalMin("0")
            @DecimalMax("100")
            Double kerf,

            @Describe(
                    value = "Length cut off each end of the blank before the first segment; 0 if left out.",
                    quantity = Quantity.LENGTH,
                    usual = {1, 150},
                    example = "10",
                    optional = true)
            @DecimalMin("0")
            @DecimalMax("10000")
            Double endTrim) {}

    @Describe("The edge-glued blank from which segments are cut.")
    public record BlankRequest(
            @Describe(
                    value = "Length of the blank.",
                    quantity = Quantity.LENGTH,
                    usual = {60, 5000},
                    example = "720")
            @NotNull
            @DecimalMin("0.001")
            @DecimalMax("100000")
            Double length) {}

    @Describe("The finished sphere.")
    public record SphereRequest(
            @Describe(
                    value = "Diameter of the finished sphere; if left out, the largest that the solid allows less twice"
                            + " the turning allowance.",
                    quantity = Quantity.LENGTH,
                    usual = {25, 1500},
                    example = "206",
                    optional = true)
            @DecimalMin("0.001")
            @DecimalMax("100000")
            Double diameter,

            @Describe(
                    value = "Wood to be turned away at the middle of the lowest face before the sphere is reached. If"
                            + " left out 2 mm, or 2 % of the measure across flats where that is less: room for the marks"
                            + " of roughing (common practice, no source).",
                    quantity = Quantity.LENGTH,
                    usual = {0.2, 40},
                    example = "2",
                    optional = true)
            @DecimalMin("0")
            @DecimalMax("10000")
            Double turningAllowance,

            @Describe(
                    value = "The thinnest wall that is acceptable anywhere in the finished sphere. If left out 6 mm,"
                            + " or a fifth of the sphere's radius where that is less. That leaves wood for an error of"
                            + " centring and for sanding (common practice, no source).",
                    quantity = Quantity.LENGTH,
                    usual = {1, 60},
                    example = "6",
                    optional = true)
            @DecimalMin("0")
            @DecimalMax("10000")
            Double minimumWall) {}
}
