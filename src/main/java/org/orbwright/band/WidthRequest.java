package org.orbwright.band;

import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.orbwright.design.BandSet;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.Places;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

/**
 * What should be seen of each band on the finished sphere.
 *
 * @param design the design; the widths of the lamination in question are looked for and may be left out
 * @param face the face kind whose lamination is solved for, or null for a solid with one
 * @param places which lamination of the face kind, or null where it has one
 * @param set the set of segments in which the wishes are to come true, or null for upright
 * @param wishes one for each band of that lamination, exactly one of them the rest
 * @param step the shop's step to which widths are rounded, or null for none
 */
@Describe("What should be seen of each band on the finished sphere.")
public record WidthRequest(
        @NotNull @Valid DesignRequest design,

        @Describe(
                value = "The face kind whose lamination is solved for; may be left out for a solid that has only one.",
                example = "\"pentagon\"",
                optional = true)
        @Size(max = 40)
        String face,

        @Describe(
                value = "Which lamination of the face kind, where every other segment has its own.",
                example = "\"ODD\"",
                optional = true)
        Places places,

        @Describe(
                value = "The set of segments in which the wishes are to come true; upright if left out.",
                example = "\"UPRIGHT\"",
                optional = true)
        BandSet set,

        @Describe("One wish for each band of the lamination, exactly one of them the rest.")
        @NotNull
        @Size(min = 1, max = DesignRequest.MAX_BANDS)
        List<@NotNull @Valid WishRequest> wishes,

        @Describe(
                value = "The shop's step to which the widths are rounded, such as 0.5 or 0.03125; no rounding if left"
                        + " out.",
                quantity = Quantity.LENGTH,
                example = "0.5",
                optional = true)
        @DecimalMin("0.001")
        @DecimalMax("100")
        Double step) {

    /** Copies the list of wishes. */
    public WidthRequest {
        wishes = wishes == null ? null : Collections.unmodifiableList(new ArrayList<>(wishes));
    }

    /** Wishes for the only lamination of a face kind. */
    public WidthRequest(DesignRequest design, String face, BandSet set, List<WishRequest> wishes, Double step) {
        this(design, face, null, set, wishes, step);
    }

    /** What a wish measures. */
    @Describe("What is wished for a band: EDGE_MIDDLE its visible width there, CORNER its visible width at the corner"
            + " where"
            + " least of it is left, SHARE_OF_SPHERE its share of the sphere from 0 to 1, REST what the"
            + " others leave.")
    public enum Measure {
        /** Visible width on the way to the edge middle. */
        EDGE_MIDDLE,
        /** Visible width on the way to the corner where least of it is left. */
        CORNER,
        /** Share of the sphere's surface, 0 to 1. */
        SHARE_OF_SPHERE,
        /** Whatever the other bands leave. */
        REST
    }

    /** A wish for one band. */
    @Describe("A wish for one band.")
    public record WishRequest(
            @Describe(value = "The band's number in the lamination, from 1 at the base.", example = "1")
            @NotNull
            @Min(1)
            @Max(DesignRequest.MAX_BANDS)
            Integer band,

            @Describe(
                    value = "What is wished for: a visible width at the edge middle or at the corner, a share of the"
                            + " sphere"
                            + " from 0 to 1, or the rest.",
                    example = "\"EDGE_MIDDLE\"")
            @NotNull
            Measure measure,

            @Describe(
                    value = "The wished width in the design's unit, or the share; left out for the rest.",
                    example = "12",
                    optional = true)
            @DecimalMin("0.000001")
            @DecimalMax("100000")
            Double value) {}
}
