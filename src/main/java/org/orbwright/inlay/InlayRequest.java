package org.orbwright.inlay;

import static java.util.Objects.requireNonNullElse;
import static org.orbwright.quantity.Quantity.LENGTH;
import static org.orbwright.quantity.Quantity.NUMBER;

import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.orbwright.design.Copies;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Rounding;

@Describe("An inlay for the panels of one face kind.")
public record InlayRequest(
        @Describe(
                value = "The face kind that gets the inlays; may be left out for a solid that has only one.",
                example = "\"triangle\"",
                optional = true)
        @Size(max = 40)
        String face,

        @Describe(
                value = "What is set in. If it is left out and chips are stated, it is the smallest round plug of whole"
                        + " steps that hides them; without chips nothing is set in.",
                optional = true)
        @Valid
        ShapeRequest shape,

        @Describe(
                value = "Thickness of the inlay that has to remain at its rim after turning; 1.5 mm or 0.06 in if left"
                        + " out, which survives sanding (common practice, no source).",
                quantity = LENGTH,
                usual = {0.3, 12},
                example = "1.5",
                optional = true)
        @DecimalMin("0")
        @DecimalMax("1000")
        Double rimThickness,

        @Describe(
                value = "Wood that has to remain between the bottom of the pocket and the hollow; the minimum wall of"
                        + " the sphere if left out.",
                quantity = LENGTH,
                usual = {1, 60},
                example = "5",
                optional = true)
        @DecimalMin("0")
        @DecimalMax("1000")
        Double floor,

        @Describe(value = "What breaks off the segments' tips at the saw; nothing if left out.", optional = true) @Valid
        ChipRequest chips,

        @Describe(
                value = "Distance from the tip, along the tip axis, at which the tips of all segments are compared; 5"
                        + " mm or 0.2 in if left out, and no more than half of the smallest base distance.",
                quantity = LENGTH,
                usual = {0.5, 60},
                example = "5",
                optional = true)
        @DecimalMin("0.001")
        @DecimalMax("1000")
        Double tipDistance,

        @Describe(
                value =
                        "Numbers of the panels that get an inlay, as the catalogue numbers the solid's faces; all of the"
                                + " face kind if left out.",
                quantity = NUMBER,
                example = "[1, 4, 8]",
                optional = true)
        @Size(min = 1, max = 200)
        List<@NotNull @Min(1) @Max(200) Integer> panels,

        @Describe(
                value =
                        "Names of the motifs that are shared out over these panels, as far apart as they can be; none if"
                                + " left out.",
                example = "[\"anchor\", \"gull\"]",
                optional = true)
        @Size(min = 1, max = 200)
        List<@NotBlank @Size(max = 40) String> motifs) {

    /** A plug of whole steps keeps its size: fractions of an inch have no more decimals. */
    private static final int PLUG_DECIMALS = 9;

    public InlayRequest {
        panels = Copies.of(panels);
        motifs = Copies.of(motifs);
    }

    /**
     * The same with everything filled in.
     *
     * @param design the design that it is a section of
     */
    public InlayRequest filled(Design design) {
        LengthUnit unit = design.unit();
        double smallest = design.facePanels().stream()
                .mapToDouble(Panel::baseDistance)
                .min()
                .orElseThrow();
        return new InlayRequest(
                face,
                shape,
                requireNonNullElse(rimThickness, unit.usual(1.5, 0.06)),
                requireNonNullElse(floor, design.request().sphere().minimumWall()),
                chips == null ? null : chips.filled(unit),
                requireNonNullElse(tipDistance, Math.min(unit.usual(5, 0.2), unit.fromMillimetres(smallest / 2))),
                panels,
                motifs);
    }

    /**
     * The same with the plug of a plan as its shape, where it states none and the plan has one.
     *
     * @param unit the design's unit
     */
    public InlayRequest plugged(ChipPlan plan, LengthUnit unit) {
        InlayShape plug = shape == null && plan != null ? plan.shape() : null;
        if (plug == null) {
            return this;
        }
        double diameter = Rounding.round(unit.fromMillimetres(2 * plug.radius()), PLUG_DECIMALS);
        return new InlayRequest(
                face,
                new ShapeRequest(ShapeKind.DISC, null, diameter),
                rimThickness,
                floor,
                chips,
                tipDistance,
                panels,
                motifs);
    }

    /** Along what the length of a chip is measured. */
    public enum ChipMeasure {
        /** Along each leg: the wood breaks off between points equally far from the tip. */
        ALONG_LEG,
        /** Along the tip axis: the wood breaks off along a line square to it. */
        ALONG_AXIS
    }

    @Describe("What breaks off the segments' tips at the saw.")
    public record ChipRequest(
            @Describe(
                    value = "Length of the chip, from the tip.",
                    quantity = LENGTH,
                    usual = {0.1, 25},
                    example = "2")
            @NotNull
            @DecimalMin("0.001")
            @DecimalMax("1000")
            Double length,

            @Describe(
                    value = "Along what the length is measured. ALONG_LEG: the wood breaks off between two points of"
                            + " the legs, equally far from the tip. ALONG_AXIS: it breaks off along a line square to"
                            + " the tip axis, which runs from the tip square to the base. ALONG_LEG if left out.",
                    example = "\"ALONG_LEG\"",
                    optional = true)
            ChipMeasure measured,

            @Describe(
                    value = "Depth of the chip from the panel's outer face, before turning; the whole thickness if left"
                            + " out. A chip that is torn out of the inner face alone is not counted.",
                    quantity = LENGTH,
                    usual = {0.1, 100},
                    example = "8",
                    optional = true)
            @DecimalMin("0.001")
            @DecimalMax("1000")
            Double depth,

            @Describe(
                    value = "How many tips of one panel are chipped; all if left out.",
                    example = "2",
                    optional = true)
            @Min(1)
            @Max(12)
            Integer tips,

            @Describe(
                    value = "Plugs are made in whole multiples of this, as drills are; 1 mm or 1/16 in if left out"
                            + " (common practice, no source).",
                    quantity = LENGTH,
                    usual = {0.1, 10},
                    example = "1",
                    optional = true)
            @DecimalMin("0.001")
            @DecimalMax("100")
            Double plugStep) {

        ChipRequest filled(LengthUnit unit) {
            return new ChipRequest(
                    length,
                    requireNonNullElse(measured, ChipMeasure.ALONG_LEG),
                    depth,
                    tips,
                    requireNonNullElse(plugStep, unit.usual(1, 0.0625)));
        }
    }

    /** Kinds of shape. */
    public enum ShapeKind {
        /** A round disc. */
        DISC,
        /** A regular polygon with one side parallel to a base of the panel. */
        POLYGON
    }

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
                    quantity = LENGTH,
                    usual = {5, 300},
                    example = "30")
            @NotNull
            @DecimalMin("0.001")
            @DecimalMax("10000")
            Double diameter) {}
}
