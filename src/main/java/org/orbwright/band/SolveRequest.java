package org.orbwright.band;

import static java.util.Objects.requireNonNullElse;

import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.orbwright.design.Copies;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.Places;
import org.orbwright.design.SphereSet;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

@Describe("What should be seen of each band on the finished sphere.")
public record SolveRequest(
        @Describe(
                value = "The face kind whose lamination is solved for; may be left out for a solid that has only one.",
                example = "\"triangle\"",
                optional = true)
        @Size(max = 40)
        String face,

        @Describe(
                value = "Which lamination of the face kind, where every other segment has its own.",
                example = "\"ODD\"",
                optional = true)
        Places places,

        @Describe(
                value =
                        "The spheres that a wish without a set of its own is about: UPRIGHT or INVERTED for one of twins,"
                                + " MIXED for a sphere with panels of both sets. If left out, the first sphere that the"
                                + " document's sets make.",
                example = "\"UPRIGHT\"",
                optional = true)
        SphereSet set,

        @Describe(
                value =
                        "Wishes for bands of the lamination. A band may have several: for each set, and of each measure."
                                + " A band without a wish is REST.",
                optional = true)
        @Size(max = 2 * DesignRequest.MAX_BANDS)
        List<@NotNull @Valid WishRequest> wishes,

        @Describe(
                value = "The shop's step, such as 0.5 or 0.03125. Widths are whole multiples of it, chosen so that the"
                        + " worst wish comes as near as it can. Bands that are REST share what is left, in any width;"
                        + " where no band is, the last one takes what is left. Any width if left out.",
                quantity = Quantity.LENGTH,
                usual = {0.05, 10},
                example = "0.5",
                optional = true)
        @DecimalMin("0.001")
        @DecimalMax("100")
        Double step) {

    /** Copies the list of wishes. */
    public SolveRequest {
        wishes = Copies.of(wishes);
    }

    /** Wishes for the only lamination of a face kind. */
    public SolveRequest(String face, SphereSet set, List<WishRequest> wishes, Double step) {
        this(face, null, set, wishes, step);
    }

    /**
     * The same with everything filled in: a wish for every band, those that were left out after the others.
     *
     * @param solvedFace the face kind that was solved for
     * @param solvedSet the spheres that a wish without a set is about
     * @param bands number of bands of the lamination
     */
    public SolveRequest filled(String solvedFace, SphereSet solvedSet, int bands) {
        List<WishRequest> all = new ArrayList<>();
        Set<Integer> wished = new HashSet<>();
        for (WishRequest wish : requireNonNullElse(wishes, List.<WishRequest>of())) {
            all.add(wish.filled(solvedSet));
            wished.add(wish.band());
        }
        for (int band = 1; band <= bands; band++) {
            if (!wished.contains(band)) {
                all.add(WishRequest.rest(band));
            }
        }
        return new SolveRequest(solvedFace, requireNonNullElse(places, Places.ALL), solvedSet, all, step);
    }

    @Describe("What is wished for a band. EDGE_MIDDLE: its visible width there. CORNER: its visible width at the"
            + " corner where least of it is left. SHARE_OF_SPHERE: its share of the sphere, from 0 to 1. On a MIXED sphere"
            + " a width counts in the panels that show least of it, and a share in all panels. REST: it takes what"
            + " the others leave, and several share that.")
    public enum Measure {
        EDGE_MIDDLE,
        CORNER,
        SHARE_OF_SPHERE,
        REST
    }

    @Describe("A wish for one band, on one kind of sphere.")
    public record WishRequest(
            @Describe(value = "The band's number in the lamination, from 1 at the base.", example = "1")
            @NotNull
            @Min(1)
            @Max(DesignRequest.MAX_BANDS)
            Integer band,

            @Describe(
                    value = "What is wished for: a visible width at the edge middle or at the corner, a share of the"
                            + " sphere from 0 to 1, or the rest.",
                    example = "\"EDGE_MIDDLE\"")
            @NotNull
            Measure measure,

            @Describe(
                    value =
                            "The spheres that the wish is about; that of the section if left out. UPRIGHT and INVERTED may"
                                    + " always be named, made or not; MIXED needs a sphere with panels of both sets. A REST"
                                    + " takes none: it is one width for all spheres.",
                    example = "\"UPRIGHT\"",
                    optional = true)
            SphereSet set,

            @Describe(
                    value = "The wished width in the design's unit, or the share. For REST the band's part of what is"
                            + " left: with 2 and 1 one band is twice as wide as the other. 1 if left out.",
                    example = "12",
                    optional = true)
            @DecimalMin("0.000001")
            @DecimalMax("100000")
            Double value) {

        /** A wish for the spheres of the section. */
        public WishRequest(Integer band, Measure measure, Double value) {
            this(band, measure, null, value);
        }

        /** A wish for nothing but an equal part of the rest. */
        static WishRequest rest(int band) {
            return new WishRequest(band, Measure.REST, 1.0);
        }

        WishRequest filled(SphereSet usual) {
            if (measure == Measure.REST) {
                return value == null ? rest(band) : this;
            }
            return new WishRequest(band, measure, requireNonNullElse(set, usual), value);
        }
    }
}
