package org.orbwright.diagnosis;

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
import org.orbwright.design.DesignRequest;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;
import org.orbwright.tolerance.PanelSide;
import org.orbwright.tolerance.SeamSide;

/**
 * A design and what was measured on its test pieces and shell; at least one measurement.
 *
 * @param design the design
 * @param panel the gap of a test panel, or null
 * @param seam the gaps of a test pair or trio of panels, or null
 * @param acrossFlats measures over pairs of opposite faces, or null
 * @param faceDistances distances of faces from a point of reference, or null
 * @param tilt the blade tilt as an angle gauge reads it, or null
 */
@Describe("A design and what was measured on its test pieces and shell: any of the measurements, at least one. Each"
        + " value carries the resolution of its reading.")
public record DiagnosisRequest(
        @NotNull @Valid DesignRequest design,

        @Describe(value = "The gap of a test panel.", optional = true) @Valid
        PanelTestRequest panel,

        @Describe(value = "The gaps of a test pair or trio of panels.", optional = true) @Valid
        SeamTestRequest seam,

        @Describe(
                value = "Measures across flats, one for each pair of opposite faces that was measured. They say how"
                        + " large and how unequal the shell is and nothing of its centre.",
                optional = true)
        @Size(min = 1, max = 60)
        List<@NotNull @Valid FlatsReadingRequest> acrossFlats,

        @Describe(value = "Distances of faces from a point of reference.", optional = true) @Valid
        FaceDistancesRequest faceDistances,

        @Describe(value = "The blade tilt as an angle gauge reads it.", optional = true) @Valid
        TiltReadingRequest tilt) {

    /** Copies the list. */
    public DiagnosisRequest {
        acrossFlats = copy(acrossFlats);
    }

    private static <T> List<T> copy(List<T> list) {
        return list == null ? null : Collections.unmodifiableList(new ArrayList<>(list));
    }

    /** A length as it was read. */
    @Describe("A length as it was read.")
    public record LengthReadingRequest(
            @Describe(value = "The reading.", quantity = Quantity.LENGTH, example = "0.35")
            @NotNull
            @DecimalMin("0")
            @DecimalMax("100000")
            Double value,

            @Describe(
                    value = "Resolution of the reading: the step of the scale or of the feeler gauges. The standard"
                            + " uncertainty is this over the root of 12 (JCGM 100:2008, F.2.2.1).",
                    quantity = Quantity.LENGTH,
                    example = "0.05")
            @NotNull
            @DecimalMin("0.000001")
            @DecimalMax("1000")
            Double resolution) {}

    /** The gap of a test panel. */
    @Describe("A test panel: all of its segments dry, closed but for one joint.")
    public record PanelTestRequest(
            @Describe(
                    value = "The face kind of the panel; may be left out for a solid that has only one.",
                    example = "\"pentagon\"",
                    optional = true)
            @Size(max = 40)
            String face,

            @Describe("The gap at the open end of the joint.") @NotNull @Valid
            LengthReadingRequest gap,

            @Describe(value = "Where the joint is open.", example = "\"RIM\"") @NotNull
            PanelSide opensAt,

            @Describe(
                    value = "How far along the joint from its closed end the gap was measured; the whole joint if left"
                            + " out, from the tips to the corner of the rim.",
                    optional = true)
            @Valid
            LengthReadingRequest distance) {}

    /** The gaps of a test pair or trio of panels. */
    @Describe(
            "A test pair or trio of panels, bevelled and held together dry. A pair is a hinge: it has to be held to the"
                    + " dihedral angle by a template, and tells just the sum of two bevels, half of which is taken for"
                    + " each. A trio at a corner where just three faces meet is held by its own outlines, and its three"
                    + " gaps tell the bevel of each panel.")
    public record SeamTestRequest(
            @Describe(
                    value = "The face kinds of the two or three panels; may be left out for a solid that has only one.",
                    example = "[\"pentagon\",\"pentagon\",\"pentagon\"]",
                    optional = true)
            @Size(min = 2, max = 3)
            List<@NotNull @NotBlank @Size(max = 40) String> faces,

            @Describe(
                    "The gaps: one for a pair; for a trio three, between the first and the second panel, the second and"
                            + " the third, the third and the first.")
            @NotNull
            @Size(min = 1, max = 3)
            List<@NotNull @Valid SeamGapRequest> gaps,

            @Describe(
                    value = "How far along the seam from its closed end the gaps were measured; the whole length over"
                            + " which the panels touch if left out.",
                    optional = true)
            @Valid
            LengthReadingRequest distance) {

        /** Copies the lists. */
        public SeamTestRequest {
            faces = copy(faces);
            gaps = copy(gaps);
        }
    }

    /** The gap of one seam. */
    @Describe("The gap of one seam as it was read.")
    public record SeamGapRequest(
            @Describe(value = "The gap at the open end of the seam.", quantity = Quantity.LENGTH, example = "0.2")
            @NotNull
            @DecimalMin("0")
            @DecimalMax("100000")
            Double value,

            @Describe(value = "Resolution of the reading.", quantity = Quantity.LENGTH, example = "0.05")
            @NotNull
            @DecimalMin("0.000001")
            @DecimalMax("1000")
            Double resolution,

            @Describe(value = "Where the seam is open.", example = "\"INSIDE\"") @NotNull
            SeamSide opensAt) {}

    /** What callipers read over a pair of opposite faces. */
    @Describe("What callipers read over a pair of opposite faces.")
    public record FlatsReadingRequest(
            @Describe(
                    value = "The face kind of the pair; may be left out for a solid that has only one.",
                    example = "\"pentagon\"",
                    optional = true)
            @Size(max = 40)
            String face,

            @Describe(value = "The measure across flats.", quantity = Quantity.LENGTH, example = "177.9")
            @NotNull
            @DecimalMin("0")
            @DecimalMax("100000")
            Double value,

            @Describe(value = "Resolution of the reading.", quantity = Quantity.LENGTH, example = "0.05")
            @NotNull
            @DecimalMin("0.000001")
            @DecimalMax("1000")
            Double resolution) {}

    /** Distances of faces from a point of reference. */
    @Describe("Distances of faces from one point of reference in the hollow, square to each face: the point where the"
            + " discs hold the shell now.")
    public record FaceDistancesRequest(
            @Describe(
                    value = "Number of the face that carries the first blocking disc, from 0 as the solid's catalogue"
                            + " page lists the faces; 0 if left out.",
                    example = "0",
                    optional = true)
            @Min(0)
            @Max(200)
            Integer discFace,

            @Describe("The faces that were measured.") @NotNull @Size(min = 4, max = 120)
            List<@NotNull @Valid FaceReadingRequest> faces) {

        /** Copies the list. */
        public FaceDistancesRequest {
            faces = copy(faces);
        }
    }

    /** The distance of one face. */
    @Describe("The distance of one face as it was read.")
    public record FaceReadingRequest(
            @Describe(
                    value = "Number of the face, from 0 as the solid's catalogue page lists the faces.",
                    example = "0")
            @NotNull
            @Min(0)
            @Max(200)
            Integer face,

            @Describe(
                    value = "Distance of the face from the point of reference, square to the face.",
                    quantity = Quantity.LENGTH,
                    example = "88.95")
            @NotNull
            @DecimalMin("0")
            @DecimalMax("100000")
            Double value,

            @Describe(value = "Resolution of the reading.", quantity = Quantity.LENGTH, example = "0.05")
            @NotNull
            @DecimalMin("0.000001")
            @DecimalMax("1000")
            Double resolution) {}

    /** The blade tilt as an angle gauge reads it. */
    @Describe("The blade tilt as an angle gauge reads it, and its resolution.")
    public record TiltReadingRequest(
            @Describe(
                    value = "The face kind whose panels are bevelled; may be left out for a solid that has only one.",
                    example = "\"pentagon\"",
                    optional = true)
            @Size(max = 40)
            String face,

            @Describe(value = "The blade's lean from upright.", quantity = Quantity.ANGLE, example = "31.7")
            @NotNull
            @DecimalMin("0")
            @DecimalMax("90")
            Double value,

            @Describe(value = "Resolution of the gauge.", quantity = Quantity.ANGLE, example = "0.1")
            @NotNull
            @DecimalMin("0.000001")
            @DecimalMax("10")
            Double resolution) {}
}
