package org.orbwright.inlay;

import static java.util.Objects.requireNonNullElse;

import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Quantity;

/**
 * An inlay for the panels of one face kind.
 *
 * @param face the face kind that gets the inlays, or null for a solid with one
 * @param shape what is set in
 * @param rimThickness thickness of the inlay that has to remain at its rim, or null for what is usual
 * @param floor wood that has to remain between the pocket and the hollow, or null for the minimum wall
 * @param chipOut length that saws chip off the segments' tips, or null for none
 * @param panels numbers of the panels that get an inlay, or null for all of the face kind
 * @param motifs names of the motifs that are shared out, or null for none
 */
@Describe("An inlay for the panels of one face kind.")
public record InlayRequest(
        @Describe(
                value = "The face kind that gets the inlays; may be left out for a solid that has only one.",
                example = "\"triangle\"",
                optional = true)
        @Size(max = 40)
        String face,

        @NotNull @Valid ShapeRequest shape,

        @Describe(
                value = "Thickness of the inlay that has to remain at its rim after turning; 1.5 mm or 0.06 in if left"
                        + " out, which survives sanding (common practice, no source).",
                quantity = Quantity.LENGTH,
                usual = {0.3, 12},
                example = "1.5",
                optional = true)
        @DecimalMin("0")
        @DecimalMax("1000")
        Double rimThickness,

        @Describe(
                value = "Wood that has to remain between the bottom of the pocket and the hollow; the minimum wall of"
                        + " the sphere if left out.",
                quantity = Quantity.LENGTH,
                usual = {1, 60},
                example = "5",
                optional = true)
        @DecimalMin("0")
        @DecimalMax("1000")
        Double floor,

        @Describe(
                value = "Length that the saw chips off each segment's tip, measured along the joint; none if left out.",
                quantity = Quantity.LENGTH,
                usual = {0.1, 25},
                example = "2",
                optional = true)
        @DecimalMin("0")
        @DecimalMax("1000")
        Double chipOut,

        @Describe(
                value = "Numbers of the panels that get an inlay, as the catalogue numbers the solid's faces from 0;"
                        + " all of"
                        + " the face kind if left out.",
                example = "[0, 3, 7]",
                optional = true)
        @Size(min = 1, max = 200)
        List<@NotNull @Min(0) @Max(200) Integer> panels,

        @Describe(
                value = "Names of the motifs that are shared out over these panels, as far apart as they can be;"
                        + " none if"
                        + " left out.",
                example = "[\"anchor\", \"gull\"]",
                optional = true)
        @Size(min = 1, max = 200)
        List<@NotBlank @Size(max = 40) String> motifs) {

    /** Copies the lists. */
    public InlayRequest {
        panels = panels == null ? null : Collections.unmodifiableList(new ArrayList<>(panels));
        motifs = motifs == null ? null : Collections.unmodifiableList(new ArrayList<>(motifs));
    }

    /**
     * The same with everything filled in.
     *
     * @param minimumWall the minimum wall of the design, in its unit
     */
    public InlayRequest filled(LengthUnit unit, double minimumWall) {
        return new InlayRequest(
                face,
                shape,
                requireNonNullElse(rimThickness, unit.usual(1.5, 0.06)),
                requireNonNullElse(floor, minimumWall),
                requireNonNullElse(chipOut, 0.0),
                panels,
                motifs);
    }

    /** Kinds of shape. */
    public enum ShapeKind {
        /** A round disc. */
        DISC,
        /** A regular polygon with one side parallel to a base of the panel. */
        POLYGON
    }

    /** What is set in. */
    @Describe("What is set into the panel's centre.")
    public record ShapeRequest(
            @Describe(
                    value = "A round disc, or a regular polygon with one side parallel to a base of the panel.",
                    example = "\"DISC\"")
            @NotNull
            ShapeKind kind,

            @Describe(value = "Sides of a polygon; left out for a disc.", example = "5", optional = true)
            @Min(3)
            @Max(24)
            Integer sides,

            @Describe(
                    value = "Diameter of the disc, or of the circle through the polygon's corners.",
                    quantity = Quantity.LENGTH,
                    usual = {5, 300},
                    example = "30")
            @NotNull
            @DecimalMin("0.001")
            @DecimalMax("10000")
            Double diameter) {}
}
